namespace Driveline.Provenance;

/// <summary>How well a number is known, worst first, so that the default value is the worst.</summary>
/// <remarks>Comparison with <c>&lt;</c> is meaningful: a smaller value is the weaker basis.</remarks>
public enum BasisKind
{
    /// <summary>Nobody has checked it; must be replaced before it is relied on.</summary>
    FromMemory = 0,

    /// <summary>Used widely, without a source we can name, or known only from a secondary copy.</summary>
    CommonPractice = 1,

    /// <summary>Stated by the case or the caller.</summary>
    Given = 2,

    /// <summary>Printed in a document we name: number, edition, clause or table.</summary>
    Published = 3,
}
