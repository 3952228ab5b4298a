using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>A list of constants of an enumeration, each in lower camel case and once.</summary>
internal sealed class ChoicesMember<T> : ReferenceMember<ChoiceList<T>>
    where T : struct, Enum
{
    private ChoiceNames? names;

    public ChoicesMember(string name, string doc)
        : base(name, doc)
    {
    }

    // Read when first needed: most files state few of all choices.
    private ChoiceNames Names => names ??= new(ConstantNames.Of(typeof(T)));

    public override string ValueWords => "list of choices";

    public override string? PermittedWords => "a list, each " + Names.PermittedWords;

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk)
    {
        if (reader.TokenType != JsonTokenType.StartArray)
        {
            walk.WrongKind(ref reader, PermittedWords!);
            return null;
        }

        var read = new List<T>();
        int index = 0;
        while (!walk.IsFull && reader.Read() && reader.TokenType != JsonTokenType.EndArray)
        {
            walk.Enter(index++);
            if (Names.Read(ref reader, walk) is T choice && !read.Contains(choice))
            {
                read.Add(choice);
            }

            walk.Leave();
        }

        return new ChoiceList<T>(read);
    }

    public override void Write(Utf8JsonWriter writer, object value)
    {
        writer.WriteStartArray();
        foreach (T choice in ((ChoiceList<T>)value).Choices)
        {
            writer.WriteStringValue(Names.NameOf(choice));
        }

        writer.WriteEndArray();
    }

    public override void WriteSchema(Utf8JsonWriter writer)
    {
        writer.WriteString("type", "array");
        writer.WriteStartObject("items");
        Names.WriteSchema(writer);
        writer.WriteEndObject();
    }
}
