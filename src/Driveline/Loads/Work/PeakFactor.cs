using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>Highest torque of normal work over its mean, by kind of machine, where none is measured.</summary>
/// <remarks>
/// Only rotary tillage has measured spectra at hand: mean + 3 standard deviations is 1.67 to 2.03 times the mean
/// (field data, normal assumption), and maximum ratios up to 2.5 are reported. For every other machine the band is a guess
/// that spans what is seen, and a verdict that rests on it is never a Yes or a No.
/// </remarks>
internal static class PeakFactor
{
    private static readonly RatioBand Tillage = RatioBand.Between(
        1.67, 1.85, 2.5, Basis.CommonPractice("rotary tillage field spectra: mean + 3 s.d. 1.67 to 2.03 of mean, maxima to 2.5"));

    private static readonly RatioBand Unmeasured = RatioBand.Between(
        1.2, 2.0, 3.5, Basis.FromMemory("peak over mean of PTO work without measured spectra, a wide guess"));

    /// <summary>The factor for a kind of machine.</summary>
    public static RatioBand For(MachineKind machine) => machine == MachineKind.RotaryTiller ? Tillage : Unmeasured;
}
