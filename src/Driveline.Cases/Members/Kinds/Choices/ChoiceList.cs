namespace Driveline.Cases.Members;

/// <summary>Constants of an enumeration in the order of the file, each once. Equal when they are.</summary>
internal sealed class ChoiceList<T> : IEquatable<ChoiceList<T>>
    where T : struct, Enum
{
    public ChoiceList(IReadOnlyList<T> choices) => Choices = choices;

    public IReadOnlyList<T> Choices { get; }

    public bool Equals(ChoiceList<T>? other) => other is not null && Choices.SequenceEqual(other.Choices);

    public override bool Equals(object? obj) => Equals(obj as ChoiceList<T>);

    public override int GetHashCode() => Choices.Count;
}
