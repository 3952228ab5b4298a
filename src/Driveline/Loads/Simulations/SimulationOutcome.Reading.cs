using Driveline.Findings;
using Driveline.Quantities;
using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Loads;

/// <content>What is read of a run before the next one takes its memory.</content>
public sealed partial class SimulationOutcome
{
    // The largest of the links it may ride on, in either direction; its own torque is T_pto / i.
    private void ReadPeak(TransientResult result, int node)
    {
        (string? one, string? other) = line.LinksOf(node);
        ReadPeak(result, node, one);
        ReadPeak(result, node, other);
    }

    private void ReadPeak(TransientResult result, int node, string? link)
    {
        if (link is not null)
        {
            Raise(node, link, result.Peak(link));
            Raise(node, link, result.ReversePeak(link));
        }
    }

    private void Raise(int node, string link, TorquePeak peak)
    {
        double nm = Si.NewtonMeters(peak.Own!.Value) / chain.Nodes[node].Ratio;
        if (peakLink[node] is null || nm > peakNm[node])
        {
            peakNm[node] = nm;
            peakAtS[node] = Si.Seconds(peak.Time);
            peakLink[node] = link;
        }
    }

    private SimulatedSlip[] AllSlips(TransientResult result)
    {
        int count = 0;
        for (int l = 0; l < line.LinkCount; l++)
        {
            count += line.SlippingLink(l) is null ? 0 : 1;
        }

        if (count == 0)
        {
            return [];
        }

        var slips = new SimulatedSlip[count];
        for (int l = line.LinkCount - 1; l >= 0; l--)
        {
            if (line.SlippingLink(l) is { } name)
            {
                slips[--count] = new SimulatedSlip(name, result.SlipEnergy(name).Joules, Math.Abs(result.SlipAngle(name).Radians));
            }
        }

        return slips;
    }

    private static Duration? CutThrough(TransientResult result)
    {
        for (int e = 0; e < result.EventCount; e++)
        {
            if (result.Event(e) is { Kind: TransientEventKind.CutThrough } cut)
            {
                return cut.Time;
            }
        }

        return null;
    }

    private IReadOnlyList<Finding> AllFindings(TransientResult result)
    {
        IReadOnlyList<Finding> found = result.Findings;
        return Event == SimulatedEvent.Engagement && line.PtoClutchLink is { } clutch && IsStillSlipping(result, clutch)
            ? [.. found, Finding.Of(SimulationFindings.StillSlipping, Severity.Warning).With("time", QuantityKind.Time, line.DurationS)]
            : found;
    }

    private static bool IsStillSlipping(TransientResult result, string clutch)
    {
        TransientEventKind last = TransientEventKind.SlipStarted;
        for (int e = 0; e < result.EventCount; e++)
        {
            TransientEvent happened = result.Event(e);
            bool isClutch = happened.Part == clutch && happened.Kind is (TransientEventKind.SlipStarted or TransientEventKind.SlipEnded);
            last = isClutch ? happened.Kind : last;
        }

        return last == TransientEventKind.SlipStarted;
    }
}
