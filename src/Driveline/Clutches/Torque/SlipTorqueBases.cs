using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Clutches;

/// <summary>Where the numbers of a slip torque come from, by the code of the step that takes them in.</summary>
internal static class SlipTorqueBases
{
    public static IReadOnlyDictionary<string, BandBasis> Of(SlipTorque torque)
    {
        var bases = new Dictionary<string, BandBasis>(StringComparer.Ordinal);
        ClutchCondition condition = torque.Condition;
        if (condition.LastSlipTest?.Running is { } read)
        {
            bases[ClutchInputs.LeverForce.Code] = bases[ClutchInputs.LeverArm.Code] = BandBasis.Of(read.Basis.Expected);
            bases[ClutchInputs.ReadingError.Code] = BandBasis.Of(Basis.Weakest(read.Basis.Low, read.Basis.High));
            bases[ClutchInputs.BreakawayRatio.Code] = FrictionBand.BreakawayRatioBasis;
        }

        if (torque.Clutch is not { SpringLength: { } length } clutch)
        {
            return bases;
        }

        BandBasis build = BandBasis.Of(SlipTorqueRules.RadiusBasis);
        bases[ClutchInputs.SetLength.Code] = length.Basis;
        bases[ClutchInputs.Wear.Code] = condition.Wear?.Basis ?? BandBasis.Of(SlipTorqueRules.WearUnknown);
        CalculationStep[] springs =
        [
            ClutchInputs.FreeLength, ClutchInputs.Rate, ClutchInputs.Count, ClutchInputs.Factor, ClutchInputs.Parallel, ClutchInputs.Series,
        ];
        foreach (CalculationStep step in springs)
        {
            bases[step.Code] = clutch.Springs.ForceBasis;
        }

        bases[ClutchInputs.Faces.Code] = bases[ClutchInputs.Outer.Code] = bases[ClutchInputs.Inner.Code] = build;
        FrictionBand friction = clutch.Facing.Friction(condition.Surface);
        bases[ClutchSteps.Friction.Code] = friction.Running.Basis;
        bases[ClutchInputs.BreakawayFriction.Code] = friction.Breakaway.Basis;
        return bases;
    }
}
