using Driveline.Provenance;

namespace Driveline.Cases.Results;

/// <summary>Where a number comes from.</summary>
internal static class BasisRows
{
    public static readonly ShapeOf<Basis> Shape = new ShapeOf<Basis>("basis", "Where a number comes from; of several, the weakest.")
        .Choice("kind", b => b.Kind, "How well it is known, worst first.")
        .Words("document", (b, texts, _) => texts.Name(b.Citation), "The document with its edition; else the reason in a few words.")
        .MaybeText("place", b => b.Place, "Clause, table or page in the document; null when there is none.")
        .Repeated();
}
