using Driveline.Cases.Members;
using Driveline.Quantities;

namespace Driveline.Cases.TorsionModels;

/// <summary>What must hold between the members of one part of a model.</summary>
internal static class PartChecks
{
    public static void ExactlyOne(CaseDraft draft, CaseWalk walk, params Member[] members)
    {
        if (!members.Any(draft.IsStated))
        {
            string names = string.Join(", ", members.Select(m => m.Name));
            walk.Error(CaseErrorKind.MissingMember, draft.Offset, "A " + draft.Table.Name + " needs one of " + names + ".", names, null, null);
        }

        AtMostOne(draft, walk, members);
    }

    public static void AtMostOne(CaseDraft draft, CaseWalk walk, params Member[] members)
    {
        Member[] stated = members.Where(draft.IsStated).OrderBy(draft.OffsetOf).ToArray();
        foreach (Member other in stated.Skip(1))
        {
            Say(draft, walk, other, "\"" + other.Name + "\" and \"" + stated[0].Name + "\" exclude each other; state one.");
        }
    }

    public static void Needs(CaseDraft draft, CaseWalk walk, Member member, Member needed) =>
        Refuse(draft, walk, member, !draft.IsStated(needed), "\"" + member.Name + "\" means nothing without \"" + needed.Name + "\"; state that too.");

    public static void NotAbove(CaseDraft draft, CaseWalk walk, Member member, Member most, Dimension dimension)
    {
        if (draft.Value<double>(member) is { } value && value > draft.Value<double>(most))
        {
            string limit = QuantityText.Format(draft.Value<double>(most)!.Value, dimension);
            Say(draft, walk, member, "\"" + member.Name + "\" must be at most \"" + most.Name + "\", " + limit + "; got " + QuantityText.Format(value, dimension) + ".");
        }
    }

    public static void Refuse(CaseDraft draft, CaseWalk walk, Member member, bool when, string message)
    {
        if (when && draft.IsStated(member))
        {
            Say(draft, walk, member, message);
        }
    }

    /// <summary>Reports a contradiction at a member.</summary>
    public static void Say(CaseDraft draft, CaseWalk walk, Member member, string message) => ElementChecks.Contradiction(walk, draft, member, message);
}
