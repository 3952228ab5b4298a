using Driveline.Findings;
using Driveline.Protection;
using Driveline.Provenance;

namespace Driveline.Reports.Verdicts;

/// <summary>The headline and the two answers in words, each with its margin.</summary>
internal static class AnswerSentences
{
    public static string Headline(ProtectionVerdict verdict, Phrase phrase)
    {
        string code = "headline." + verdict.Headline;
        return verdict.Headline == Protection.Headline.DoesNotProtect && verdict.Devices.Any(d => d.Device.NeverLetsGo)
            ? phrase.Of(code + ".seized")
            : verdict.Headline == Protection.Headline.TripsInWork && verdict.EngagementTrips ? phrase.Of(code + ".engagement")
            : verdict.Headline == Protection.Headline.Protected && NarrowMargin(verdict) is { } narrow
                ? phrase.Of(Phrase.Code(code + ".narrow").With("more", MarginWords.Room(narrow, phrase)))
            : verdict.Headline != Protection.Headline.Doubtful ? phrase.Of(code)
            : phrase.Of(code + (verdict.Guards != Answer.Yes ? ".guards" : ".quiet"));
    }

    public static string Guards(ProtectionVerdict verdict, Phrase phrase)
    {
        if (CriticalChecks.Part(verdict) is not { } check)
        {
            return phrase.Of(verdict.Guards != Answer.No ? "guards.NotKnown" : verdict.Devices.Any(d => d.Device.NeverLetsGo)
                ? "guards.No.neverLetsGo" : "guards.No.device");
        }

        string code = verdict.Guards switch
        {
            Answer.Yes => check.Margin is > 1 ? "guards.Yes" : "guards.Yes.plain",
            Answer.No => verdict.Devices.Count == 0 ? "guards.No.device" : check.GuardedBy is not { } guard ? "guards.No.open"
                : guard.NeverLetsGo ? "guards.No.seized" : "guards.No",
            Answer.Maybe => "guards.Maybe." + Kind(check.Margin),
            _ => "guards.NotKnown",
        };
        return phrase.Of(Phrase.Code(code)
            .With("device", Device(check.GuardedBy?.Name, phrase))
            .With("part", PartNames.Of(check.Part, verdict, phrase))
            .With("more", More(check.Margin, phrase)));
    }

    public static string Quiet(ProtectionVerdict verdict, Phrase phrase)
    {
        if (OfExperience(verdict) is { } experience)
        {
            return phrase.Of(experience);
        }

        DeviceCheck? check = CriticalChecks.Device(verdict);
        string code = verdict.Quiet switch
        {
            Answer.Yes => "quiet.Yes",
            Answer.No => verdict.Question.TripsInNormalWork == true ? "quiet.No.seen" : verdict.EngagementTrips ? "quiet.No.engagement"
                : "quiet.No",
            Answer.Maybe => check?.Margin is 0 or null ? "quiet.Maybe.plain" : "quiet.Maybe." + Kind(check.Margin),
            _ => "quiet.NotKnown",
        };
        return phrase.Of(Phrase.Code(code)
            .With("device", Device(check?.Device.Name, phrase))
            .With("more", More(check?.Margin, phrase)));
    }

    private static Finding? OfExperience(ProtectionVerdict verdict)
    {
        if (verdict.Findings.FirstOrDefault(
            f => f.Code is ProtectionFindings.QuietByExperience or ProtectionFindings.ExperienceAgainstNumbers) is { } told)
        {
            string code = verdict.Quiet == Answer.Yes ? "quiet.Yes.experience" : "quiet.Maybe.experience";
            return told.Parameters.Aggregate(Phrase.Code(code), (f, p) => f.With(p.Name, p.Kind, p.Value));
        }

        bool isSeenQuiet = verdict.Quiet == Answer.Maybe && verdict.Question is { TripsInNormalWork: not true, Work: null };
        return isSeenQuiet ? Phrase.Code("quiet.Maybe.seen") : null;
    }

    // A tenth of room is less than remembered ratios may be wrong by.
    public static double? NarrowMargin(ProtectionVerdict verdict)
    {
        double margin = Math.Min(verdict.WorkMargin ?? double.PositiveInfinity, verdict.GuardMargin ?? double.PositiveInfinity);
        return margin < 1.1 && verdict.WeakestBasis?.Kind == BasisKind.FromMemory ? margin : null;
    }

    /// <summary>What is fitted against what is specified, with the ratio where it is known.</summary>
    public static string Fitted(FittedAgainstSpecified fitted, Phrase phrase)
    {
        string code = "comparison." + fitted.Answer;
        if (fitted.Ratio is not { } ratio || fitted.Answer == FittedComparison.Same || fitted.Answer == FittedComparison.NotKnown)
        {
            return phrase.Of(phrase.Has(code + ".plain") ? code + ".plain" : code);
        }

        bool hasExpected = ratio.Expected is not null;
        Finding first = Phrase.Code(!hasExpected && phrase.Has(code + ".plain") ? code + ".plain" : code);
        Finding range = Phrase.Code("comparison.range" + (ratio.High is null ? ".open" : string.Empty))
            .With("low", QuantityKind.Number, ratio.Low);
        range = ratio.High is { } high ? range.With("high", QuantityKind.Number, high) : range;
        first = ratio.Expected is { } expected ? first.With("expected", QuantityKind.Number, expected) : first;
        return phrase.Of(first) + " " + phrase.Of(range);
    }

    private static string Kind(double? margin) => margin switch
    {
        null => "plain",
        0 => "unbounded",
        > 1 => "barred",
        1 => "touch",
        _ => "overlap",
    };

    private static string More(double? margin, Phrase phrase) =>
        margin is not > 0 ? string.Empty : margin >= 1 ? MarginWords.Room(margin.Value, phrase) : MarginWords.Overlap(margin.Value, phrase);

    private static string Device(string? name, Phrase phrase) => name is null ? phrase.Of("deviceKind.NotKnown") : phrase.Name(name);
}
