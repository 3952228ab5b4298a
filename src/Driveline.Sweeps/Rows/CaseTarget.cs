using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Driveline.Cases;
using Driveline.Cases.Members;

namespace Driveline.Sweeps.Rows;

/// <summary>The fact of a case that a path names, e.g. "driveline[1].shearBolt.shaftDiameter".</summary>
internal sealed class CaseTarget
{
    private CaseTarget(IReadOnlyList<CaseStep> steps, CaseObject owner)
    {
        Steps = steps;
        Owner = owner;
    }

    /// <summary>The steps from the root; the last is the fact's own.</summary>
    public IReadOnlyList<CaseStep> Steps { get; }

    /// <summary>The fact's row.</summary>
    public Member Member => Steps[^1].Member;

    /// <summary>What the case states there; null when it is silent.</summary>
    public object? Stated => Owner[Member];

    /// <summary>True when a number in SI, without a text for its unit, may stand there.</summary>
    public bool IsWhole => Member is WholeMember;

    private CaseObject Owner { get; }

    /// <summary>Finds the fact of a path; objects on the way must be stated, the fact itself need not.</summary>
    public static bool TryFind(
        CaseFile file, string path, [NotNullWhen(true)] out CaseTarget? target, [NotNullWhen(false)] out PathProblem? problem)
    {
        target = null;
        CaseObject at = file.Facts;
        var steps = new List<CaseStep>();
        string[] names = path.Split('.');
        for (int k = 0; k < names.Length; k++)
        {
            bool isLast = k == names.Length - 1;
            if (!TryStep(at, names[k], isLast, out CaseStep step, out CaseObject? next, out problem))
            {
                return false;
            }

            steps.Add(step);
            if (isLast)
            {
                target = new CaseTarget(steps, at);
                return true;
            }

            at = next!;
        }

        problem = new PathProblem("A path into the case is wanted; got none.", null, path, null);
        return false;
    }

    private static bool TryStep(
        CaseObject at, string text, bool isLast, out CaseStep step, out CaseObject? next, [NotNullWhen(false)] out PathProblem? problem)
    {
        step = default;
        next = null;
        int bracket = text.IndexOf('[', StringComparison.Ordinal);
        string name = bracket < 0 ? text : text[..bracket];
        if (at.Table.Find(name) is not { } member)
        {
            string[] names = [.. at.Table.Members.Select(m => m.Name)];
            string? nearest = NearestName.Of(name, names);
            problem = new PathProblem(
                "The path leads nowhere: \"" + CaseWalk.Shown(name) + "\" is not a member of " + at.Table.Name
                    + (nearest is null ? "; it may have " + string.Join(", ", names) + "." : "; did you mean \"" + nearest + "\"?"),
                string.Join(", ", names), name, nearest);
            return false;
        }

        problem = null;
        if (member is ListMember list)
        {
            CaseList items = at.Get(list);
            int index = -1;
            bool isIndex = bracket > 0 && text[^1] == ']'
                && int.TryParse(text.AsSpan(bracket + 1, text.Length - bracket - 2), NumberStyles.None, CultureInfo.InvariantCulture,
                    out index)
                && index < items.Count;
            if (!isIndex || isLast)
            {
                problem = new PathProblem(
                    isIndex ? "The path must lead to one fact of \"" + name + "[" + index.ToString(CultureInfo.InvariantCulture) + "]\"."
                        : FormattableString.Invariant($"\"{name}\" is a list of {items.Count} in this case; its places are ")
                            + FormattableString.Invariant($"{name}[0] to [{items.Count - 1}]."),
                    FormattableString.Invariant($"0 to {items.Count - 1}"), text, null);
                return false;
            }

            step = new CaseStep(member, index);
            next = items[index];
            return true;
        }

        step = new CaseStep(member, -1);
        if (member is ObjectMember inner)
        {
            next = at.Get(inner);
            problem = isLast ? new PathProblem("The path must lead to one fact of \"" + name + "\".", null, text, null)
                : next is null ? new PathProblem(
                    "The case states no \"" + name + "\" there; state it before you vary what is in it.", null, text, null)
                : null;
            return problem is null;
        }

        problem = isLast && bracket < 0 ? null : new PathProblem("\"" + name + "\" is a fact and has nothing in it.", null, text, null);
        return problem is null;
    }
}
