using Driveline.Provenance;

namespace Driveline.Advice;

/// <summary>What is usual for the attitude and height of a rotary cutter's deck. The machine's manual decides.</summary>
/// <remarks>
/// Printed advice for farm cutters says "approximately level" and a least cutting height of 3 in (76 mm); a printed figure for
/// how far the front may be below the rear was found for lawn mowers only (1/8 to 1/4 in), and is shown for comparison.
/// </remarks>
internal static class DeckPractice
{
    /// <summary>Least cutting height of a rotary cutter; lower settings scalp.</summary>
    public static readonly Sourced LeastHeight = new(
        76.2, "mm", Basis.CommonPractice("extension article on rotary cutters: 3 in; lower settings scalp"));

    /// <summary>How far a lawn mower's front is set below its rear, for comparison only.</summary>
    public static readonly Sourced LawnMowerFrontLow = new(
        6.3, "mm", Basis.CommonPractice("two lawn mower manuals: 1/4 in; another prints 1/8 in and never rear lower than front"));

    /// <summary>The pitch within which a deck counts as about level here: 26 mm over a span of 1.5 m.</summary>
    public static readonly Sourced AboutLevel = new(
        1.0, "°", Basis.FromMemory("tolerance of 'approximately level' for a farm cutter; no printed figure found"));
}
