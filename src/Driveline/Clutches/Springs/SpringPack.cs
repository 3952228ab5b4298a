using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>The springs that clamp a clutch, taken together: coil springs side by side, or stacks of disc springs.</summary>
/// <remarks>
/// Force over deflection, deflection = free length less length. Longer than free: no force. Solid or flat, and anything
/// shorter: at least the force there, without a high end, because the bolts then clamp and no longer the springs.
/// </remarks>
public abstract class SpringPack
{
    private protected SpringPack(int count, double freeM, double solidM, Band factor, BandBasis basis)
    {
        Count = count;
        FreeM = freeM;
        SolidM = solidM;
        Factor = factor;
        ForceBasis = Guard.NotNull(basis, nameof(basis));
    }

    /// <summary>Springs or stacks side by side.</summary>
    public int Count { get; }

    /// <summary>Length without load.</summary>
    public Length FreeLength => Length.FromMeters(FreeM);

    /// <summary>Length at which the springs are solid or flat.</summary>
    public Length SolidLength => Length.FromMeters(SolidM);

    /// <summary>Where the force comes from.</summary>
    public BandBasis ForceBasis { get; }

    internal double FreeM { get; }

    internal double SolidM { get; }

    /// <summary>Travel from free to solid.</summary>
    internal double TravelM => FreeM - SolidM;

    /// <summary>Share of the travel that should stay free.</summary>
    internal abstract double ReserveShare { get; }

    /// <summary>Low, expected and high force over the nominal force.</summary>
    internal Band Factor { get; }

    /// <summary>Number of coil springs side by side on the clutch.</summary>
    /// <param name="spring">One spring.</param>
    /// <param name="count">Springs side by side; 1 to 48.</param>
    /// <exception cref="ArgumentException">The spring is missing, or the count is not from 1 to 48.</exception>
    public static SpringPack Of(CoilSpring spring, int count) => CoilPack.Of(spring, count);

    /// <summary>One disc spring around the hub.</summary>
    /// <exception cref="ArgumentNullException">The spring is missing.</exception>
    public static SpringPack Of(DiscSpring spring) => DiscPack.Of(spring, 1, 1, 1);

    /// <summary>The total clamp force at a length of the springs.</summary>
    /// <param name="length">
    /// Length of the springs as set; above 0. Above the free length gives 0; solid or shorter gives no high end.
    /// </param>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public ForceBand ForceAtLength(Length length)
    {
        double m = Guard.Positive(Si.Meters(length), "Spring length", "m", nameof(length));
        return ForceBand.OfSi(ForceN(Band.Exactly(Math.Max(0, FreeM - m))), ForceBasis);
    }

    /// <summary>The total clamp force at a deflection.</summary>
    /// <param name="deflection">Free length less length; 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public ForceBand ForceAtDeflection(Length deflection) =>
        ForceBand.OfSi(ForceN(Band.Exactly(Guard.NotNegative(Si.Meters(deflection), "Deflection", "m", nameof(deflection)))), ForceBasis);

    /// <summary>The smallest deflection that is expected to give a total force.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The springs do not reach that force before they are solid or flat.</exception>
    public Length DeflectionFor(Force force) => TryDeflectionFor(force, out Length deflection)
        ? deflection
        : throw Guard.OutOfRange(
            "Clamp force",
            FormattableString.Invariant($"from 0 to {LargestN:G6} N, what these springs give before they are solid"),
            Si.Newtons(force),
            "N",
            nameof(force));

    /// <summary>The smallest deflection that is expected to give a total force; false when the springs do not reach it.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The force is negative or not finite.</exception>
    public bool TryDeflectionFor(Force force, out Length deflection)
    {
        double m = DeflectionM(Guard.NotNegative(Si.Newtons(force), "Clamp force", "N", nameof(force)));
        deflection = double.IsNaN(m) ? Length.Zero : Length.FromMeters(m);
        return !double.IsNaN(m);
    }

    /// <summary>Travel left from a length until the springs are solid or flat; 0 when they are.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The length is not above 0.</exception>
    public Length TravelLeft(Length length) =>
        Length.FromMeters(Math.Max(0, Guard.Positive(Si.Meters(length), "Spring length", "m", nameof(length)) - SolidM));

    /// <summary>The same springs, with the whole force curve scaled through a measured force.</summary>
    /// <param name="length">Length at which it was measured; between solid and free.</param>
    /// <param name="force">Total force of all springs there; bounded, low above 0.</param>
    /// <exception cref="ArgumentException">The force is unbounded or its low end is 0.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The length is not between solid and free.</exception>
    public SpringPack WithMeasuredForce(Length length, ForceBand force)
    {
        Guard.NotNull(force, nameof(force));
        double deflection = FreeM - Guard.Within(Si.Meters(length), SolidM, FreeM, "Spring length", "m", nameof(length));
        double nominal = NominalN(deflection);
        if (!force.IsBounded || force.SiBand.Low <= 0 || nominal <= 0)
        {
            throw new ArgumentException(
                "A measured force must be bounded and above 0 N, at a length below the free length.", nameof(force));
        }

        return Rescaled(force.SiBand.Times(1 / nominal), force.Basis);
    }

    internal double NominalN(double deflectionM)
    {
        var log = default(NoSteps);
        return NominalN(deflectionM, ref log);
    }

    /// <summary>Expected total force by the spring formula, before measured scaling.</summary>
    internal abstract double NominalN<S>(double deflectionM, ref S log)
        where S : struct, ISteps;

    /// <summary>The step that sums the force of the springs.</summary>
    internal abstract CalculationStep ClampStep { get; }

    /// <summary>The step that turns a force into the deflection for it.</summary>
    internal abstract CalculationStep NeededStep { get; }

    /// <summary>dF/ds of the nominal force, N/m.</summary>
    internal abstract double RateNPerM(double deflectionM);

    /// <summary>Smallest deflection at which the expected force is reached; NaN when it is not.</summary>
    internal abstract double DeflectionM(double forceN);

    /// <summary>Total force over a band of deflections; unbounded where the springs are solid.</summary>
    internal Band ForceN(Band deflectionM)
    {
        double low = Math.Min(deflectionM.Low, TravelM);
        double expected = Math.Min(deflectionM.Expected, TravelM);
        double high = Math.Min(deflectionM.High, TravelM);
        double nominal = NominalN(expected);
        bool solid = deflectionM.Expected >= TravelM;
        return new Band(
            Math.Min(LeastN(low, high), nominal) * Factor.Low,
            solid ? double.PositiveInfinity : nominal * Factor.Expected,
            deflectionM.High >= TravelM ? double.PositiveInfinity : Math.Max(MostN(low, high), nominal) * Factor.High);
    }

    /// <summary>Least nominal force between two deflections.</summary>
    private protected abstract double LeastN(double lowM, double highM);

    /// <summary>Greatest nominal force between two deflections.</summary>
    private protected abstract double MostN(double lowM, double highM);

    private protected abstract SpringPack Rescaled(Band factor, BandBasis basis);

    /// <summary>Greatest expected force before solid.</summary>
    internal double LargestN => MostN(0, TravelM) * Factor.Expected;
}
