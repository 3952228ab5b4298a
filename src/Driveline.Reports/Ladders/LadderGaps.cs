using Driveline.Findings;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.Reports.Verdicts;
using UnitsNet;

namespace Driveline.Reports.Ladders;

/// <summary>The two rows below the ladder: room or overlap between work and the device, and between the device and the part worst off.</summary>
/// <remarks>Room is drawn only where both the margin at the element's own place and the torques at the PTO show it.</remarks>
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

        string part = phrase.Name(check.Part.Name);
        string name = phrase.Of(Phrase.Code("gap.part").With("part", part));
        if (check.GuardedBy is null)
        {
            return LadderRow.NotKnown(LadderRowKind.NoRoom, name, phrase.Of(Phrase.Code("gap.part.open").With("part", part)));
        }

        return Between("gap.part", name, CriticalChecks.ActsAtPto(verdict, check), check.DamagedAtPto, check.Margin, check.GuardedBy.Name, part, phrase);
    }

    private static LadderRow Between(
        string code, string name, TorqueBand? lower, TorqueBand? upper, double? margin, string? device, string part, Phrase phrase)
    {
        if (lower is null || upper is null || margin is not { } ratio)
        {
            return LadderRow.NotKnown(LadderRowKind.NoRoom, name, phrase.Of(code + ".notKnown"));
        }

        Finding words = Phrase.Code(string.Empty + code + Kind(ratio)).With("device", phrase.Name(device)).With("part", part);
        if (lower.High is not { } top || ratio == 0)
        {
            return LadderRow.NotKnown(LadderRowKind.NoRoom, name, phrase.Of(words));
        }

        Torque bottom = upper.Low;
        bool isRoom = ratio > 1;
        double gapNm = Math.Abs(bottom.NewtonMeters - top.NewtonMeters);
        words = words
            .With("gap", QuantityKind.Torque, gapNm)
            .With("more", isRoom || ratio >= 1 ? MarginWords.Room(ratio, phrase) : MarginWords.Overlap(ratio, phrase));
        double from = LadderRows.Shown(isRoom ? top : bottom, phrase);
        double to = LadderRows.Shown(isRoom ? bottom : top, phrase);
        return from > to
            ? LadderRow.NotKnown(LadderRowKind.NoRoom, name, phrase.Of(words))
            : LadderRow.Between(isRoom ? LadderRowKind.Room : LadderRowKind.Overlap, name, phrase.Of(words), from, to);
    }

    private static string Kind(double ratio) => ratio switch
    {
        0 => ".unbounded",
        > 1 => ".room",
        1 => ".touch",
        _ => ".overlap",
    };
}
