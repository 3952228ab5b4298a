using Driveline.Quantities;

namespace Driveline.Findings;

/// <summary>Two facts told of one thing that cannot both be true.</summary>
public sealed class FactConflict
{
    internal FactConflict(string fact, string other, string message)
    {
        Fact = fact;
        Other = other;
        Message = message;
    }

    /// <summary>The fact that is refused, by its name, e.g. "neckDiameter".</summary>
    public string Fact { get; }

    /// <summary>The fact it contradicts, by its name, e.g. "thread".</summary>
    public string Other { get; }

    /// <summary>What is wrong, with both values.</summary>
    public string Message { get; }

    /// <inheritdoc/>
    public override string ToString() => Fact + ": " + Message;

    /// <summary>A length for a message, to the millionth of a millimeter.</summary>
    internal static string Shown(double? m) => QuantityText.Format(Math.Round(m ?? 0, 9), Dimension.Length);
}
