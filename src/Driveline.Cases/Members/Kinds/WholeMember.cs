using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>A whole number within a range, both ends permitted.</summary>
internal sealed class WholeMember : ValueMember<int>
{
    private readonly int low;
    private readonly int high;

    public WholeMember(string name, int low, int high, string doc)
        : base(name, doc)
    {
        this.low = low;
        this.high = high;
    }

    public override string ValueWords => "whole number";

    public override string? PermittedWords => FormattableString.Invariant($"a whole number from {low} to {high}");

    public override object? OfSi(double si) => si >= low && si <= high && Math.Floor(si).Equals(si) ? (int)si : null;

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        if (reader.TokenType != JsonTokenType.Number)
        {
            walk.WrongKind(ref reader, PermittedWords!);
            return null;
        }

        // 2.0 and 2e0 are whole numbers too.
        if (reader.TryGetDouble(out double value) && value >= low && value <= high && Math.Floor(value).Equals(value))
        {
            return (int)value;
        }

        string received = walk.Received(ref reader);
        walk.Error(
            CaseErrorKind.OutOfRange,
            reader.TokenStartIndex,
            "This must be " + PermittedWords + "; got " + received + ".",
            PermittedWords,
            received,
            null);
        return null;
    }

    public override void Write(Utf8JsonWriter writer, object value) => writer.WriteNumberValue((int)value);

    public override void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteString("type", "integer");
        writer.WriteNumber("minimum", low);
        writer.WriteNumber("maximum", high);
    }
}
