using System.Diagnostics.CodeAnalysis;
using Driveline.Quantities;

namespace Driveline.Fasteners;

/// <summary>What is seen on a bolt head: radial lines, a text, both, or nothing.</summary>
public sealed class HeadMark
{
    internal const int MostLines = 24;

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

    internal bool IsNone => Lines == 0 && Text is null;

    /// <summary>Radial lines whose spacing was not looked at.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The count is not from 0 to 24.</exception>
    public static HeadMark RadialLines(int count) => RadialLines(count, LineSpacing.NotKnown);

    /// <summary>Radial lines.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The count is not from 0 to 24.</exception>
    public static HeadMark RadialLines(int count, LineSpacing spacing) =>
        new(Guard.Within(count, 0, MostLines, "Number of radial lines", nameof(count)), spacing, null);

    /// <summary>Letters or numbers, e.g. "8.8", "A307", "A2-70".</summary>
    /// <exception cref="ArgumentException">The text is empty.</exception>
    public static HeadMark OfText(string text) => new(0, LineSpacing.NotKnown, Guard.NotBlank(text, "Head mark", nameof(text)).Trim());

    /// <summary>The mark in a text, as people write it.</summary>
    /// <param name="text">Lines in words or figures ("three radial lines", "6 lines, grouped", "3 lines and \"B\""), what is stamped
    /// ("8.8", "A325", "A2-70"), or that there is nothing ("none", "no marks"). Anything else is taken as stamped.</param>
    /// <exception cref="ArgumentException">The text is empty, too long, a bare count such as "6", or counts more than 24 lines.</exception>
    /// <example>"three radial lines": 3 lines, their spacing not known.</example>
    public static HeadMark Parse(string text) => TryParse(text, out HeadMark? mark, out string? problem)
        ? mark!
        : throw new ArgumentException(problem, nameof(text));

    /// <summary>The mark in a text, or what is wrong with the text; see <see cref="Parse"/>.</summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out HeadMark? mark, [NotNullWhen(false)] out string? problem) =>
        HeadMarkText.TryParse(text, out mark, out problem);

    /// <summary>What a bolt with this mark and thread may be.</summary>
    /// <remarks>A mark narrows the grade down; it never proves it. A mark that is not held gives no candidates and a finding.</remarks>
    /// <param name="thread">Its thread, which rules out grades not made in that size.</param>
    /// <example>Three radial lines at 1/2-13 UNC: SAE 5 first, 827 to 1048 MPa.</example>
    public HeadMarkIdentification Identify(ScrewThread thread) => HeadMarks.Identify(this, thread);

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
