using Driveline.Chains;
using Driveline.Protection;

namespace Driveline.Reports.Verdicts;

/// <summary>Names of parts: one that the library itself gave to several parts is told apart by the device that each belongs to.</summary>
internal static class PartNames
{
    /// <summary>"shaft at the bolt hole", or "shaft at the bolt hole (auger bolt)" when there are two.</summary>
    public static string Of(Part part, ProtectionVerdict verdict, Phrase phrase)
    {
        string name = phrase.Name(part.Name);
        return verdict.Parts.Count(p => p.Part.Name == part.Name) > 1
            && verdict.Devices.FirstOrDefault(d => d.Device.ImpliedParts.Contains(part)) is { } owner
            ? name + " (" + phrase.Name(owner.Device.Name) + ")"
            : name;
    }

    /// <summary>The same with a capital where it begins a sentence.</summary>
    public static string Capital(Part part, ProtectionVerdict verdict, Phrase phrase)
    {
        string name = Of(part, verdict, phrase);
        return char.ToUpperInvariant(name[0]) + name.Substring(1);
    }
}
