using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Clutches;

/// <content>What a caller must notice of springs, faces and trust.</content>
internal static partial class SlipTorqueRules
{
    /// <summary>The facing against its limit: expected clamp, at the inner radius when run in.</summary>
    public static void Pressure(DiscClutch clutch, ClutchCondition condition, ForceBand clamp, List<Finding> findings)
    {
        double limit = clutch.Facing.Limits.HighPressurePa;
        if (double.IsNaN(limit))
        {
            findings.Add(Finding.Of(ClutchFindings.FacingLimitNotKnown, Severity.Note)
                .WithBecause(ClutchFact.Facing).BarringNothing().With("facing", clutch.Facing.Name));
            return;
        }

        if (!clamp.HasExpected)
        {
            return;
        }

        var log = default(NoSteps);
        double force = clamp.SiBand.Expected;
        double pressure = condition.RunIn == RunInState.New
            ? DiscClutchKernel.MeanPressurePa(force, clutch.OuterM, clutch.InnerM, ref log)
            : DiscClutchKernel.PeakPressurePa(force, clutch.OuterM, clutch.InnerM, ref log);
        if (pressure > limit)
        {
            findings.Add(Finding.Of(ClutchFindings.FacingPressureHigh, Severity.Warning)
                .WithBecause(ClutchFact.SpringLength, ClutchFact.NutTurns, ClutchFact.Facing)
                .With("pressure", QuantityKind.SurfacePressure, pressure)
                .With("limit", QuantityKind.SurfacePressure, limit)
                .With("facing", clutch.Facing.Name));
        }
    }

    public static void Faces(ClutchCondition condition, List<Finding> findings)
    {
        if (condition.RunIn == RunInState.NotKnown)
        {
            findings.Add(Finding.Of(ClutchFindings.RunInNotKnown, Severity.Note).WithBecause(ClutchFact.RunIn).BarringNothing());
        }
        else if (condition.RunIn == RunInState.New)
        {
            findings.Add(Finding.Of(ClutchFindings.NotRunIn, Severity.Warning).WithBecause(ClutchFact.RunIn));
        }

        string? code = condition.Surface switch
        {
            SurfaceState.NotKnown => ClutchFindings.SurfaceNotKnown,
            SurfaceState.Oiled => ClutchFindings.Oiled,
            SurfaceState.Glazed => ClutchFindings.Glazed,
            _ => null,
        };
        if (code is not null)
        {
            findings.Add(Finding.Of(code, Severity.Warning).WithSettledBy(Measurements.ClutchSprings).WithBecause(ClutchFact.Surface));
        }
    }

    public static void Trust(ClutchCondition condition, List<Finding> findings)
    {
        if (condition.KnownStuck)
        {
            findings.Add(Finding.Of(ClutchFindings.Stuck, Severity.Danger).WithBecause(ClutchFact.SlipTestResult)
                .Barring(Bars.Guards).WithSettledBy(Measurements.SlipTest));
            return;
        }

        if (condition.MayBeTrustedToSlip)
        {
            return;
        }

        string code = condition.LastSlipTest is not { Outcome: SlipTestOutcome.Slipped } ? ClutchFindings.NoSlipTest
            : condition.TestIsBeforeStorage ? ClutchFindings.TestBeforeStorage
            : condition.LastStorageEnded is null ? ClutchFindings.StorageNotKnown
            : ClutchFindings.TestTooOld;
        findings.Add(Finding.Of(code, Severity.Danger).Barring(Bars.Guards).WithSettledBy(Measurements.SlipTest).WithBecause(code switch
        {
            ClutchFindings.NoSlipTest => [ClutchFact.LastSlipTest, ClutchFact.SlipTestResult],
            ClutchFindings.TestBeforeStorage => [ClutchFact.LastSlipTest, ClutchFact.LastStorage],
            ClutchFindings.StorageNotKnown => [ClutchFact.LastStorage],
            _ => [ClutchFact.LastSlipTest],
        }));
        if (condition.LastStorageEnded is not null && condition.Climate != StorageClimate.Dry)
        {
            Finding moist = Finding.Of(ClutchFindings.StoodMoist, Severity.Danger)
                .WithBecause(ClutchFact.LastStorage, ClutchFact.StoredMonths, ClutchFact.Climate);
            findings.Add(condition.StorageMonths is { } months ? moist.With("months", QuantityKind.Number, months)
                : moist.With("months", "an unknown number of"));
        }
    }

    private static void Sensitivity(SpringPack springs, double deflectionM, List<Finding> findings)
    {
        double force = springs.NominalN(Math.Min(deflectionM, springs.TravelM));
        if (force <= 0 || deflectionM >= springs.TravelM)
        {
            return;
        }

        double share = Math.Abs(springs.RateNPerM(deflectionM)) * RuleErrorM / force;
        if (share > SensitiveShare)
        {
            findings.Add(Finding.Of(ClutchFindings.SensitiveSetting, Severity.Note)
                .WithBecause(ClutchFact.SpringLength, ClutchFact.NutTurns)
                .With("error", QuantityKind.Length, RuleErrorM)
                .With("percent", QuantityKind.Number, share * 100));
        }
    }

    private static void Wear(DiscClutch clutch, ClutchCondition condition, List<Finding> findings)
    {
        if (condition.Wear is null)
        {
            findings.Add(Finding.NotKnown(ClutchFindings.WearNotKnown).WithBecause(ClutchFact.Wear).Barring(Bars.Quiet)
                .WithSettledBy(Measurements.ClutchSprings)
                .With("assumed", QuantityKind.Length, WholeLiningM));
            return;
        }

        double limit = clutch.Faces * (clutch.WearLimitPerFace?.SiBand.Low ?? StrictestWearM);
        if (condition.Wear.SiBand.Expected >= limit)
        {
            findings.Add(Finding.Of(ClutchFindings.WornOut, Severity.Warning).WithBecause(ClutchFact.Wear)
                .Barring(Bars.Quiet).WithSettledBy(Measurements.ClutchSprings)
                .With("wear", QuantityKind.Length, condition.Wear.SiBand.Expected)
                .With("limit", QuantityKind.Length, limit));
        }
    }

    private static Finding At(string code, Severity severity, double lengthM) =>
        Finding.Of(code, severity).WithSettledBy(Measurements.ClutchSprings).With("length", QuantityKind.Length, lengthM)
            .WithBecause(ClutchFact.SpringLength, ClutchFact.NutTurns);
}
