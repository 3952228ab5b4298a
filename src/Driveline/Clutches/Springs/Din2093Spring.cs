using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>One disc spring of the standard series.</summary>
internal sealed class Din2093Spring
{
    private readonly double forceN;

    internal Din2093Spring(char series, DiscSpring spring, double forceN, Basis basis)
    {
        Series = series;
        Spring = spring;
        this.forceN = forceN;
        Basis = basis;
    }

    /// <summary>Series: 'A', 'B' or 'C'.</summary>
    public char Series { get; }

    /// <summary>The disc.</summary>
    public DiscSpring Spring { get; }

    /// <summary>Printed force at 0.75 · (l0 - t).</summary>
    public Force PrintedForce => Force.FromNewtons(forceN);

    /// <summary>Where dimensions and force come from.</summary>
    public Basis Basis { get; }

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Series} {Spring.OuterM * 1000:G4}: {forceN:G6} N at 0.75 h0");
}
