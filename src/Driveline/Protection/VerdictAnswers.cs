using Driveline.Findings;
using Driveline.Loads;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>The two answers and the headline of a verdict, from its parts, its devices and what is known of the list.</summary>
internal static class VerdictAnswers
{
    /// <summary>Does the protection act before a part is damaged?</summary>
    public static Answer Guards(ProtectionVerdict verdict)
    {
        if (verdict.AllDevices.Length == 0)
        {
            return verdict.Question.PartsComplete ? Answer.No : Answer.NotKnown;
        }

        bool isBarred = IsBarred(verdict.Question, Bars.Guards);
        bool anyKnown = false;
        bool isYes = true;
        foreach (PartCheck part in verdict.AllParts)
        {
            if (part.Part.Limit is null && part.Guards != Answer.No)
            {
                isBarred |= !part.Part.StoresEnergy;
                continue;
            }

            if (part.Guards == Answer.No)
            {
                return Answer.No;
            }

            anyKnown |= part.Guards != Answer.NotKnown && part.Part.Limit is { IsDefault: false };
            isYes &= part.Guards == Answer.Yes;
        }

        return !anyKnown ? Answer.NotKnown : isYes && !isBarred ? Answer.Yes : Answer.Maybe;
    }

    /// <summary>Does it stay quiet in normal work, by the numbers?</summary>
    public static Answer Quiet(ProtectionVerdict verdict)
    {
        ProtectionQuestion question = verdict.Question;
        if ((question.TripsInNormalWork == true && verdict.AllDevices.Length > 0) || verdict.EngagementTrips)
        {
            return Answer.No;
        }

        Answer worst = Answer.Yes;
        bool isNotKnown = verdict.AllDevices.Length == 0 || question.Work is null;
        foreach (DeviceCheck device in verdict.AllDevices)
        {
            if (device.Quiet == Answer.No)
            {
                return Answer.No;
            }

            isNotKnown |= device.Quiet == Answer.NotKnown;
            worst = device.Quiet == Answer.Maybe ? Answer.Maybe : worst;
        }

        bool isBarred = IsBarred(question, Bars.Quiet) || !question.Engagement.IsKnown || verdict.EngagementMayTrip;
        return isNotKnown ? Answer.NotKnown : isBarred ? Answer.Maybe : worst;
    }

    /// <summary>The verdict in one word.</summary>
    public static Headline Headline(ProtectionVerdict verdict) => IsHopeless(verdict) ? Protection.Headline.NoSettingFits
        : verdict.Guards == Answer.No ? Protection.Headline.DoesNotProtect
        : verdict.Quiet == Answer.No ? Protection.Headline.TripsInWork
        : verdict.Guards == Answer.Yes && verdict.Quiet == Answer.Yes ? Protection.Headline.Protected
        : verdict.Question.IsAnySpecified && verdict.AsSpecified.Answer == Answer.Yes && !Spoilers.Any(verdict)
            ? Protection.Headline.AsSpecified
        : verdict.Guards == Answer.NotKnown || verdict.Quiet == Answer.NotKnown ? Protection.Headline.NotKnown
        : Protection.Headline.Doubtful;

    private static bool IsBarred(ProtectionQuestion question, Bars answer) =>
        !question.PartsComplete || question.Machine == MachineKind.NotKnown
        || !ExpectedParts.AreAllIn(question.Chain, question.Machine) || IsAnyBarring(question.Notes, answer);

    private static bool IsAnyBarring(IReadOnlyList<Finding> notes, Bars answer)
    {
        for (int k = 0; k < notes.Count; k++)
        {
            if (notes[k].IsBarring(answer))
            {
                return true;
            }
        }

        return false;
    }

    // Some part is expected to be damaged by normal work itself; defaults never say so.
    private static bool IsHopeless(ProtectionVerdict verdict)
    {
        if (verdict.Question.Work is not { IsAssumed: false } work)
        {
            return false;
        }

        foreach (PartCheck part in verdict.AllParts)
        {
            Band atPart = verdict.Question.Chain.Nodes[part.Index].FromPto(work.Torque.SiBand);
            if (part.Part.Limit is { IsAssumed: false } limit && atPart.HasExpected && limit.DamagedAt.SiBand.Expected < atPart.Expected)
            {
                return true;
            }
        }

        return false;
    }
}
