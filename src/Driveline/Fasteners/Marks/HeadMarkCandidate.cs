using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>One thing a bolt with a given head mark may be.</summary>
public sealed class HeadMarkCandidate
{
    internal HeadMarkCandidate(string name, BoltGrade? grade, string headMark, StressBand? tensile, Basis basis)
    {
        Name = name;
        Grade = grade;
        HeadMark = headMark;
        Tensile = tensile;
        Basis = basis;
    }

    /// <summary>Name, e.g. "SAE 5" or "ungraded bolt".</summary>
    public string Name { get; }

    /// <summary>The grade; null for an ungraded bolt.</summary>
    public BoltGrade? Grade { get; }

    /// <summary>The mark it is known by, in words.</summary>
    public string HeadMark { get; }

    /// <summary>Tensile strength at the size asked for; null when nothing is known.</summary>
    public StressBand? Tensile { get; }

    /// <summary>Basis of the mark's meaning.</summary>
    public Basis Basis { get; }

    /// <summary>The name.</summary>
    public override string ToString() => Name;
}
