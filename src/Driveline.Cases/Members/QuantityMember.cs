using System.Text.Json;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>One quantity within a range: a text with a unit; a plain number may also be a JSON number.</summary>
internal sealed class QuantityMember : Member
{
    private readonly QuantityValue quantity;

    public QuantityMember(string name, ValueRange range, string doc)
        : this(name, new QuantityValue(range), doc)
    {
    }

    public QuantityMember(string name, QuantityValue quantity, string doc)
        : base(name, doc) => this.quantity = quantity;

    public override string ValueWords => quantity.Words;

    public override string? PermittedWords => quantity.Range.Words;

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk) => quantity.Read(ref reader, walk);

    public override void Write(Utf8JsonWriter writer, object value) => quantity.Write(writer, (double)value);

    public override void WriteSchema(Utf8JsonWriter writer) => quantity.WriteSchema(writer);

    public override void Check(object value)
    {
        double si = (double)value;
        if (!quantity.Range.Contains(si))
        {
            throw NotPermitted(Guard.IsFinite(si) ? QuantityText.Format(si, quantity.Range.Dimension) : "a value that is not finite");
        }
    }
}
