using Driveline.Chains;

namespace Driveline.Cases.Results;

/// <summary>The review of a slip clutch.</summary>
internal static class ClutchRows
{
    private static readonly ShapeOf<ClutchReview> Heat = new ShapeOf<ClutchReview>("heat", "What it does when the output is blocked.")
        .Number("powerW", r => r.Slip is { } slip ? (double)slip.PeakPower.Watts : null, "Power of its heat, W.")
        .Number("timeToLimitS", r => r.TimeToLimit?.Seconds, "Seconds to the highest lasting temperature; \"unbounded\" when never.")
        .Number("timeToMaximumS", r => r.TimeToMaximum?.Seconds, "Seconds to the highest temperature; \"unbounded\" when never.")
        .Number("timeToSmokeS", r => r.TimeToSmoke?.Seconds, "Seconds to the first smoke; \"unbounded\" when never.");

    public static readonly ShapeOf<ReviewedClutch> Shape = new ShapeOf<ReviewedClutch>(
            "clutch", "What a slip clutch does, whether to trust it, and how to set it. Torques are at the clutch.")
        .Text("name", c => c.Review.Device.Name, "Name of the clutch.")
        .Choice("source", c => c.Review.Torque.Source, "Where its torque comes from.")
        .Choice("assumption", c => c.Review.Torque.Assumption, "What is assumed of it.")
        .Choice("trust", c => c.Review.Torque.Trust, "Whether it may be trusted to slip.")
        .Band("slipTorqueNm", c => c.Review.Device.Running, "Torque while it slips.")
        .Band("breakawayTorqueNm", c => c.Review.Device.Breakaway, "Torque at its first slip after standing.")
        .Number("clampForceN", c => c.Review.ClampForce?.Newtons, "Force of its springs, N.")
        .Number("springLengthMm", c => c.Review.SpringLength?.Millimeters, "Length of its springs, mm.")
        .Number("travelToSolidMm", c => c.Review.TravelToSolid?.Millimeters, "Way left until its springs are solid, mm.")
        .Number("facingPressureKPa", c => c.Review.FacingPressure?.Kilopascals, "Mean pressure on its linings, kPa.")
        .Number("wantedTorqueNm", c => c.Review.Setting?.Wanted.NewtonMeters, "The torque wanted; null when none was asked for.")
        .MaybeFlag("isReached", c => c.Review.Setting?.IsReached, "True when the springs reach it; null when none was asked for.")
        .Number("nutTurns", c => c.Review.Setting?.NutTurns, "Turns of the nuts from loose.")
        .Number("torquePerTurnNm", c => c.Review.Setting?.TorquePerTurn?.NewtonMeters, "What one turn adds, N·m.")
        .Number("torquePerMmWearNm", c => c.Review.Setting?.TorqueLostPerMillimeterOfWear?.NewtonMeters,
            "What a millimetre of wear takes, N·m.")
        .Object("heat", c => c.Review, Heat, "What it does when the output is blocked.")
        .List("findings", c => c.Review.Findings, FindingRows.Shape, "Everything to notice, worst first.")
        .List("service", c => c.Procedures, ServiceRows.Shape, "How to service it.")
        .List("cautions", c => c.Review.Cautions, CautionRows.Shape, "Cautions; show them all.")
        .Maybe("weakestBasis", c => c.Review.WeakestBasis, BasisRows.Shape, "The weakest basis of all numbers; null when there is none.");
}
