using System.Text;
using System.Text.Json;

namespace Driveline.Cases.Members;

/// <summary>One row of the member table: how a fact is named, read, written and described.</summary>
internal abstract class Member
{
    private uint kindBits;

    protected Member(string name, string doc)
    {
        Name = name;
        Doc = doc;
    }

    /// <summary>Name in the file, lower camel case.</summary>
    public string Name { get; }

    /// <summary>What it is, in one or two sentences.</summary>
    public string Doc { get; }

    /// <summary>Place of the value in its object.</summary>
    public int Slot { get; set; }

    /// <summary>True when the object is refused without it.</summary>
    public bool IsRequired { get; private set; }

    /// <summary>The kind of driveline element that this member names; NotKnown when it names none.</summary>
    public ElementKind NamedKind { get; private set; }

    /// <summary>The kinds of driveline element that may have this member; null when all may.</summary>
    public IReadOnlyList<ElementKind>? Kinds { get; private set; }

    /// <summary>What is written there, for the docs page, e.g. "power".</summary>
    public abstract string ValueWords { get; }

    /// <summary>What is permitted, for messages and the docs page; null when anything of its kind is.</summary>
    public virtual string? PermittedWords => null;

    /// <summary>How its quantity, or that of its ends, is read; null when it has none.</summary>
    public virtual QuantityValue? Quantity => null;

    /// <summary>Reads the value at the reader's token and leaves the reader on its last token; null after an error.</summary>
    public abstract object? Read(ref Utf8JsonReader reader, CaseWalk walk);

    /// <summary>
    /// The value that stands for a number in SI, as <see cref="Read"/> would give it; null when the member takes no number or not this
    /// one. Of a band the number stands for all three values.
    /// </summary>
    public virtual object? OfSi(double si) => null;

    /// <summary>Writes the value alone, without its name.</summary>
    public abstract void Write(Utf8JsonWriter writer, object value);

    /// <summary>Writes the schema of the value as an object, without its doc.</summary>
    public abstract void WriteSchema(Utf8JsonWriter writer);

    /// <summary>The value alone as JSON text.</summary>
    public string JsonOf(object value)
    {
        using var stream = new MemoryStream();
        using (var writer = new Utf8JsonWriter(stream))
        {
            Write(writer, value);
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    public bool AppliesTo(ElementKind kind) =>
        NamedKind == kind || (NamedKind == ElementKind.NotKnown && (Kinds is null || (kindBits & (1u << (int)kind)) != 0));

    internal void MarkRequired() => IsRequired = true;

    internal void MarkNamed(ElementKind kind) => NamedKind = kind;

    internal void MarkKinds(ElementKind[] kinds)
    {
        Kinds = kinds;
        foreach (ElementKind kind in kinds)
        {
            kindBits |= 1u << (int)kind;
        }
    }
}
