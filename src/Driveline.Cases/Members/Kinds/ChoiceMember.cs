using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>One of the constants of an enumeration, in lower camel case; the first constant, NotKnown, is what is not stated.</summary>
internal sealed class ChoiceMember<T> : ValueMember<T>
    where T : struct, Enum
{
    private ChoiceNames? names;

    public ChoiceMember(string name, string doc)
        : base(name, doc)
    {
    }

    // Read when first needed: most files state few of all choices.
    private ChoiceNames Names => names ??= new(ConstantNames.Of(typeof(T)));

    public override string ValueWords => "choice";

    public override string? PermittedWords => Names.PermittedWords;

    /// <summary>The name of a constant in the file.</summary>
    public string NameOf(T value) => Names.NameOf(value);

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk) => Names.Read(ref reader, walk);

    public override void Write(Utf8JsonWriter writer, object value) => writer.WriteStringValue(Names.NameOf(value));

    public override void WriteSchema(Utf8JsonWriter writer) => Names.WriteSchema(writer);
}
