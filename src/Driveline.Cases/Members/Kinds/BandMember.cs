using System.Text.Json;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>A band: one quantity, or an object with low, expected, high and the source of its numbers.</summary>
/// <remarks>
/// One quantity is a band of that one value. In the object low is required; a missing or "unbounded" high means at least low.
/// Low and high without expected take their middle as expected, with the basis of common practice, since nobody stated it.
/// </remarks>
internal sealed class BandMember<T> : ReferenceMember<T>
    where T : QuantityBand
{
    private static readonly Basis Middle = Basis.CommonPractice("middle of the stated low and high");

    private readonly QuantityValue quantity;
    private readonly Func<Band, BandBasis, T> create;

    public BandMember(string name, ValueRange range, Func<Band, BandBasis, T> create, string doc)
        : base(name, doc)
    {
        quantity = new QuantityValue(range);
        this.create = create;
    }

    public override string ValueWords => quantity.Words + ", or { low, expected, high, source }";

    public override QuantityValue? Quantity => quantity;

    public override string? PermittedWords => quantity.Range.Words;

    public override object? OfSi(double si) =>
        quantity.Range.Contains(si) ? create(Band.Exactly(si), BandObject.OfCase) : null;

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        if (reader.TokenType != JsonTokenType.StartObject)
        {
            return quantity.Read(ref reader, walk) is { } si ? create(Band.Exactly(si), BandObject.OfCase) : null;
        }

        long offset = reader.TokenStartIndex;
        Span<double?> ends = [null, null, null];
        bool isGood = BandObject.Read(ref reader, walk, quantity, ends, out bool isLowStated, out Basis basis);
        if (!isLowStated)
        {
            walk.Error(
                CaseErrorKind.MissingMember,
                offset,
                "A band needs low; when nothing is assured, low may be the smallest that is permitted here (" + quantity.Range.Words + ").",
                null,
                null,
                null);
        }

        return isGood && isLowStated ? Assemble(ends, basis, offset, walk) : null;
    }

    public override void Write(Utf8JsonWriter writer, object value)
    {
        var band = (QuantityBand)value;
        Band si = band.SiBand;
        Basis source = band.Basis.Low;
        if (si.Low.Equals(si.High) && source.Equals(BandObject.Case))
        {
            quantity.Write(writer, si.Low);
            return;
        }

        writer.WriteStartObject();
        writer.WritePropertyName(BandObject.Ends[0]);
        quantity.Write(writer, si.Low);
        if (si.HasExpected && !band.Basis.Expected.Equals(Middle))
        {
            writer.WritePropertyName(BandObject.Ends[1]);
            quantity.Write(writer, si.Expected);
        }

        if (si.IsBounded)
        {
            writer.WritePropertyName(BandObject.Ends[2]);
            quantity.Write(writer, si.High);
        }

        if (!source.Equals(BandObject.Case))
        {
            writer.WriteString(BandObject.Source, source.Document);
        }

        writer.WriteEndObject();
    }

    public override void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteStartArray("oneOf");
        writer.WriteStartObject();
        quantity.WriteSchema(writer);
        writer.WriteEndObject();
        writer.WriteStartObject();
        writer.WriteString("type", "object");
        writer.WriteStartObject("properties");
        foreach (string end in BandObject.Ends)
        {
            writer.WriteStartObject(end);
            quantity.WriteSchema(writer, end == BandObject.Ends[0] ? string.Empty : BandObject.Unbounded);
            writer.WriteEndObject();
        }

        writer.WriteStartObject(BandObject.Source);
        BandObject.SourceText.WriteSchema(writer);
        writer.WriteEndObject();
        writer.WriteEndObject();
        writer.WriteStartArray("required");
        writer.WriteStringValue(BandObject.Ends[0]);
        writer.WriteEndArray();
        writer.WriteBoolean("additionalProperties", false);
        writer.WriteEndObject();
        writer.WriteEndArray();
    }

    private static BandBasis BasisOfMiddle(Basis basis) => new(basis, Middle, basis, BandEnd.Limit, BandEnd.Limit);

    private T? Assemble(ReadOnlySpan<double?> ends, Basis basis, long offset, CaseWalk walk)
    {
        double low = ends[0]!.Value;
        double high = ends[2] ?? double.PositiveInfinity;
        bool isMiddle = ends[1] is null && !double.IsPositiveInfinity(high);
        double expected = ends[1] ?? (isMiddle ? low + ((high - low) / 2) : double.PositiveInfinity);
        if (low <= expected && expected <= high)
        {
            bool needsMiddle = isMiddle && low < high;
            return create(new Band(low, expected, high), needsMiddle ? BasisOfMiddle(basis)
                : ReferenceEquals(basis, BandObject.Case) ? BandObject.OfCase : BandBasis.Of(basis));
        }

        string received = Shown(low) + ", " + Shown(expected) + ", " + Shown(high);
        walk.Error(
            CaseErrorKind.Contradiction,
            offset,
            "A band must rise from low over expected to high; got " + received + ".",
            "low ≤ expected ≤ high",
            received,
            null);
        return null;
    }

    private string Shown(double si) =>
        double.IsPositiveInfinity(si) ? BandObject.Unbounded : QuantityText.Format(si, quantity.Range.Dimension);
}
