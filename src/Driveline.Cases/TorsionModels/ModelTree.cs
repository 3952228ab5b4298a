using Driveline.Cases.Members;

namespace Driveline.Cases.TorsionModels;

/// <summary>Shafts and couplings must join all rotors to one tree, and gears must not multiply without bound.</summary>
internal static class ModelTree
{
    private const double Most = 1e6;

    public static void Check(ModelParts parts, CaseWalk walk)
    {
        ModelPart[] rotors = parts.Rotors.ToArray();
        var at = new Dictionary<string, int>(StringComparer.Ordinal);
        for (int i = 0; i < rotors.Length; i++)
        {
            if (rotors[i].Name is { } name && !at.ContainsKey(name))
            {
                at.Add(name, i);
            }
        }

        int[] tree = Enumerable.Range(0, rotors.Length).ToArray();
        double[] ratio = Enumerable.Repeat(1.0, rotors.Length).ToArray();
        foreach (ModelPart link in parts.Shafts.Concat(parts.Couplings))
        {
            Join(link, walk, at, tree, ratio);
        }

        for (int i = 0; i < rotors.Length; i++)
        {
            if (tree[i] != tree[0] && rotors[i].Name is { } name)
            {
                rotors[i].Say(walk, ModelRotorMembers.Name, "\"" + CaseWalk.Shown(name)
                    + "\" is detached: no shafts and couplings join it to \"" + CaseWalk.Shown(rotors[0].Name ?? "?") + "\".");
            }
            else if (tree[i] == tree[0] && !(ratio[i] / ratio[0] >= 1 / Most && ratio[i] / ratio[0] <= Most))
            {
                rotors[i].Say(
                    walk, ModelRotorMembers.Name,
                    "Gears between the first rotor and this one must together change the speed by at most "
                    + FormattableString.Invariant($"{Most:G} to 1; they do by {ratio[i] / ratio[0]:G3}."));
            }
        }
    }

    private static void Join(ModelPart link, CaseWalk walk, Dictionary<string, int> at, int[] tree, double[] ratio)
    {
        (TextMember fromMember, TextMember toMember) = ModelReferences.Ends(link);
        int from = at[link.Draft.Get(fromMember)!];
        int to = at[link.Draft.Get(toMember)!];
        int kept = tree[from];
        int joined = tree[to];
        if (kept == joined)
        {
            link.Say(walk, toMember, "Shafts and couplings must form a tree; this one closes a ring.");
            return;
        }

        double gear = link.List == ModelMembers.Shafts ? link.Draft.Si(ModelShaftMembers.Ratio) ?? 1 : 1;
        double factor = ratio[from] * gear / ratio[to];
        for (int i = 0; i < tree.Length; i++)
        {
            if (tree[i] == joined)
            {
                tree[i] = kept;
                ratio[i] *= factor;
            }
        }
    }
}
