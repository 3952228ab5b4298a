namespace Driveline.Findings;

/// <summary>A named, typed value of a finding.</summary>
public sealed class FindingParameter
{
    internal FindingParameter(string name, QuantityKind kind, double value, string? text)
    {
        Name = name;
        Kind = kind;
        Value = value;
        Text = text;
    }

    /// <summary>Name, as it stands in braces in the text template.</summary>
    public string Name { get; }

    /// <summary>What the value is.</summary>
    public QuantityKind Kind { get; }

    /// <summary>The value in SI; +∞ means unbounded; NaN for a text.</summary>
    public double Value { get; }

    /// <summary>The text, for <see cref="QuantityKind.Text"/>.</summary>
    public string? Text { get; }
}
