using Driveline.Findings;
using Driveline.Protection;

namespace Driveline.Advice;

/// <summary>The standing of a machine about which somebody has written: what is seen, what is likeliest, and the verdict.</summary>
internal static class AdviceStanding
{
    // A chance from which on something is to be reckoned with.
    private const double Likely = 0.5;
    private static readonly Cause[] Unprotected = [Cause.HubSeized, Cause.ClutchStuck, Cause.ClutchCoilBound, Cause.ProtectionMissing];

    public static Standing Of(OwnerAdvice advice)
    {
        Complaint complaint = advice.Diagnosis.Complaint;
        LikelyCause? likely = advice.Diagnosis.Causes.FirstOrDefault(c =>
            Unprotected.Contains(c.Cause) && !c.IsSeen && c.Probability.Value >= Likely);
        Finding[] stops = likely is null ? []
            : [Finding.Of(StandingFindings.LikelyUnprotected, Severity.Danger).With("cause", AdviceCodes.InBrief(likely.Cause))
                .WithBecause("complaint")];
        var cares = new List<string>();
        if (advice.Inspection is not null)
        {
            cares.Add(StandingFindings.InspectFirst);
        }

        if (complaint.Symptom != Symptom.NotKnown)
        {
            cares.Add(StandingFindings.Complaint);
        }

        return StandingRules.Of(advice.Verdict, [.. SeenDefects.Told(complaint.Symptom, complaint.Facts)], cares, stops);
    }
}
