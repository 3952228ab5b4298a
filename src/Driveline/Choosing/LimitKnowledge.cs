using Driveline.Chains;
using Driveline.Loads;
using Driveline.Protection;

namespace Driveline.Choosing;

/// <summary>How far the limits of the parts are known: a stronger device is offered only where all of them are.</summary>
internal static class LimitKnowledge
{
    /// <summary>True when the limit of at least one part is known without a default.</summary>
    public static bool IsAnyKnown(ProtectionVerdict verdict) => verdict.HasKnownLimit;

    /// <summary>Name of the first part whose limit is not known, or rests on a default; null when there is none.</summary>
    public static string? FirstUnknownPart(ProtectionVerdict verdict) =>
        verdict.Parts.FirstOrDefault(p => p.Part.Limit is null ? !p.Part.StoresEnergy : p.Part.Limit.IsAssumed)?.Part.Name
        ?? verdict.Devices.FirstOrDefault(d => d.Device.GuardBars.Any(b => b.Code == DeviceFindings.ShaftAtCrossHoleNotKnown))?.Device.Name;

    /// <summary>True when every part of the machine is listed, as far as anybody can tell.</summary>
    public static bool IsListComplete(ProtectionVerdict verdict) =>
        verdict.Question.PartsComplete && verdict.Question.Machine != MachineKind.NotKnown && verdict.MissingParts.Count == 0;

    /// <summary>True when nothing about the parts' limits is open.</summary>
    public static bool IsComplete(ProtectionVerdict verdict) =>
        IsAnyKnown(verdict) && IsListComplete(verdict) && FirstUnknownPart(verdict) is null;
}
