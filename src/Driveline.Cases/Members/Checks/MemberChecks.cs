using System.Globalization;
using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>What must hold between the members of one object of any table.</summary>
internal static class MemberChecks
{
    public static void ExactlyOne(CaseObject facts, CaseWalk walk, params Member[] members)
    {
        if (!members.Any(facts.IsStated))
        {
            string names = string.Join(", ", members.Select(m => m.Name));
            walk.Error(CaseErrorKind.MissingMember, facts.Offset, "A " + facts.Table.Name + " needs one of " + names + ".", names, null,
                null);
        }

        AtMostOne(facts, walk, members);
    }

    public static void AtMostOne(CaseObject facts, CaseWalk walk, params Member[] members)
    {
        Member[] stated = members.Where(facts.IsStated).OrderBy(facts.OffsetOf).ToArray();
        foreach (Member other in stated.Skip(1))
        {
            walk.Contradiction(facts, other, "\"" + other.Name + "\" and \"" + stated[0].Name + "\" exclude each other; state one.");
        }
    }

    /// <summary>Of two members only the first is taken, wherever it stands.</summary>
    public static void NotBoth(CaseObject facts, CaseWalk walk, Member one, Member other) =>
        Refuse(facts, walk, other, facts.IsStated(one), one, "State \"{1}\" or \"{0}\", not both.");

    public static void Needs(CaseObject facts, CaseWalk walk, Member member, Member needed) =>
        Refuse(facts, walk, member, !facts.IsStated(needed), needed, "\"{0}\" means nothing without \"{1}\"; state that too.");

    public static void Needs(CaseObject facts, CaseWalk walk, Member member, Member needed, Member orNeeded)
    {
        if (facts.IsStated(member) && !facts.IsStated(needed) && !facts.IsStated(orNeeded))
        {
            walk.Contradiction(facts, member,
                "\"" + member.Name + "\" means nothing without \"" + needed.Name + "\" or \"" + orNeeded.Name + "\"; state that too.");
        }
    }

    public static void NotAbove(CaseObject facts, CaseWalk walk, Member member, Member most, Dimension dimension)
    {
        if (facts.Si(member) is { } value && value > facts.Si(most))
        {
            string limit = QuantityText.Format(facts.Si(most)!.Value, dimension);
            walk.Contradiction(facts, member, "\"" + member.Name + "\" must be at most \"" + most.Name + "\", " + limit + "; got "
                + QuantityText.Format(value, dimension) + ".");
        }
    }

    public static void Bounded<T>(CaseObject facts, CaseWalk walk, BandMember<T> member)
        where T : QuantityBand
    {
        if (facts.Get(member) is { IsBounded: false })
        {
            walk.Contradiction(facts, member, "\"" + member.Name + "\" needs a high end here; leave it out when it is not known.");
        }
    }

    public static void Refuse(CaseObject facts, CaseWalk walk, Member member, bool when, string message)
    {
        if (when && facts.IsStated(member))
        {
            walk.Contradiction(facts, member, message);
        }
    }

    private static void Refuse(CaseObject facts, CaseWalk walk, Member member, bool when, Member other, string message)
    {
        if (when && facts.IsStated(member))
        {
            walk.Contradiction(facts, member, string.Format(CultureInfo.InvariantCulture, message, member.Name, other.Name));
        }
    }

    public static string Shown(double? m) => FactConflict.Shown(m);

    /// <summary>What the core says contradicts itself, each at its member.</summary>
    public static void Report(CaseObject facts, CaseWalk walk, IEnumerable<FactConflict> conflicts)
    {
        foreach (FactConflict conflict in conflicts)
        {
            walk.Contradiction(facts, facts.Table.Find(conflict.Fact)!, conflict.Message);
        }
    }
}
