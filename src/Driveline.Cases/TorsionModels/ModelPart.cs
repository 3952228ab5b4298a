using Driveline.Cases.Members;

namespace Driveline.Cases.TorsionModels;

/// <summary>One part of a model while it is read, with its place and its name.</summary>
internal sealed class ModelPart
{
    private ModelPart(ListMember list, CaseObject facts, Member nameMember, string? name)
    {
        List = list;
        Draft = facts;
        NameMember = nameMember;
        Name = name;
    }

    public ListMember List { get; }

    public CaseObject Draft { get; }

    public Member NameMember { get; }

    /// <summary>Its name, stated or by its place; null when the stated one cannot be read.</summary>
    public string? Name { get; }

    /// <summary>The parts of a list.</summary>
    public static IReadOnlyList<ModelPart> All(CaseObject model, ListMember list, TextMember name, string prefix)
    {
        var parts = new List<ModelPart>();
        foreach (CaseObject facts in model.Get(list))
        {
            bool byPlace = prefix.Length > 0 && !facts.IsStated(name);
            parts.Add(new ModelPart(
                list, facts, name, byPlace ? FormattableString.Invariant($"{prefix} {parts.Count + 1}") : facts.Get(name)));
        }

        return parts;
    }

    /// <summary>Reports something wrong with one of its members.</summary>
    public void Say(CaseWalk walk, Member member, string message, string? permitted, string? received, string? nearest) =>
        walk.Contradiction(Draft, member, message, permitted, received, nearest);

    public void Say(CaseWalk walk, Member member, string message) => walk.Contradiction(Draft, member, message);
}
