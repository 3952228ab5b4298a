namespace Driveline.Fasteners;

/// <summary>Codes of the findings this concept reports.</summary>
public static class FastenerFindings
{
    /// <summary>The mark fits more than one grade.</summary>
    public const string SeveralGradesFitTheMark = "fastener.severalGradesFitTheMark";

    /// <summary>No grade held has the mark.</summary>
    public const string MarkNotHeld = "fastener.markNotHeld";

    /// <summary>A bolt without a grade mark has no assured maximum strength.</summary>
    public const string UnmarkedHasNoMaximum = "fastener.unmarkedHasNoMaximum";

    /// <summary>The mark is of a proprietary high-strength bolt, which is never a fuse.</summary>
    public const string NeverAFuse = "fastener.neverAFuse";
}
