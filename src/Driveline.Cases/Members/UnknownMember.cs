namespace Driveline.Cases.Members;

/// <summary>Reports a member that an object does not have, or has already.</summary>
internal static class UnknownMember
{
    public static void Report(CaseWalk walk, long offset, string? name, bool isTwice, string place, IEnumerable<string> names)
    {
        string shown = CaseWalk.Shown(name ?? "?");
        if (isTwice)
        {
            walk.Error(CaseErrorKind.DuplicateMember, offset, "\"" + shown + "\" is stated twice here; state it once.", null, shown, null);
            return;
        }

        string[] known = names.ToArray();
        string? nearest = name is null ? null : NearestName.Of(name, known);
        string permitted = string.Join(", ", known);
        walk.Error(
            CaseErrorKind.UnknownMember,
            offset,
            "\"" + shown + "\" is not a member of " + place
                + (nearest is null ? "; it may have " + permitted + "." : "; did you mean \"" + nearest + "\"?"),
            permitted,
            shown,
            nearest);
    }
}
