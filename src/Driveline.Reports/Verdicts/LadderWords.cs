using Driveline.Chains;
using Driveline.Protection;
using Driveline.Reports.Documents;

namespace Driveline.Reports.Verdicts;

/// <summary>Names and details of the rungs of the torque ladder.</summary>
internal static class LadderWords
{
    /// <summary>"Normal work", "Engaging the PTO", or the name of the device or part.</summary>
    public static string Name(LadderRung rung, ProtectionVerdict verdict, Phrase phrase) => rung.Name is null
        ? phrase.Of("rung." + rung.Kind)
        : CheckOf(rung, verdict) is { } check ? PartNames.Capital(check.Part, verdict, phrase)
        : phrase.Capital(rung.Name);

    /// <summary>What happens at which torque: "breaks at 1200 to 2000 N·m, most likely 1500".</summary>
    public static string Detail(LadderRung rung, ProtectionVerdict verdict, Phrase phrase)
    {
        string code = rung.Kind switch
        {
            LadderRungKind.Trip => "rung.Trip." + KindOf(rung.Name, verdict),
            LadderRungKind.Damage => IsMostAtRisk(rung, verdict) ? "rung.Damage.mostAtRisk" : "rung.Damage",
            _ => "rung." + rung.Kind + ".detail",
        };
        return CleanText.Line(phrase.Of(Phrase.Code(code).With("band", BandWords.Of(rung.Torque, phrase))));
    }

    /// <summary>True for the part that the room or overlap below the ladder names.</summary>
    public static bool IsMostAtRisk(LadderRung rung, ProtectionVerdict verdict) =>
        CheckOf(rung, verdict) is { } check && ReferenceEquals(check, CriticalChecks.Part(verdict));

    // Two parts may bear one name: the torque tells them apart.
    private static PartCheck? CheckOf(LadderRung rung, ProtectionVerdict verdict) => rung.Kind != LadderRungKind.Damage ? null
        : verdict.Parts.FirstOrDefault(p => p.Part.Name == rung.Name && p.DamagedAtPto is { } torque
            && torque.Low.NewtonMeters.Equals(rung.Torque.Low.NewtonMeters)
            && Nullable.Equals(torque.Expected?.NewtonMeters, rung.Torque.Expected?.NewtonMeters));

    private static DeviceKind KindOf(string? name, ProtectionVerdict verdict) =>
        verdict.Devices.FirstOrDefault(d => d.Device.Name == name)?.Device.Kind ?? DeviceKind.NotKnown;
}
