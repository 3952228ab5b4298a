namespace Driveline.Cases.Members;

/// <summary>What a text means, with the text as it was written. Equal when the texts are equal.</summary>
internal sealed class WrittenText<T> : IEquatable<WrittenText<T>>
    where T : class
{
    public WrittenText(string text, T value)
    {
        Text = text;
        Value = value;
    }

    public string Text { get; }

    public T Value { get; }

    public bool Equals(WrittenText<T>? other) => other is not null && Text == other.Text;

    public override bool Equals(object? obj) => Equals(obj as WrittenText<T>);

    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Text);
}
