using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>One of the constants of an enumeration, in lower camel case; the first constant, NotKnown, is what is not stated.</summary>
internal sealed class ChoiceMember<T> : ValueMember<T>
    where T : struct, Enum
{
    private readonly ChoiceNames<T> names = new(Choices());

    public ChoiceMember(string name, string doc)
        : base(name, doc)
    {
    }

    public override string ValueWords => "choice";

    public override string? PermittedWords => names.PermittedWords;

    /// <summary>The name of a constant in the file.</summary>
    public string NameOf(T value) => names.NameOf(value);

    public override object? Read(ref Utf8JsonReader reader, CaseWalk walk) => names.Read(ref reader, walk);

    public override void Write(Utf8JsonWriter writer, object value) => writer.WriteStringValue(NameOf((T)value));

    public override void WriteSchema(Utf8JsonWriter writer) => names.WriteSchema(writer);

    private static IEnumerable<KeyValuePair<string, T>> Choices()
    {
#if NET
        string[] constants = Enum.GetNames<T>();
#else
        string[] constants = Enum.GetNames(typeof(T));
#endif
        foreach (string constant in constants)
        {
            if (Enum.TryParse(constant, out T value) && !value.Equals(default(T)))
            {
                yield return new KeyValuePair<string, T>(char.ToLowerInvariant(constant[0]) + constant.Substring(1), value);
            }
        }
    }
}
