using Driveline.Findings;

namespace Driveline.Protection;

/// <summary>
/// Is what is fitted what the machine's manual names, in working order? With what speaks for it and against it. Immutable.
/// </summary>
/// <remarks>
/// Yes: every device is known to be the manual's (its part number, or size, grade, shear plane; of a clutch its torque or spring length)
/// and to be in working order (hub, holes; of a clutch a slip test). No: something speaks against it. Maybe: something is not looked at
/// yet. NotKnown: what the
/// manual names, or what is fitted, is not known. It says nothing of margins.
/// </remarks>
public sealed class AsSpecified
{
    private AsSpecified(Answer answer, IReadOnlyList<Finding> speaksFor, IReadOnlyList<Finding> against, IReadOnlyList<Finding> open)
    {
        Answer = answer;
        For = speaksFor;
        Against = against;
        Open = open;
    }

    /// <summary>The answer; of several devices the worst: No, NotKnown, Maybe, Yes.</summary>
    public Answer Answer { get; }

    /// <summary>What speaks for it.</summary>
    public IReadOnlyList<Finding> For { get; }

    /// <summary>What speaks against it.</summary>
    public IReadOnlyList<Finding> Against { get; }

    /// <summary>What nobody has looked at yet.</summary>
    public IReadOnlyList<Finding> Open { get; }

    /// <inheritdoc/>
    public override string ToString() => Answer.ToString();

    internal static AsSpecified Of(ProtectionVerdict verdict)
    {
        var speaksFor = new List<Finding>();
        var against = new List<Finding>();
        var open = new List<Finding>();
        IReadOnlyList<Finding> notes = verdict.Question.Notes;
        for (int k = 0; k < notes.Count; k++)
        {
            if (NotListed.Is(notes[k]))
            {
                open.Add(notes[k]);
            }
        }

        bool isKnown = verdict.Comparisons.Count > 0 && open.Count == 0;
        for (int k = 0; k < verdict.Comparisons.Count; k++)
        {
            FittedAgainstSpecified comparison = verdict.Comparisons[k];
            if (comparison is not { Device: { } fitted, Specified: { } specified })
            {
                isKnown = false;
                continue;
            }

            isKnown &= fitted.IsIdentified || SpecifiedIdentity.IsTold(fitted, specified);
            SpecifiedIdentity.Add(fitted, specified, comparison.Answer, speaksFor, against, open);
            SpecifiedOrder.Add(fitted, speaksFor, against, open);
        }

        Answer answer = against.Count > 0 ? Answer.No : !isKnown ? Answer.NotKnown : open.Count > 0 ? Answer.Maybe : Answer.Yes;
        return new AsSpecified(
            answer, EachOnce.Of(speaksFor).AsReadOnly(), EachOnce.Of(against).AsReadOnly(), EachOnce.Of(open).AsReadOnly());
    }
}
