using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>What is seen on a bolt head: radial lines, a text, both, or nothing.</summary>
public sealed class HeadMark
{
    private HeadMark(int lines, LineSpacing spacing, string? text)
    {
        Lines = lines;
        Spacing = spacing;
        Text = text;
    }

    /// <summary>No grade mark; a maker's mark alone counts as none.</summary>
    public static HeadMark None { get; } = new(0, LineSpacing.NotKnown, null);

    /// <summary>Number of radial lines; 0 for none.</summary>
    public int Lines { get; }

    /// <summary>How the lines are spaced.</summary>
    public LineSpacing Spacing { get; }

    /// <summary>Letters or numbers on the head, without the maker's mark; null for none.</summary>
    public string? Text { get; }

    /// <summary>Radial lines whose spacing was not looked at.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The count is not from 0 to 24.</exception>
    public static HeadMark RadialLines(int count) => RadialLines(count, LineSpacing.NotKnown);

    /// <summary>Radial lines.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The count is not from 0 to 24.</exception>
    public static HeadMark RadialLines(int count, LineSpacing spacing) =>
        new(Guard.Within(count, 0, 24, "Number of radial lines", nameof(count)), spacing, null);

    /// <summary>Letters or numbers, e.g. "8.8", "A307", "A2-70".</summary>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    public static HeadMark OfText(string text) => new(0, LineSpacing.NotKnown, Guard.NotBlank(text, "Head mark", nameof(text)).Trim());

    /// <summary>The same mark with letters or numbers beside it.</summary>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    public HeadMark WithText(string text) => new(Lines, Spacing, Guard.NotBlank(text, "Head mark", nameof(text)).Trim());

    /// <summary>The mark in a few words.</summary>
    public override string ToString() => (Lines, Text) switch
    {
        (0, null) => "no grade mark",
        (0, _) => "\"" + Text + "\"",
        (_, null) => FormattableString.Invariant($"{Lines} radial lines"),
        _ => FormattableString.Invariant($"{Lines} radial lines and \"{Text}\""),
    };
}
