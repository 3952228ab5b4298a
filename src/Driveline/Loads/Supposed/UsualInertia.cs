using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>Inertia of usual rotors, shafts and gearboxes, as wide bands. Nobody has published a measured one.</summary>
/// <remarks>
/// Geometry of blades, bars, pans, tubes and tools from light to heavy build. Expected is the geometric mean of the ends. Ends and rows
/// stand in shared/reference/pto/usual-lines.csv.
/// </remarks>
internal static class UsualInertia
{
    private static readonly Basis Geometry = Basis.FromMemory(
        "inertia of a usual rotor by kind and width, from assumed sections of blades, bars, pans and tools; none measured");

    private static readonly Basis Remembered = Basis.FromMemory("inertia of the flywheel of a small square baler");

    private static readonly Basis Light = Basis.FromMemory("inertia of usual yokes, tubes and gears, from remembered masses");

    // Working width in m, lowest and highest inertia at the blade axis in kg·m².
    private static readonly (double Width, double Low, double High)[] Cutters =
        [(1.2, 1.8, 2.8), (1.5, 3.5, 5.5), (1.8, 6.4, 9.9), (2.1, 10, 16)];

    /// <summary>
    /// A rotor or flywheel at its own speed; null when nothing is known of its kind, or its width is missing or out of range.
    /// </summary>
    /// <param name="machine">
    /// Rotary cutter of one rotor, 1.1 to 2.2 m: between the rows by the power law through the nearest two. Flail mower 0.22 to 1.3
    /// kg·m² a meter. Rotary tiller 0.1 to 0.4 kg·m² a meter at a 540 min⁻¹ PTO, 0.73 to 2.9 at its 200 min⁻¹. Small square baler 8 to 15.
    /// </param>
    /// <example>Rotary cutter, 1.5 m: 3.5 to 5.5 kg·m².</example>
    public static InertiaBand? OfRotor(UsualMachine machine) => (Guard.NotNull(machine, nameof(machine)).Kind, machine.WidthM) switch
    {
        (MachineKind.RotaryCutter, { } w and >= 1.1 and <= 2.2) => Between(Cutter(w, row => row.Low), Cutter(w, row => row.High), Geometry),
        (MachineKind.FlailMower, { } w and >= 0.5 and <= 4) => Between(0.22 * w, 1.3 * w, Geometry),
        (MachineKind.RotaryTiller, { } w and >= 0.5 and <= 4) => Between(0.73 * w, 2.9 * w, Geometry),
        (MachineKind.SmallSquareBaler, _) => Between(8, 15, Remembered),
        _ => null,
    };

    /// <summary>A PTO shaft: 0.005 kg·m² (7 kg about the axis of a light one) to 0.06 kg·m² (heavy yokes of four kilograms).</summary>
    public static InertiaBand OfPtoShaft() => Between(0.005, 0.06, Light);

    /// <summary>The gears of a bevel gearbox at its input: 2 kg at 40 mm to 12 kg at 65 mm.</summary>
    public static InertiaBand OfGearbox() => Between(0.003, 0.05, Light);

    private static double Cutter(double width, Func<(double Width, double Low, double High), double> of)
    {
        int k = 0;
        while (k < Cutters.Length - 2 && width > Cutters[k + 1].Width)
        {
            k++;
        }

        double first = of(Cutters[k]), second = of(Cutters[k + 1]);
        double power = Math.Log(second / first) / Math.Log(Cutters[k + 1].Width / Cutters[k].Width);
        return first * Math.Pow(width / Cutters[k].Width, power);
    }

    private static InertiaBand Between(double low, double high, Basis basis) =>
        InertiaBand.OfSi(new Band(low, Math.Sqrt(low * high), high), BandBasis.Of(basis));
}
