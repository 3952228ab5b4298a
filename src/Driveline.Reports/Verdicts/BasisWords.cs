using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Reports.Verdicts;

/// <summary>Where numbers come from, each source once, the weakest first.</summary>
internal static class BasisWords
{
    public static IEnumerable<string> Each(IEnumerable<BandBasis> bands, IEnumerable<Basis> more, Phrase phrase)
    {
        Basis[] all = [.. bands.SelectMany(b => new[] { b.Low, b.Expected, b.High }).Concat(more).Distinct()];
        for (BasisKind kind = BasisKind.FromMemory; kind <= BasisKind.Published; kind++)
        {
            foreach (Basis basis in all)
            {
                if (basis.Kind == kind)
                {
                    yield return phrase.Of(
                        Phrase.Code("basis.line").With("kind", phrase.Of("basis." + basis.Kind)).With("source", Source(basis)));
                }
            }
        }
    }

    // The kind is said in words before it.
    private static string Source(Basis basis) => basis.ToString().Substring((basis.Kind + ": ").Length);
}
