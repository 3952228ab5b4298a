using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>Measured torque spectra of PTO work held here; only rotary tillage has any.</summary>
/// <remarks>
/// Field data of rotary tillage in an article of a gear maker; the paper behind it is not identified, so the basis is common
/// practice. The largest maximum-torque ratio reported for rotary tillage is 2.5 (range 0.8 to 2.5 over three ground and three
/// PTO speeds, what it is a ratio to was not seen): <see cref="PeakFactor"/> keeps it as its high end.
/// </remarks>
internal static class LoadSpectra
{
    private static readonly Basis Field = Basis.CommonPractice(
        "rotary tillage field data in a gear maker's article, original paper not identified");

    /// <summary>Rotary tillage in gear L1: mean 910.79 N·m, standard deviation 204.54 N·m.</summary>
    public static LoadSpectrum TillageGearL1 { get; } =
        LoadSpectrum.Of(Torque.FromNewtonMeters(910.79), Torque.FromNewtonMeters(204.54), Field);

    /// <summary>Rotary tillage in gear L3: mean 1145.83 N·m, standard deviation 394.52 N·m.</summary>
    public static LoadSpectrum TillageGearL3 { get; } =
        LoadSpectrum.Of(Torque.FromNewtonMeters(1145.83), Torque.FromNewtonMeters(394.52), Field);

    /// <summary>Every spectrum held.</summary>
    public static IReadOnlyList<LoadSpectrum> All { get; } = Array.AsReadOnly([TillageGearL1, TillageGearL3]);
}
