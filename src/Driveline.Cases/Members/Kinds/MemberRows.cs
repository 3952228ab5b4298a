namespace Driveline.Cases.Members;

/// <summary>Words that a row of the member table may end with.</summary>
internal static class MemberRows
{
    /// <summary>The object is refused without this member.</summary>
    public static T Required<T>(this T member)
        where T : Member
    {
        member.MarkRequired();
        return member;
    }

    /// <summary>This member says what kind of element the object is; its value is the name, or the element itself.</summary>
    public static T Naming<T>(this T member, ElementKind kind)
        where T : Member
    {
        member.MarkNamed(kind);
        return member;
    }

    /// <summary>Only elements of these kinds may have this member.</summary>
    public static T For<T>(this T member, params ElementKind[] kinds)
        where T : Member
    {
        member.MarkKinds(kinds);
        return member;
    }
}
