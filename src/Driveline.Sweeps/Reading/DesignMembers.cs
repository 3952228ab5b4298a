using Driveline.Cases.Members;

namespace Driveline.Sweeps.Reading;

/// <summary>The rows of a design.</summary>
internal sealed class DesignMembers
{
    private readonly ChoiceMember<DesignKind> kind;
    private readonly WholeMember n;
    private readonly WholeMember seed;
    private readonly WholeMember levels;
    private readonly FlagMember maximin;
    private readonly FlagMember scramble;

    public DesignMembers()
    {
        Table = new MemberTable("design", "How the rows are chosen.", Across);
        kind = Table.Choice<DesignKind>("kind", "The kind of design.").Required();
        n = Table.Whole("n", 1, int.MaxValue,
            "Rows; with sensitivity base points; of a grid levels of each factor; of morris trajectories.").Required();
        seed = Table.Whole("seed", 0, int.MaxValue, "One seed gives the same rows everywhere; 0 when left out.");
        levels = Table.Whole("levels", 2, 1000, "Levels of a morris design, even; 4 when left out.");
        maximin = Table.Flag("maximin", "True to spread the points of a latinHypercube out; at most 2000 rows.");
        scramble = Table.Flag("scramble", "False for the points of a sobol design as published.");
    }

    public MemberTable Table { get; }

    /// <summary>The design of facts without errors.</summary>
    public Design DesignOf(CaseObject facts)
    {
        int size = facts.Get(n)!.Value;
        ulong by = (ulong)(facts.Get(seed) ?? 0);
        return facts.Get(kind) switch
        {
            DesignKind.Grid => Design.Grid(size),
            DesignKind.Random => Design.Random(size, by),
            DesignKind.LatinHypercube when facts.Get(maximin) == true => Design.MaximinLatinHypercube(size, by),
            DesignKind.LatinHypercube => Design.LatinHypercube(size, by),
            DesignKind.Morris => Design.Morris(size, facts.Get(levels) ?? 4, by),
            _ => facts.Get(scramble) == false ? Design.UnscrambledSobol(size) : Design.Sobol(size, by),
        };
    }

    private void Across(CaseObject facts, CaseWalk walk)
    {
        DesignKind stated = facts.Get(kind);
        Only(facts, walk, levels, stated, DesignKind.Morris);
        Only(facts, walk, maximin, stated, DesignKind.LatinHypercube);
        Only(facts, walk, scramble, stated, DesignKind.Sobol);
        if (facts.Get(levels) is { } count && count % 2 != 0)
        {
            walk.Contradiction(facts, levels, FormattableString.Invariant($"Levels must be even; got {count}."));
        }

        if (facts.Get(maximin) == true && facts.Get(n) is > Sampling.MaximinPoints.MostRows and { } rows)
        {
            walk.Contradiction(facts, n, FormattableString.Invariant(
                $"A maximin Latin hypercube has at most {Sampling.MaximinPoints.MostRows} rows; got {rows}."));
        }
    }

    private void Only(CaseObject facts, CaseWalk walk, Member member, DesignKind stated, DesignKind wanted)
    {
        if (facts.IsStated(member) && stated != DesignKind.NotKnown && stated != wanted)
        {
            walk.NotBelonging(facts, member,
                "\"" + member.Name + "\" belongs to a design of kind " + kind.NameOf(wanted) + ".", kind.NameOf(wanted));
        }
    }
}
