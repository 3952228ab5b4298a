using Driveline.Quantities;

namespace Driveline.Findings;

/// <summary>
/// Something a caller must notice: a stable code with typed parameters, and which Yes it bars. Its words are rendered on demand.
/// </summary>
/// <remarks>
/// Immutable, with value equality. Codes are declared as constants beside the concept that reports them and never change their
/// meaning. A code that ends in "NotKnown" bars both questions until its maker says otherwise; any other bars nothing until then.
/// </remarks>
public sealed class Finding : IEquatable<Finding>
{
    private const string NotKnownEnding = "NotKnown";

    private readonly FindingParameter[] parameters;
    private readonly string[] because;
    private readonly FactPlace? place;
    private FixedList<FindingParameter>? shown;
    private FixedList<string>? told;

    private Finding(string code, Severity severity, Bars bars)
    {
        Code = code;
        Severity = severity;
        Bars = bars;
        parameters = [];
        because = [];
    }

    private Finding(Finding other, FindingParameter[] parameters, Bars bars, string? settledBy, string[] because)
        : this(other, other.Severity, parameters, bars, settledBy, because)
    {
    }

    private Finding(Finding other, Severity severity, FindingParameter[] parameters, Bars bars, string? settledBy, string[] because)
        : this(other.Code, severity, parameters, bars, settledBy, because)
    {
    }

    private Finding(string code, Severity severity, FindingParameter[] parameters, Bars bars, string? settledBy, string[] because)
    {
        Code = code;
        Severity = severity;
        Bars = bars;
        SettledBy = settledBy;
        this.parameters = parameters;
        this.because = because;
    }

    private Finding(Finding other, FactPlace place)
        : this(other, other.Severity, other.parameters, other.Bars, other.SettledBy, other.Told) => this.place = place;

    /// <summary>Stable code, "area.name" in lower camel case, e.g. "bolt.hubFreedomNotKnown".</summary>
    public string Code { get; }

    /// <summary>How much it matters.</summary>
    public Severity Severity { get; }

    /// <summary>Which question has no Yes while this holds.</summary>
    public Bars Bars { get; }

    /// <summary>The measurement that would settle it, a code of <see cref="Measurements"/>; null when none is named.</summary>
    public string? SettledBy { get; }

    /// <summary>Paths of the facts it rests on, told or lacking, such as "driveline[2].shearBolt.grade"; empty when not known.</summary>
    /// <remarks>
    /// A finding of a thing whose <see cref="FactPlace"/> is not known has the names of its facts alone, such as "grade".
    /// </remarks>
    public IReadOnlyList<string> Because => ToldList;

    /// <summary>Its typed values, in the order they were added.</summary>
    public IReadOnlyList<FindingParameter> Parameters => shown ??= new FixedList<FindingParameter>(parameters);

    /// <summary>Its values, to be gone through without an enumerator.</summary>
    internal FindingParameter[] AllParameters => parameters;

    /// <summary>The paths of its facts, to be gone through without an enumerator.</summary>
    internal string[] AllBecause => Told;

    /// <summary>A finding without parameters yet; it bars both questions when its code ends in "NotKnown", else nothing.</summary>
    /// <exception cref="ArgumentException">The code is missing or blank.</exception>
    public static Finding Of(string code, Severity severity) => new(
        Guard.NotBlank(code, "Code", nameof(code)), severity, BarsOf(code));

    /// <summary>The same of a part or device, which is its parameter "name".</summary>
    internal static Finding Named(string code, Severity severity, string name) =>
        Whole(code, severity, BarsOf(code), null, [], FindingParameter.Of("name", name));

    /// <summary>A missing fact: a warning that bars both questions.</summary>
    /// <exception cref="ArgumentException">The code is missing or blank.</exception>
    public static Finding NotKnown(string code) => new(Guard.NotBlank(code, "Code", nameof(code)), Severity.Warning, Bars.Both);

    /// <summary>A finding whole, where one is made for every row of a study.</summary>
    internal static Finding Whole(
        string code, Severity severity, Bars bars, string? settledBy, string[] because, params FindingParameter[] parameters) =>
        new(code, severity, parameters, bars, settledBy, because);

    /// <summary>The same finding, keeping the named questions from a Yes and no other.</summary>
    public Finding Barring(Bars bars) => new(this, parameters, bars, SettledBy, Told);

    /// <summary>The same finding, keeping no question from a Yes.</summary>
    public Finding BarringNothing() => Barring(Bars.Nothing);

    /// <summary>The same finding with the measurement that would settle it.</summary>
    /// <param name="measurement">A code of <see cref="Measurements"/>.</param>
    /// <exception cref="ArgumentException">The code is missing or blank.</exception>
    public Finding WithSettledBy(string measurement) =>
        new(this, parameters, Bars, Guard.NotBlank(measurement, "Measurement", nameof(measurement)), Told);

    /// <summary>The same finding with the paths of the facts it rests on.</summary>
    public Finding WithBecause(params string[] paths) => new(this, parameters, Bars, SettledBy, [.. Guard.NotNull(paths, nameof(paths))]);

    /// <summary>The same finding with a text parameter.</summary>
    public Finding With(string name, string text) =>
        Append(new FindingParameter(name, QuantityKind.Text, double.NaN, Guard.NotNull(text, nameof(text))));

    /// <summary>The same finding with a numeric parameter in SI; +∞ means unbounded.</summary>
    /// <exception cref="ArgumentException">The value is NaN, or the kind is a text.</exception>
    public Finding With(string name, QuantityKind kind, double si)
    {
        if (double.IsNaN(si) || kind == QuantityKind.Text)
        {
            throw new ArgumentException("A numeric parameter needs a number and a numeric kind; got " + name + ".", nameof(si));
        }

        return Append(new FindingParameter(name, kind, si, null));
    }

    /// <summary>The parameter of that name; null when there is none.</summary>
    public FindingParameter? Parameter(string name)
    {
        foreach (FindingParameter parameter in parameters)
        {
            if (parameter.Name == name)
            {
                return parameter;
            }
        }

        return null;
    }

    /// <summary>True when it keeps any of the named questions from a Yes.</summary>
    public bool IsBarring(Bars questions) => (Bars & questions) != Bars.Nothing;

    /// <inheritdoc/>
    public bool Equals(Finding? other) => other is not null && Code == other.Code && Severity == other.Severity && Bars == other.Bars
        && SettledBy == other.SettledBy && parameters.SequenceEqual(other.parameters) && Told.SequenceEqual(other.Told);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Finding);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        int hash = StringComparer.Ordinal.GetHashCode(Code);
        foreach (FindingParameter parameter in parameters)
        {
            hash = unchecked((hash * 31) + parameter.GetHashCode());
        }

        return hash;
    }

    /// <inheritdoc/>
    public override string ToString() => Severity + " " + Code;

    /// <summary>The same finding where it matters more or less.</summary>
    internal Finding As(Severity severity) => new(this, severity, parameters, Bars, SettledBy, Told);

    /// <summary>The same finding with the facts it rests on at their place.</summary>
    internal Finding At(FactPlace? place) => place is null ? this : new Finding(this, place);

    // The paths are put together when somebody asks for them; most findings only bar or do not.
    private string[] Told => place is null ? because : ToldList.Items;

    private FixedList<string> ToldList => told ??= new FixedList<string>(place is null ? because : place.Of(because));

    private static Bars BarsOf(string code) => code.EndsWith(NotKnownEnding, StringComparison.Ordinal) ? Bars.Both : Bars.Nothing;

    private Finding Append(FindingParameter parameter) => new(this, [.. parameters, parameter], Bars, SettledBy, Told);
}
