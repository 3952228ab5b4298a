using Driveline.Cases.Members;

namespace Driveline.Cases.TorsionModels;

/// <summary>One part of a model while it is read, with its place and its name.</summary>
internal sealed class ModelPart
{
    private ModelPart(DraftsMember list, int index, CaseDraft draft, Member nameMember, string? name)
    {
        List = list;
        Index = index;
        Draft = draft;
        NameMember = nameMember;
        Name = name;
    }

    public DraftsMember List { get; }

    public int Index { get; }

    public CaseDraft Draft { get; }

    public Member NameMember { get; }

    /// <summary>Its name, stated or by its place; null when the stated one cannot be read.</summary>
    public string? Name { get; }

    /// <summary>The readable parts of a list.</summary>
    public static IReadOnlyList<ModelPart> All(CaseDraft model, DraftsMember list, Member name, string prefix)
    {
        var parts = new List<ModelPart>();
        List<CaseDraft?> drafts = model.Reference<List<CaseDraft?>>(list) ?? [];
        for (int i = 0; i < drafts.Count; i++)
        {
            if (drafts[i] is { } draft)
            {
                bool byPlace = prefix.Length > 0 && !draft.IsStated(name);
                parts.Add(new ModelPart(list, i, draft, name, byPlace ? FormattableString.Invariant($"{prefix} {i + 1}") : draft.Reference<string>(name)));
            }
        }

        return parts;
    }

    /// <summary>Reports something wrong with one of its members.</summary>
    public void Say(CaseWalk walk, Member member, string message, string? permitted, string? received, string? nearest)
    {
        walk.Enter(List.Name);
        walk.Enter(Index);
        walk.Enter(member.Name);
        walk.Error(CaseErrorKind.Contradiction, Draft.OffsetOf(member), message, permitted, received, nearest);
        walk.Leave();
        walk.Leave();
        walk.Leave();
    }

    public void Say(CaseWalk walk, Member member, string message) => Say(walk, member, message, null, null, null);
}
