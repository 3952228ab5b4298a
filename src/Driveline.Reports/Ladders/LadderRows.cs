using Driveline.Protection;
using Driveline.Quantities;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Ladders;

/// <summary>
/// The rows of a verdict's picture: the ladder in order, then what is not known. A torque that is not known has a row too.
/// </summary>
internal static class LadderRows
{
    public static IReadOnlyList<LadderRow> Of(ProtectionVerdict verdict, Phrase phrase)
    {
        var rows = new List<LadderRow>();
        foreach (LadderRung rung in verdict.Ladder)
        {
            TorqueBand torque = rung.Torque;
            rows.Add(LadderRow.Band(
                KindOf(rung.Kind), LadderWords.Name(rung, verdict, phrase), LadderWords.Detail(rung, verdict, phrase),
                Shown(torque.Low, phrase), Shown(torque.Expected, phrase), Shown(torque.High, phrase)));
        }

        string notKnown = phrase.Of("rung.notKnown");
        if (verdict.WorkPeak is null)
        {
            rows.Add(LadderRow.NotKnown(LadderRowKind.Work, phrase.Of("rung.Work"), notKnown));
        }

        if (verdict.Question.Engagement.Highest is null)
        {
            rows.Add(LadderRow.NotKnown(LadderRowKind.Engagement, phrase.Of("rung.Engagement"), notKnown));
        }

        foreach (Chains.Element element in CriticalChecks.WithoutTorque(verdict))
        {
            LadderRowKind kind = element is Chains.ProtectiveDevice ? LadderRowKind.Device : LadderRowKind.Part;
            rows.Add(LadderRow.NotKnown(
                kind, element is Chains.Part part ? PartNames.Capital(part, verdict, phrase) : phrase.Capital(element.Name), notKnown));
        }

        return rows;
    }

    /// <summary>A torque in the unit shown; +∞ for none.</summary>
    public static double Shown(UnitsNet.Torque? torque, Phrase phrase) => torque is not { } known ? double.PositiveInfinity
        : phrase.Units == Wording.DisplayUnits.UsCustomary ? known.PoundForceFeet
        : known.NewtonMeters;

    private static LadderRowKind KindOf(LadderRungKind kind) => kind switch
    {
        LadderRungKind.Work => LadderRowKind.Work,
        LadderRungKind.Engagement => LadderRowKind.Engagement,
        LadderRungKind.Trip => LadderRowKind.Device,
        _ => LadderRowKind.Part,
    };
}
