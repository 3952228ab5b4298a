using Driveline.Cases;
using Driveline.Cases.Members;

namespace Driveline.Sweeps.Rows;

/// <summary>Puts values into a case: only the objects on the way to them are copied, all others are shared with the case.</summary>
/// <remarks>Built once a study; safe for several threads.</remarks>
internal sealed class CasePatch
{
    // A walk that has found nothing wrong, to be used again by its thread.
    [ThreadStatic]
    private static CaseWalk? clean;

    private readonly CaseFile file;
    private readonly Node root;
    private readonly bool areNumbers;
    private volatile bool isRootGood;

    public CasePatch(CaseFile file, IReadOnlyList<CaseTarget> targets)
    {
        this.file = file;
        root = new Node(file.Facts);
        for (int k = 0; k < targets.Count; k++)
        {
            root.Add(targets[k].Steps, 0, k);
        }

        root.Seal();
        areNumbers = targets.All(t => t.Member.Quantity is not null || t.IsWhole);
    }

    /// <summary>The case with the values in place of its own; null, with the first reason, when they contradict something.</summary>
    public CaseFile? With(object[] values, out string? problem)
    {
        CaseWalk walk = clean ?? new CaseWalk([]);
        clean = null;
        CaseObject facts = root.With(values, walk, isRootGood);
        if (walk.HasErrors)
        {
            CaseError error = walk.Errors()[0];
            problem = error.Path + ": " + error.Message;
            return null;
        }

        // What must hold between the parts of a case asks what is stated, days and names, never a number. Written once: a write of each
        // row would take the line of memory from the other threads.
        if (areNumbers && !isRootGood)
        {
            isRootGood = true;
        }

        clean = walk;
        problem = null;
        return file.WithFacts(facts);
    }

    private sealed class Node(CaseObject shared)
    {
        private readonly List<(int Slot, int Factor)> facts = [];
        private readonly List<(int Slot, Node Inner)> objects = [];
        private readonly List<(ListMember Member, Dictionary<int, Node> Items)> lists = [];
        private StatedFact[] template = [];
        private bool isSameBolt;

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
            isSameBolt = shared.Table == ShearBoltMembers.Table && facts.TrueForAll(f => BoltFacts.IsOfJoint(shared.Table.Members[f.Slot]));
            objects.ForEach(o => o.Inner.Seal());
            lists.ForEach(l => l.Items.Values.ToList().ForEach(i => i.Seal()));
        }

        public CaseObject With(object[] values, CaseWalk walk, bool isChecked)
        {
            var copy = (StatedFact[])template.Clone();
            foreach ((int slot, int factor) in facts)
            {
                Put(copy, slot, values[factor]);
            }

            foreach ((int slot, Node inner) in objects)
            {
                Put(copy, slot, inner.With(values, walk, false));
            }

            foreach ((ListMember member, Dictionary<int, Node> items) in lists)
            {
                CaseList own = shared.Get(member);
                var list = new List<CaseObject>(own.Count);
                for (int k = 0; k < own.Count; k++)
                {
                    list.Add(items.TryGetValue(k, out Node? item) ? item.With(values, walk, false) : own[k]);
                }

                var changed = new CaseList(list);
                Put(copy, member.Slot, changed);
                member.Check(changed, shared.OffsetOf(member), walk);
            }

            CaseObject made = shared.With(copy);
            if (isSameBolt)
            {
                BoltFacts.ShareBolt(made, shared);
            }

            if (!isChecked)
            {
                shared.Table.Across?.Invoke(made, walk);
            }

            return made;
        }

        private static void Put(StatedFact[] facts, int slot, object value)
        {
            int at = 0;
            while (facts[at].Slot != slot)
            {
                at++;
            }

            facts[at] = new StatedFact(slot, facts[at].Offset, value);
        }
    }
}
