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

    /// <summary>All steels held, weakest first.</summary>
    /// <remarks>A name without a state, such as "4140", means the weakest state in which that steel is sold for shafts and tubes.</remarks>
    public static IReadOnlyList<SteelGrade> All => ShaftMaterials.All;

    /// <summary>Name and condition, e.g. "1045 cold drawn".</summary>
    public string Name { get; }

    /// <summary>Tensile yield strength; one textbook value, not a guaranteed minimum.</summary>
    public StressBand Yield { get; }

    /// <summary>Tensile strength; one textbook value.</summary>
    public StressBand Tensile { get; }

    /// <summary>Where the strengths come from.</summary>
    public Basis Basis { get; }

    /// <summary>The steel of that name, ignoring case.</summary>
    /// <exception cref="ArgumentException">None is held by that name; the message lists what is held.</exception>
    public static SteelGrade Of(string name) => ShaftMaterials.Of(name);

    /// <inheritdoc/>
    public override string ToString() => Name;
}
