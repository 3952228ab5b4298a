namespace Driveline.Fasteners;

/// <summary>Codes of the findings this concept reports.</summary>
public static class FastenerFindings
{
    /// <summary>The mark fits more than one grade. Parameters: mark, grades, low, high.</summary>
    public const string SeveralGradesFitTheMark = "fastener.severalGradesFitTheMark";

    /// <summary>No grade held has the mark at the size. Parameters: mark, thread.</summary>
    public const string MarkNotHeld = "fastener.markNotHeld";

    /// <summary>The mark belongs to threads of the other system. Parameters: mark, thread.</summary>
    public const string MarkOfOtherThreads = "fastener.markOfOtherThreads";

    /// <summary>A bolt without a grade mark has no assured maximum strength.</summary>
    public const string UnmarkedHasNoMaximum = "fastener.unmarkedHasNoMaximum";

    /// <summary>The mark is of a proprietary high-strength bolt, which is never a fuse. Parameter: mark.</summary>
    public const string NeverAFuse = "fastener.neverAFuse";

    /// <summary>Stainless bolts scatter widely and have no assured maximum strength.</summary>
    public const string StainlessScattersWidely = "fastener.stainlessScattersWidely";

    /// <summary>
    /// A leading 0 on the mark: the head limits the load in tension, the shank shears as the class says. Parameter: mark.
    /// </summary>
    public const string HeadLimitsTension = "fastener.headLimitsTension";

    /// <summary>Only the size was given and the coarse thread was taken. Parameter: thread.</summary>
    public const string CoarseThreadAssumed = "fastener.coarseThreadAssumed";
}
