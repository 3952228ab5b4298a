namespace Driveline.Advice;

/// <summary>Turns head marks and the manual's grade into the fact the advice reasons with.</summary>
internal static class GradeFacts
{
    /// <summary>Softer, same, stronger or unmarked against the manual; null when one of the two is not known.</summary>
    /// <remarks>
    /// A bolt without marks where the manual asks for a low grade is "unmarked": it may be the right one or anything. Where the
    /// manual asks for a marked grade, a bolt without marks is taken as softer, which is what it usually is.
    /// </remarks>
    /// <param name="seen">What is read on the head.</param>
    /// <param name="manual">What the manual asks for.</param>
    public static Fact? Compare(BoltMark seen, BoltMark manual)
    {
        if (seen == BoltMark.NotKnown || manual is BoltMark.NotKnown or BoltMark.NoMark)
        {
            return null;
        }

        return seen == BoltMark.NoMark && manual == BoltMark.Low ? OwnerFacts.GradeAgainstManual.Unmarked
            : seen == BoltMark.NoMark || seen < manual ? OwnerFacts.GradeAgainstManual.Softer
            : seen > manual ? OwnerFacts.GradeAgainstManual.Stronger
            : OwnerFacts.GradeAgainstManual.Same;
    }
}
