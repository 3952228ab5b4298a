using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Protection;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Choosing;

/// <summary>Tries spring deflections of a clutch: work margin rises with the deflection, guard margin falls.</summary>
internal sealed class ClutchSearch
{
    // A steel rule is read within 1/64 in.
    private const double RuleErrorM = 0.4e-3;

    // Finer than any nut is turned.
    private const double StepM = 1e-7;

    private readonly ClutchCondition condition;

    public ClutchSearch(
        ProtectionQuestion question, ProtectiveDevice place, DiscClutch clutch, ClutchCondition condition, ProtectionPolicy policy,
        CancellationToken stop)
    {
        Stop = stop;
        Question = question;
        Place = place;
        Clutch = clutch.CalibratedBy(condition);
        Policy = policy;
        this.condition = condition
            .WithSlipTest(SlipTest.Slipped(condition.Day))
            .WithWear(LengthBand.OfSi(Band.Exactly(0), BandBasis.Of(Provenance.Basis.Given("springs set anew"))));
        double springsM = Clutch.Springs.DeflectionM(Clutch.Springs.LargestN) is var m && !double.IsNaN(m) ? m : Clutch.Springs.TravelM;
        MostDeflectionM = springsM;

        // Of solid springs no pressure is known, so the limit is looked for from the slack side.
        double liningsM = Halve(s => !IsOverPressed(s));
        IsEndedByLinings = liningsM < springsM - (10 * StepM);
        MostDeflectionM = IsEndedByLinings ? liningsM : springsM;
    }

    public ProtectionQuestion Question { get; }

    public ProtectiveDevice Place { get; }

    public DiscClutch Clutch { get; }

    public ProtectionPolicy Policy { get; }

    /// <summary>Ends the search.</summary>
    public CancellationToken Stop { get; }

    /// <summary>The faces as told, slipped at the new setting.</summary>
    public ClutchCondition Condition => condition;

    /// <summary>
    /// Deflection up to which the force rises and the linings bear it; beyond it the springs are solid, their force falls, or the linings
    /// are pressed too hard.
    /// </summary>
    public double MostDeflectionM { get; }

    /// <summary>True when the linings reach the limit of their pressure before the springs end.</summary>
    public bool IsEndedByLinings { get; }

    public ClutchPoint At(double deflectionM)
    {
        DiscClutch set = Set(deflectionM);
        SlipTorque slip = SlipTorque.Of(set, condition);
        return new ClutchPoint(set, deflectionM, slip, Verdict(slip.Running).WorkMargin, Verdict(slip.Breakaway).GuardMargin);
    }

    /// <summary>The setting at which the clutch is expected to slip at a torque; null when no permitted setting is.</summary>
    public ClutchPoint? SetTo(double torqueNm)
    {
        ClutchPoint set = At(Halve(s => At(s).TorqueNm < torqueNm));
        return Math.Abs(set.TorqueNm - torqueNm) <= torqueNm * 1e-3 ? set : null;
    }

    /// <summary>The verdict by the breakaway torque of a setting.</summary>
    public ProtectionVerdict VerdictAt(double deflectionM) => Verdict(SlipTorque.Of(Set(deflectionM), condition).Breakaway);

    /// <summary>The setting at which the worse margin is greatest: where the two, each over what is asked for, are equal.</summary>
    public ClutchPoint Best() =>
        At(Halve(s => At(s) is var p && p.WorkMargin / Policy.MinimumWorkMargin < p.GuardMargin / Policy.MinimumGuardMargin));

    /// <summary>The settings around the best one; null when even the best leaves no room.</summary>
    public ClutchWindow? Window(ClutchPoint best)
    {
        if (!best.LeavesRoom(Policy))
        {
            return null;
        }

        return new ClutchWindow(At(Math.Min(LowestQuietM(), best.DeflectionM)), At(Math.Max(HighestGuardingM(), best.DeflectionM)));
    }

    /// <summary>The least deflection that stays quiet; about <see cref="MostDeflectionM"/> when none does.</summary>
    public double LowestQuietM() => Halve(s => !(At(s).WorkMargin > Policy.MinimumWorkMargin)) + (2 * StepM);

    /// <summary>The greatest deflection that guards; about 0 when none does.</summary>
    public double HighestGuardingM() => Halve(s => At(s).GuardMargin > Policy.MinimumGuardMargin);

    private bool IsOverPressed(double deflectionM) =>
        SlipTorque.Of(Set(deflectionM), condition).Findings.Any(f => f.Code == ClutchFindings.FacingPressureHigh);

    // The greatest deflection, to a step, at which what holds for slack springs still holds.
    private double Halve(Func<double, bool> holds)
    {
        double low = 0;
        double high = MostDeflectionM;
        while (high - low > StepM)
        {
            Stop.ThrowIfCancellationRequested();
            double middle = (low + high) / 2;
            if (holds(middle))
            {
                low = middle;
            }
            else
            {
                high = middle;
            }
        }

        return low;
    }

    private DiscClutch Set(double deflectionM) =>
        Clutch.WithSpringLength(Length.FromMeters(Clutch.Springs.FreeM - deflectionM), Length.FromMeters(RuleErrorM));

    private ProtectionVerdict Verdict(TorqueBand torque)
    {
        StatedDevice device = StatedDevice.Of(Place.Name, DeviceKind.SlipClutch, AfterTrip.NotKnown, torque);
        return ProtectionCheck.Run(Question.WithChain(Question.Chain.With(Place, device)).WithTripsInNormalWork(null), Policy);
    }
}
