using Driveline.Cases;
using Driveline.Cases.Members;

namespace Driveline.Sweeps.Rows;

/// <summary>Puts values into a case: only the objects on the way to them are copied, all others are shared with the case.</summary>
/// <remarks>Built once a study; safe for several threads.</remarks>
internal sealed class CasePatch
{
    private readonly CaseFile file;
    private readonly Node root;

    public CasePatch(CaseFile file, IReadOnlyList<CaseTarget> targets)
    {
        this.file = file;
        root = new Node(file.Facts);
        for (int k = 0; k < targets.Count; k++)
        {
            root.Add(targets[k].Steps, 0, k);
        }

        root.Seal();
    }

    /// <summary>The case with the values in place of its own; null, with the first reason, when they contradict something.</summary>
    public CaseFile? With(object[] values, out string? problem)
    {
        var walk = new CaseWalk([]);
        CaseObject facts = root.With(values, walk);
        problem = walk.HasErrors ? walk.Errors()[0] is { } error ? error.Path + ": " + error.Message : null : null;
        return problem is null ? file.WithFacts(facts) : null;
    }

    private sealed class Node(CaseObject shared)
    {
        private readonly List<(int Slot, int Factor)> facts = [];
        private readonly List<(int Slot, Node Inner)> objects = [];
        private readonly List<(ListMember Member, Dictionary<int, Node> Items)> lists = [];
        private StatedFact[] template = [];

        public void Add(IReadOnlyList<CaseStep> steps, int at, int factor)
        {
            CaseStep step = steps[at];
            if (at == steps.Count - 1)
            {
                facts.Add((step.Member.Slot, factor));
            }
            else if (step.Member is ListMember list)
            {
                int known = lists.FindIndex(l => l.Member == list);
                if (known < 0)
                {
                    known = lists.Count;
                    lists.Add((list, []));
                }

                if (!lists[known].Items.TryGetValue(step.Index, out Node? item))
                {
                    lists[known].Items.Add(step.Index, item = new Node(shared.Get(list)[step.Index]));
                }

                item.Add(steps, at + 1, factor);
            }
            else
            {
                int known = objects.FindIndex(o => o.Slot == step.Member.Slot);
                if (known < 0)
                {
                    known = objects.Count;
                    objects.Add((step.Member.Slot, new Node((CaseObject)shared[step.Member]!)));
                }

                objects[known].Inner.Add(steps, at + 1, factor);
            }
        }

        // A fact that the case is silent on counts as stated where its object begins.
        public void Seal()
        {
            template = shared.StatedWith(facts.Select(f => f.Slot));
            objects.ForEach(o => o.Inner.Seal());
            lists.ForEach(l => l.Items.Values.ToList().ForEach(i => i.Seal()));
        }

        public CaseObject With(object[] values, CaseWalk walk)
        {
            var copy = (StatedFact[])template.Clone();
            foreach ((int slot, int factor) in facts)
            {
                Put(copy, slot, values[factor]);
            }

            foreach ((int slot, Node inner) in objects)
            {
                Put(copy, slot, inner.With(values, walk));
            }

            foreach ((ListMember member, Dictionary<int, Node> items) in lists)
            {
                var list = new CaseObject[shared.Get(member).Count];
                for (int k = 0; k < list.Length; k++)
                {
                    list[k] = items.TryGetValue(k, out Node? item) ? item.With(values, walk) : shared.Get(member)[k];
                }

                var changed = new CaseList(list);
                Put(copy, member.Slot, changed);
                member.Check(changed, shared.OffsetOf(member), walk);
            }

            CaseObject made = shared.With(copy);
            shared.Table.Across?.Invoke(made, walk);
            return made;
        }

        private static void Put(StatedFact[] facts, int slot, object value)
        {
            int at = Array.FindIndex(facts, f => f.Slot == slot);
            facts[at] = new StatedFact(slot, facts[at].Offset, value);
        }
    }
}
