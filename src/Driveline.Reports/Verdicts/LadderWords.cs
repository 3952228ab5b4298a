using Driveline.Chains;
using Driveline.Protection;
using Driveline.Reports.Documents;

namespace Driveline.Reports.Verdicts;

/// <summary>Names and details of the rungs of the torque ladder.</summary>
internal static class LadderWords
{
    /// <summary>"Normal work", "Letting the PTO in", or the name of the device or part.</summary>
    public static string Name(LadderRung rung, Phrase phrase) =>
        rung.Name is null ? phrase.Of("rung." + rung.Kind) : phrase.Capital(rung.Name);

    /// <summary>What happens at which torque: "breaks at 1200 to 2000 N·m, most likely 1500".</summary>
    public static string Detail(LadderRung rung, ProtectionVerdict verdict, Phrase phrase)
    {
        string code = rung.Kind switch
        {
            LadderRungKind.Trip => "rung.Trip." + KindOf(rung.Name, verdict),
            LadderRungKind.Damage => IsWeakest(rung, verdict) ? "rung.Damage.weakest" : "rung.Damage",
            _ => "rung." + rung.Kind + ".detail",
        };
        return CleanText.Line(phrase.Of(Phrase.Code(code).With("band", BandWords.Of(rung.Torque, phrase))));
    }

    public static bool IsWeakest(LadderRung rung, ProtectionVerdict verdict) =>
        rung.Kind == LadderRungKind.Damage && verdict.WeakestPart is { } weakest && weakest.Part.Name == rung.Name;

    private static DeviceKind KindOf(string? name, ProtectionVerdict verdict) =>
        verdict.Devices.FirstOrDefault(d => d.Device.Name == name)?.Device.Kind ?? DeviceKind.NotKnown;
}
