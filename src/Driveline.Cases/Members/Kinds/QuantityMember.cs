using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>One quantity within a range: a text with a unit; a plain number may also be a JSON number. Kept in SI.</summary>
internal sealed class QuantityMember<T> : ValueMember<T>
    where T : struct
{
    private readonly QuantityValue quantity;
    private readonly Func<double, T> ofSi;

    public QuantityMember(string name, QuantityValue quantity, Func<double, T> ofSi, string doc)
        : base(name, doc)
    {
        this.quantity = quantity;
        this.ofSi = ofSi;
    }

    public override string ValueWords => quantity.Words;

    public override QuantityValue? Quantity => quantity;

    public override string? PermittedWords => quantity.Range.Words;

    public override T FactOf(object value) => ofSi((double)value);

    public override object? OfSi(double si) => quantity.Range.Contains(si) ? si : null;

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk) => quantity.Read(ref reader, walk);

    public override void Write(Utf8JsonWriter writer, object value) => quantity.Write(writer, (double)value);

    public override void WriteSchema(Utf8JsonWriter writer) => quantity.WriteSchema(writer);
}
