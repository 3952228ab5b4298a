using System.Text;

namespace Driveline.Provenance;

/// <summary>Where a number comes from. Immutable; every number in a result carries one.</summary>
public sealed class Basis : IEquatable<Basis>
{
    private string? citation;

    private Basis(BasisKind kind, string document, string? edition, string? place, string? via)
    {
        Kind = kind;
        Document = document;
        Edition = edition;
        Place = place;
        Via = via;
    }

    /// <summary>How well the number is known.</summary>
    public BasisKind Kind { get; }

    /// <summary>The document for <see cref="BasisKind.Published"/>; otherwise the reason in a few words.</summary>
    public string Document { get; }

    /// <summary>Edition or year of the document, when there is one.</summary>
    public string? Edition { get; }

    /// <summary>Clause, table or page in the document, when there is one.</summary>
    public string? Place { get; }

    /// <summary>The copy in which the number was read, when the original was not at hand.</summary>
    public string? Via { get; }

    /// <summary>A number printed in a document.</summary>
    /// <param name="document">Number or title of the document, e.g. "ISO 898-1".</param>
    /// <param name="edition">Edition or year, e.g. "2013".</param>
    /// <param name="place">Clause, table or page, e.g. "Table 3".</param>
    /// <exception cref="ArgumentException">A text is missing or blank.</exception>
    public static Basis Published(string document, string edition, string place) =>
        new(BasisKind.Published, Required(document, nameof(document)), Required(edition, nameof(edition)), Required(place, nameof(place)),
            null);

    /// <summary>A number stated by the case or the caller.</summary>
    /// <param name="by">Who or what states it, e.g. "the case".</param>
    /// <exception cref="ArgumentException">The text is missing or blank.</exception>
    public static Basis Given(string by) => new(BasisKind.Given, Required(by, nameof(by)), null, null, null);

    /// <summary>A number used widely without a source we can name.</summary>
    /// <param name="reason">What the practice is, in a few words.</param>
    /// <exception cref="ArgumentException">The text is missing or blank.</exception>
    public static Basis CommonPractice(string reason) =>
        new(BasisKind.CommonPractice, Required(reason, nameof(reason)), null, null, null);

    /// <summary>A number nobody has checked.</summary>
    /// <param name="what">What is remembered, in a few words.</param>
    /// <exception cref="ArgumentException">The text is missing or blank.</exception>
    public static Basis FromMemory(string what) =>
        new(BasisKind.FromMemory, Required(what, nameof(what)), null, null, null);

    /// <summary>The same basis, read in a named copy rather than in the original.</summary>
    /// <param name="copy">The copy, e.g. "trade grade chart".</param>
    /// <exception cref="ArgumentException">The text is missing or blank.</exception>
    public Basis ReadVia(string copy) => new(Kind, Document, Edition, Place, Required(copy, nameof(copy)));

    /// <summary>The weaker of two bases; the first when they are equally strong.</summary>
    public static Basis Weakest(Basis first, Basis second)
    {
        if (first is null)
        {
            throw new ArgumentNullException(nameof(first));
        }

        if (second is null)
        {
            throw new ArgumentNullException(nameof(second));
        }

        return second.Kind < first.Kind ? second : first;
    }

    /// <summary>The weakest of several bases.</summary>
    /// <exception cref="ArgumentException">The list is empty.</exception>
    public static Basis Weakest(IEnumerable<Basis> bases)
    {
        if (bases is null)
        {
            throw new ArgumentNullException(nameof(bases));
        }

        Basis? weakest = null;
        foreach (Basis basis in bases)
        {
            weakest = weakest is null ? basis : Weakest(weakest, basis);
        }

        return weakest ?? throw new ArgumentException("At least one basis is needed; got none.", nameof(bases));
    }

    /// <inheritdoc/>
    public bool Equals(Basis? other) =>
        other is not null && Kind == other.Kind && Document == other.Document && Edition == other.Edition
        && Place == other.Place && Via == other.Via;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Basis);

    /// <inheritdoc/>
    public override int GetHashCode() => (((int)Kind * 397) ^ StringComparer.Ordinal.GetHashCode(Document)) * 397
        ^ (Place is null ? 0 : StringComparer.Ordinal.GetHashCode(Place));

    /// <summary>The basis as one line of English, e.g. "Published: ISO 898-1:2013, Table 3".</summary>
    public override string ToString()
    {
        var text = new StringBuilder();
        text.Append(Kind).Append(": ").Append(Citation);
        if (Place is not null)
        {
            text.Append(", ").Append(Place);
        }

        if (Via is not null)
        {
            text.Append(" (read in ").Append(Via).Append(')');
        }

        return text.ToString();
    }

    /// <summary>The document with its edition, e.g. "ISO 898-1:2013"; made once.</summary>
    internal string Citation => Edition is null ? Document : citation ??= Document + (IsYear(Edition) ? ":" : ", ") + Edition;

    // A year stands as standards write it; what is told in words stands apart.
    private static bool IsYear(string edition) => edition.Length >= 4 && edition.Take(4).All(char.IsDigit)
        && (edition.Length == 4 || !char.IsLetter(edition[4]));

    private static string Required(string value, string name) =>
        string.IsNullOrWhiteSpace(value) ? throw new ArgumentException("A basis needs a text here; got none.", name) : value;
}
