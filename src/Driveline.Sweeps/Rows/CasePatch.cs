using Driveline.Cases;
using Driveline.Cases.Members;

namespace Driveline.Sweeps.Rows;

/// <summary>Puts values into a case: only the objects on the way to them are copied, all others are shared with the case.</summary>
/// <remarks>Built once a study; safe for several threads, each with a copy of its own.</remarks>
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
    public CaseFile? With(object[] values, out string? problem) => Put(NewCopy(), values, out problem);

    /// <summary>A copy of what the values change, for one thread.</summary>
    public PatchedCase NewCopy()
    {
        PatchedObject made = root.NewCopy();
        return new PatchedCase(file.WithFacts(made.Object), made);
    }

    /// <summary>
    /// Puts values into a copy, in place of those it has; null, with the first reason, when they contradict something. The case is the
    /// copy's own: it holds until the next values.
    /// </summary>
    public CaseFile? Put(PatchedCase copy, object[] values, out string? problem)
    {
        CaseWalk walk = clean ?? new CaseWalk([]);
        clean = null;
        root.Fill(copy.Facts, values, walk, isRootGood);
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
        return copy.File;
    }

    private sealed class Node(CaseObject shared)
    {
        private readonly List<(int Slot, int Factor)> facts = [];
        private readonly List<(int Slot, Node Inner)> objects = [];
        private readonly List<(ListMember Member, SortedDictionary<int, Node> Items)> lists = [];
        private (ListMember Member, Node[] Items)[] itemsInOrder = [];
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
            itemsInOrder = [.. lists.Select(l => (l.Member, l.Items.Values.ToArray()))];
            Array.ForEach(itemsInOrder, l => Array.ForEach(l.Items, i => i.Seal()));
        }

        public PatchedObject NewCopy()
        {
            var copy = (StatedFact[])template.Clone();
            var inner = new List<PatchedObject>();
            foreach ((int slot, Node node) in objects)
            {
                inner.Add(node.NewCopy());
                Put(copy, slot, inner[inner.Count - 1].Object);
            }

            foreach ((ListMember member, SortedDictionary<int, Node> items) in lists)
            {
                CaseObject[] list = [.. shared.Get(member)];
                foreach ((int at, Node node) in items)
                {
                    inner.Add(node.NewCopy());
                    list[at] = inner[inner.Count - 1].Object;
                }

                Put(copy, member.Slot, new CaseList(list));
            }

            return new PatchedObject(shared.With(copy), copy, [.. inner]);
        }

        public void Fill(PatchedObject copy, object[] values, CaseWalk walk, bool isChecked)
        {
            foreach ((int slot, int factor) in facts)
            {
                Put(copy.Facts, slot, values[factor]);
            }

            int at = 0;
            foreach ((_, Node node) in objects)
            {
                node.Fill(copy.Inner[at++], values, walk, false);
            }

            foreach ((ListMember member, Node[] items) in itemsInOrder)
            {
                foreach (Node node in items)
                {
                    node.Fill(copy.Inner[at++], values, walk, false);
                }

                member.Check(copy.Object.Get(member), shared.OffsetOf(member), walk);
            }

            copy.Object.Renew();
            if (isSameBolt)
            {
                BoltFacts.ShareBolt(copy.Object, shared);
            }

            if (!isChecked)
            {
                shared.Table.Across?.Invoke(copy.Object, walk);
            }
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
