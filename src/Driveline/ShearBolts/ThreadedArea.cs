using Driveline.Fasteners;
using Driveline.Provenance;

namespace Driveline.ShearBolts;

/// <summary>The area a shear plane through the thread carries, m².</summary>
/// <remarks>
/// A plane cuts the thread at a slant and through part of its turns, so more than the root's area carries. Tests of high-strength bolts
/// with the thread in the plane give 0.80 to 0.85 of the shank, 0.83 ± 0.03. On the coarse threads tested (3/4 to 1 in, stress area 0.76
/// to 0.77 of the shank) 0.83 is 1.08 stress areas, and 0.89, two standard deviations up, is 1.16. Expected: 1.08 A_s. High: the larger
/// of 1.16 A_s and 0.89 of the shank. No bolt under 5/8 in was in the tests: there both are extrapolated. Neither passes the plain shank.
/// </remarks>
internal static class ThreadedArea
{
    /// <summary>5/8 in, the smallest size tested.</summary>
    public const double SmallestTestedM = 0.015875;

    private const double Mean = 1.08;
    private const double Greatest = 1.16;
    private const double GreatestOfShank = 0.89;

    private static readonly Basis MeanTested = Basis.CommonPractice(
        "tests of high-strength bolts: thread in the plane 0.80 to 0.85 of the shank (University of Texas report of 1987, quoted in a "
            + "mail archive)");

    private static readonly Basis MeanExtrapolated = Basis.CommonPractice(
        "tests of high-strength bolts, thread in the plane 0.80 to 0.85 of the shank, extrapolated below 5/8 in");

    private static readonly Basis HighTested = Basis.FromMemory(
        "thread in the plane 0.83 of the shank and two standard deviations of 0.03");

    private static readonly Basis HighExtrapolated = Basis.FromMemory(
        "thread in the plane 0.83 of the shank and two standard deviations of 0.03, extrapolated below 5/8 in");

    public static double MeanM2(ScrewThread thread) => Mean * thread.StressAreaM2;

    public static double GreatestM2(ScrewThread thread) => Math.Max(Greatest * thread.StressAreaM2, GreatestOfShank * thread.ShankAreaM2);

    public static Basis MeanBasis(ScrewThread thread) => IsTested(thread) ? MeanTested : MeanExtrapolated;

    public static Basis GreatestBasis(ScrewThread thread) => IsTested(thread) ? HighTested : HighExtrapolated;

    public static bool IsTested(ScrewThread thread) => thread.MajorDiameterM >= SmallestTestedM - 1e-9;
}
