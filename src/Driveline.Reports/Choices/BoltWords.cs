using Driveline.Choosing;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Choices;

/// <summary>One bolt of a choice in words.</summary>
internal static class BoltWords
{
    /// <summary>Its row of the table: name, break torque, the two margins, the two probabilities, hours between breaks.</summary>
    public static string[] Row(RankedBolt bolt, Phrase phrase) =>
    [
        bolt.Item.Name, Breaks(bolt, phrase), Margin(bolt.GuardMargin, phrase), Margin(bolt.WorkMargin, phrase),
        Chance(bolt.DamagedFirst, phrase), Chance(bolt.OnePeakTrips, phrase), Hours(bolt.TripsPerHour, phrase),
    ];

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

        string name = notes.Count > 0 ? bolt.Item.Name + " (" + string.Join(", ", notes) + ")" : bolt.Item.Name;
        return bolt.Cautions.Count == 0 ? name
            : name + ": " + string.Join(" ", bolt.Cautions.Select(phrase.Of));

        void AddWhen(bool holds, string code)
        {
            if (holds)
            {
                notes.Add(phrase.Of(code));
            }
        }
    }

    /// <summary>What one grade weaker and stronger in the same size would do.</summary>
    public static string Steps(RankedBolt bolt, Phrase phrase) =>
        bolt.Item.Name + ": " + string.Join("; ", bolt.GradeSteps.Select(s => Step(s, phrase))) + ".";

    private static string Step(NeighbourGrade step, Phrase phrase) => phrase.Of(
        Phrase.Code(step.IsStronger ? "choice.step.stronger" : "choice.step.weaker")
            .With("grade", phrase.Name(step.Grade))
            .With("guard", StepMargin("choice.step.guard", step.Verdict.GuardMargin, phrase))
            .With("work", StepMargin("choice.step.work", step.Verdict.WorkMargin, phrase)));

    private static string StepMargin(string code, double? margin, Phrase phrase) => phrase.Of(
        margin > 0 ? Phrase.Code(code).With("margin", Margin(margin, phrase)) : Phrase.Code(code + ".notKnown"));

    private static string Breaks(RankedBolt bolt, Phrase phrase) => bolt.Trip is not { } trip ? phrase.Of("choice.notKnown")
        : phrase.Of(Phrase.Code("choice.range")
            .With("low", phrase.Number(trip.Low.NewtonMeters))
            .With("high", phrase.Number(trip.High?.NewtonMeters ?? double.PositiveInfinity)));

    // Rounded down below 1: a margin that falls short never looks as if it did not.
    public static string Margin(double? margin, Phrase phrase) => margin is > 0 and { } value
        ? phrase.Number(value < 1 ? Math.Floor(value * 100) / 100 : value, "F2")
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
