using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Findings;
using Driveline.ShearBolts;

namespace Driveline.Protection;

/// <summary>Tells a fact that is missing, or stands on a default, from something found wrong.</summary>
internal static class MissingFacts
{
    private static readonly HashSet<string> Codes = new(StringComparer.Ordinal)
    {
        ProtectionFindings.PartsNotComplete,
        ProtectionFindings.ExpectedPartMissing,
        ProtectionFindings.PartLimitAssumed,
        ProtectionFindings.TripAboveRating,
        ProtectionFindings.PartBehindInertia,
        ProtectionFindings.EfficiencyAssumed,
        ProtectionFindings.WorkAssumed,
        ProtectionFindings.WorkUnbounded,
        ShearBoltFindings.NoAssuredMaximum,
        ShearBoltFindings.SpringPinNoMaximum,
        ShearBoltFindings.BoltNotIdentified,
        ShearBoltFindings.HubFreedomTooOld,
        DeviceFindings.ClutchNotDescribed,
        DeviceFindings.SlipTorqueNotMeasured,
        DeviceFindings.SlipMeasuredNotDry,
        DeviceFindings.SlipTestUndated,
        DeviceFindings.CutOutNotProven,
        ClutchFindings.NoSlipTest,
        ClutchFindings.TestBeforeStorage,
        ClutchFindings.TestTooOld,
    };

    /// <summary>True when the finding says that something is not known.</summary>
    public static bool Is(Finding finding) =>
        Codes.Contains(finding.Code) || finding.Code.EndsWith("NotKnown", StringComparison.Ordinal);
}
