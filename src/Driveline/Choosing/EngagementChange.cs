using Driveline.Chains;
using Driveline.Findings;
using Driveline.Protection;

namespace Driveline.Choosing;

/// <summary>How gently the PTO would have to be engaged: below the torque at which a weak specimen of the first device acts.</summary>
internal static class EngagementChange
{
    public static Finding? Of(ProtectionQuestion question, ProtectionVerdict with)
    {
        if (!with.EngagementMayTrip || question.Engagement.Highest is not { } highest)
        {
            return null;
        }

        ChainNode[] nodes = with.Question.Chain.Nodes;
        double[] lows = [.. with.Devices.Where(d => d.Device.Running is not null && !double.IsNaN(nodes[d.Index].Ratio))
            .Select(d => nodes[d.Index].ToPto(d.Device.Running!.SiBand).Low)];
        return lows.Length == 0 ? null : Finding.Of(ChoosingFindings.ChangeEngagement, Severity.Note)
            .With("now", QuantityKind.Torque, highest.SiBand.High)
            .With("below", QuantityKind.Torque, lows.Min());
    }
}
