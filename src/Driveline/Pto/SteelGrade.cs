using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Pto;

/// <summary>A shaft steel in one condition, with its textbook strengths.</summary>
public sealed class SteelGrade
{
    internal SteelGrade(string name, double yieldMpa, double tensileMpa, Basis basis)
    {
        Name = name;
        Basis = basis;
        Yield = StressBand.Exactly(Pressure.FromMegapascals(yieldMpa), basis);
        Tensile = StressBand.Exactly(Pressure.FromMegapascals(tensileMpa), basis);
    }

    /// <summary>Name and condition, e.g. "1045 cold drawn".</summary>
    public string Name { get; }

    /// <summary>Tensile yield strength; one textbook value, not a guaranteed minimum.</summary>
    public StressBand Yield { get; }

    /// <summary>Tensile strength; one textbook value.</summary>
    public StressBand Tensile { get; }

    /// <summary>Where the strengths come from.</summary>
    public Basis Basis { get; }

    /// <inheritdoc/>
    public override string ToString() => Name;
}
