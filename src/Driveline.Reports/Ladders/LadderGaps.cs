using Driveline.Findings;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.Reports.Verdicts;
using UnitsNet;

namespace Driveline.Reports.Ladders;

/// <summary>
/// The two rows below the ladder: room or overlap between work and the device, and between the device and the part worst off.
/// </summary>
/// <remarks>
/// A torque is given and drawn only where the margin at the element's own place and the torques at the PTO say the same. Behind a gear
/// or a share of the power they may differ; then the margin at its own place is said alone.
/// </remarks>
internal static class LadderGaps
{
    public static IReadOnlyList<LadderRow> Of(ProtectionVerdict verdict, Phrase phrase) => [Work(verdict, phrase), Part(verdict, phrase)];

    private static LadderRow Work(ProtectionVerdict verdict, Phrase phrase)
    {
        DeviceCheck? check = CriticalChecks.Device(verdict);
        TorqueBand? trip = check is null ? null : CriticalChecks.RunningAtPto(verdict, check);
        return Between("gap.work", phrase.Of("gap.work"), verdict.WorkPeak, trip, check?.Margin, check?.Device.Name, string.Empty, phrase);
    }

    private static LadderRow Part(ProtectionVerdict verdict, Phrase phrase)
    {
        if (CriticalChecks.Part(verdict) is not { } check)
        {
            return LadderRow.NotKnown(LadderRowKind.NoRoom, phrase.Of("gap.part.none"), phrase.Of("gap.part.notKnown"));
        }

        string part = PartNames.Of(check.Part, verdict, phrase);
        string name = phrase.Of(Phrase.Code("gap.part").With("part", part));
        if (check.GuardedBy is null)
        {
            return LadderRow.NotKnown(LadderRowKind.NoRoom, name, phrase.Of(Phrase.Code("gap.part.open").With("part", part)));
        }

        return Between("gap.part", name, CriticalChecks.ActsAtPto(verdict, check), check.DamagedAtPto, check.Margin, check.GuardedBy.Name,
            part, phrase);
    }

    private static LadderRow Between(
        string code, string name, TorqueBand? lower, TorqueBand? upper, double? margin, string? device, string part, Phrase phrase)
    {
        if (lower is null || upper is null || margin is not { } ratio)
        {
            return LadderRow.NotKnown(LadderRowKind.NoRoom, name, phrase.Of(code + ".notKnown"));
        }

        if (lower.High is not { } top || ratio == 0 || ratio == 1)
        {
            return LadderRow.NotKnown(LadderRowKind.NoRoom, name, phrase.Of(Words(code + (ratio == 1 ? ".touch" : ".unbounded"))));
        }

        Torque bottom = upper.Low;
        bool isRoom = ratio > 1;
        LadderRowKind kind = isRoom ? LadderRowKind.Room : LadderRowKind.Overlap;
        double gapNm = isRoom ? bottom.NewtonMeters - top.NewtonMeters : top.NewtonMeters - bottom.NewtonMeters;
        string said = code + (isRoom ? ".room" : ".overlap");
        string more = isRoom ? MarginWords.Room(ratio, phrase) : MarginWords.Overlap(ratio, phrase);
        return gapNm > 0
            ? LadderRow.Between(
                kind, name, phrase.Of(Words(said).With("more", more).With("gap", QuantityKind.Torque, gapNm)),
                LadderRows.Shown(isRoom ? top : bottom, phrase), LadderRows.Shown(isRoom ? bottom : top, phrase))
            : LadderRow.NotKnown(kind, name, phrase.Of(Words(said + ".atPlace").With("more", more)));

        Finding Words(string words) => Phrase.Code(words).With("device", phrase.Name(device)).With("part", part);
    }
}
