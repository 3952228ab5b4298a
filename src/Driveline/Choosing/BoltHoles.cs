using Driveline.Quantities;
using Driveline.ShearBolts;
using UnitsNet;

namespace Driveline.Choosing;

/// <summary>
/// Which holes a bolt may use: the one that is there, and those the machine's maker permits to be drilled instead. Immutable.
/// </summary>
/// <remarks>
/// A bolt fits when its nominal diameter goes through the hole and the hole is no wider than the loose clearance hole of its size; a plain
/// pin has the holes of a metric bolt as thick, a spring pin the hole of its own size, in which alone its spring holds it.
/// A hole nobody measured is taken as the normal clearance hole of the bolt it was made for; that bolt is the thicker of the fitted
/// and the specified one, because both belong through it.
/// </remarks>
public sealed class BoltHoles
{
    private IReadOnlyList<Length>? redrilled;
    private const double SlackM = 1e-6;

    // A caliper in a worn hole reads no finer.
    private const double CaliperM = 1e-4;

    private readonly double presentM;
    private readonly double[] redrilledM;

    private BoltHoles(double presentM, double[] redrilledM)
    {
        this.presentM = presentM;
        this.redrilledM = redrilledM;
    }

    /// <summary>The hole that is there, its diameter not measured; no other permitted.</summary>
    public static BoltHoles AsFitted { get; } = new(0, []);

    /// <summary>Measured diameter of the hole that is there; null when not measured.</summary>
    public Length? Present => presentM > 0 ? Length.FromMeters(presentM) : null;

    /// <summary>Diameters of other holes the machine's maker permits: re-drilled, bushed, or at another place of the same joint.</summary>
    public IReadOnlyList<Length> Redrilled => redrilled ??= [.. redrilledM.Select(m => Length.FromMeters(m))];

    /// <summary>The same with the measured diameter of the hole that is there.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not finite or not above 0.</exception>
    public BoltHoles WithPresent(Length diameter) =>
        new(Guard.Positive(Si.Meters(diameter), "Hole diameter", "m", nameof(diameter)), redrilledM);

    /// <summary>The same with one more hole the machine's maker permits.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The diameter is not finite or not above 0.</exception>
    public BoltHoles WithRedrilled(Length diameter) =>
        new(presentM, [.. redrilledM, Guard.Positive(Si.Meters(diameter), "Diameter of a permitted hole", "m", nameof(diameter))]);

    /// <summary>The diameter of the holes, mm.</summary>
    public override string ToString() => Present is { } present
        ? FormattableString.Invariant($"{present.Millimeters:0.##} mm")
        : "not known";

    /// <summary>
    /// How wide the hole of a bolt is taken to be: as measured or permitted, else the normal hole of the bolt it was made for, m.
    /// </summary>
    internal double WidestM(RankedBolt bolt, ShearBolt madeFor) => bolt.NeedsRedrilling ? Si.Meters(bolt.HoleDiameter) : WideM(madeFor);

    /// <summary>The hole a bolt would use: the present one when it fits, else the closest permitted one; null when it fits none.</summary>
    internal HoleUse? For(StockItem item, ShearBolt madeFor)
    {
        double boltM = item.Bolt.DiameterM;
        double looseM = item.Bolt.LooseHoleM;
        double normalM = item.Bolt.NormalHoleM;
        double throughM = presentM > 0 ? presentM : madeFor.DiameterM;
        double wideM = WideM(madeFor);
        if (boltM <= throughM + (presentM > 0 ? CaliperM : SlackM) && wideM <= looseM + SlackM)
        {
            return new HoleUse(throughM, throughM, false, wideM > normalM + SlackM);
        }

        double[] fitting = [.. redrilledM.Where(h => boltM <= h + SlackM && h <= looseM + SlackM)];
        return fitting.Length > 0 ? new HoleUse(fitting.Min(), Math.Max(throughM, fitting.Min()), true, fitting.Min() > normalM + SlackM)
            : null;
    }

    private double WideM(ShearBolt madeFor) =>
        presentM > 0 ? presentM : madeFor.Thread is null ? madeFor.DiameterM : madeFor.NormalHoleM;
}
