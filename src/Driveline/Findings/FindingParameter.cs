namespace Driveline.Findings;

/// <summary>A named, typed value of a finding. Immutable, with value equality.</summary>
public sealed class FindingParameter : IEquatable<FindingParameter>
{
    internal FindingParameter(string name, QuantityKind kind, double value, string? text)
    {
        Name = name;
        Kind = kind;
        Value = value;
        Text = text;
    }

    internal static FindingParameter Of(string name, QuantityKind kind, double si) => new(name, kind, si, null);

    internal static FindingParameter Of(string name, string text) => new(name, QuantityKind.Text, double.NaN, text);

    /// <summary>Name, as it stands in braces in the text template.</summary>
    public string Name { get; }

    /// <summary>What the value is.</summary>
    public QuantityKind Kind { get; }

    /// <summary>The value in SI; +∞ means unbounded; NaN for a text.</summary>
    public double Value { get; }

    /// <summary>The text, for <see cref="QuantityKind.Text"/>.</summary>
    public string? Text { get; }

    /// <inheritdoc/>
    public bool Equals(FindingParameter? other) =>
        other is not null && Name == other.Name && Kind == other.Kind && Text == other.Text && Value.Equals(other.Value);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as FindingParameter);

    /// <inheritdoc/>
    public override int GetHashCode() => unchecked(
        (StringComparer.Ordinal.GetHashCode(Name) * 31) + (Text is null ? Value.GetHashCode() : StringComparer.Ordinal.GetHashCode(Text)));

    /// <inheritdoc/>
    public override string ToString() => Name;
}
