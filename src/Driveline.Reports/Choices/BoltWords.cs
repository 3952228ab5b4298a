using Driveline.Choosing;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Choices;

/// <summary>One bolt of a choice in words.</summary>
internal static class BoltWords
{
    /// <summary>
    /// Its row of the table: name, what it is, break torque, the two margins, the two probabilities, hours between breaks.
    /// </summary>
    /// <remarks>Of a joint that nobody knows to let go, no chance is told: it would look like one that was worked out.</remarks>
    public static string[] Row(RankedBolt bolt, Phrase phrase)
    {
        bool isOpen = bolt.GuardMargin is not > 0;
        return
        [
            Label(bolt.Item, phrase), Mark(bolt, phrase), Breaks(bolt, phrase), Margin(bolt.GuardMargin, phrase),
                Margin(bolt.WorkMargin, phrase),
            Chance(isOpen ? null : bolt.DamagedFirst, phrase), Chance(isOpen ? null : bolt.OnePeakTrips, phrase),
                Hours(isOpen ? null : bolt.TripsPerHour, phrase),
        ];
    }

    /// <summary>Its name, with its number in the stock where it has one: "3/8-16 UNC SAE 5 (B-0302)".</summary>
    public static string Label(StockItem item, Phrase phrase) => item.Sku is null ? phrase.Name(item.Name)
        : phrase.Name(item.Name) + " (" + CleanText.Name(item.Sku) + ")";

    /// <summary>What it is beside the fitted and the manual's bolt.</summary>
    public static string Mark(RankedBolt bolt, Phrase phrase)
    {
        var marks = new List<string>();
        if (bolt.IsSpecified)
        {
            marks.Add(phrase.Of("choice.manuals.mark"));
        }

        if (bolt.IsFitted)
        {
            marks.Add(phrase.Of("choice.fitted"));
        }

        if (bolt.IsStrongerThanSpecified == true)
        {
            marks.Add(phrase.Of("choice.stronger"));
        }

        return marks.Count > 0 ? string.Join(", ", marks)
            : phrase.Of(bolt.IsStrongerThanSpecified is null ? "choice.notCompared.mark" : "choice.noStronger");
    }

    /// <summary>The manual's bolt with its verdict in one sentence, and every caution of its own.</summary>
    public static string Verdict(RankedBolt bolt, Phrase phrase) => string.Join(
        " ",
        bolt.Cautions.Select(c => phrase.Of(c.Code)).Prepend(phrase.Of(Phrase.Code("choice.manuals.verdict")
            .With("bolt", Label(bolt.Item, phrase))
            .With("guards", phrase.Of("answer." + bolt.Verdict.Guards))
            .With("quiet", phrase.Of("answer." + bolt.Verdict.Quiet))
            .With("breaks", Breaks(bolt, phrase) + (bolt.Trip is null ? string.Empty : " " + phrase.TorqueUnit))
            .With("guardMargin", Margin(bolt.GuardMargin, phrase))
            .With("workMargin", Margin(bolt.WorkMargin, phrase)))));

    /// <summary>What it is beside the fitted and the specified bolt, its hole and price, and every caution of its own.</summary>
    public static string Cautions(RankedBolt bolt, Phrase phrase)
    {
        var notes = new List<string>();
        AddWhen(bolt.IsFitted, "choice.fitted");
        AddWhen(bolt.IsStrongerThanFitted == true, "choice.strongerFitted");
        AddWhen(bolt.IsStrongerThanSpecified == true, "choice.strongerSpecified");
        AddWhen(bolt.IsStrongerThanSpecified is null, "choice.notCompared");
        if (bolt.NeedsRedrilling)
        {
            notes.Add(phrase.Of(Phrase.Code("choice.hole").With("diameter", QuantityKind.Length, bolt.HoleDiameter.Meters)));
        }

        if (bolt.Item.Price is { } price)
        {
            notes.Add(phrase.Of(Phrase.Code("choice.price").With("price", phrase.Number(price, "0.00"))));
        }

        string name = notes.Count > 0 ? Label(bolt.Item, phrase) + " (" + string.Join(", ", notes) + ")" : Label(bolt.Item, phrase);
        return bolt.Cautions.Count == 0 ? name
            : name + ": " + string.Join(" ", bolt.Cautions.Select(c => phrase.Of(c.Code)));

        void AddWhen(bool holds, string code)
        {
            if (holds)
            {
                notes.Add(phrase.Of(code));
            }
        }
    }

    /// <summary>What one grade weaker in the same size would do; stronger ones stand in the last block alone.</summary>
    public static string Steps(RankedBolt bolt, Phrase phrase) =>
        Label(bolt.Item, phrase) + ": " + string.Join("; ", bolt.GradeSteps.Where(s => !s.IsStronger).Select(s => Step(s, phrase))) + ".";

    private static string Step(NeighbourGrade step, Phrase phrase) => phrase.Of(Phrase.Code("choice.step.weaker")
        .With("grade", phrase.Name(step.Grade))
        .With("guard", StepMargin("choice.step.guard", step.Verdict.GuardMargin, phrase))
        .With("work", StepMargin("choice.step.work", step.Verdict.WorkMargin, phrase)));

    private static string StepMargin(string code, double? margin, Phrase phrase) => phrase.Of(
        margin > 0 ? Phrase.Code(code).With("margin", Margin(margin, phrase)) : Phrase.Code(code + ".notKnown"));

    private static string Breaks(RankedBolt bolt, Phrase phrase) => bolt.Trip is not { } trip ? phrase.Of("choice.notKnown")
        : phrase.Of(Phrase.Code("choice.range")
            .With("low", phrase.Number(trip.Low.NewtonMeters))
            .With("high", phrase.Number(trip.High?.NewtonMeters ?? double.PositiveInfinity)));

    public static string Margin(double? margin, Phrase phrase) => margin is > 0 and { } value
        ? phrase.Quantity(value, QuantityKind.Margin)
        : phrase.Of("choice.margin.notKnown");

    private static string Chance(Probability? probability, Phrase phrase) => probability is null
        ? phrase.Of("choice.notKnown")
        : phrase.Quantity(probability.Value, QuantityKind.Probability);

    private static string Hours(double? perHour, Phrase phrase)
    {
        if (perHour is not { } rate)
        {
            return phrase.Of("choice.notKnown");
        }

        // Beyond that the tails decide.
        const double Most = 10000;
        double hours = 1 / rate;
        return hours >= Most
            ? phrase.Of(Phrase.Code("choice.hours.more").With("hours", QuantityKind.Count, Most))
            : phrase.Number(hours, hours < 10 ? "0.##" : "0");
    }
}
