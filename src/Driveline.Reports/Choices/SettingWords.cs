using Driveline.Choosing;
using Driveline.Findings;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Choices;

/// <summary>The settings of one clutch in words. Where none fits, only the findings name numbers.</summary>
internal static class SettingWords
{
    /// <summary>Between which torques to set it, or that there is no such setting.</summary>
    public static string Lead(ClutchChoice choice, Phrase phrase) => choice.Window is { } window
        ? phrase.Of(Phrase.Code(choice.Findings.Any(f => f.Code == ChoosingFindings.SettingNotTheManuals) ? "choice.setting.window.notTheManuals" : "choice.setting.window")
            .With("low", QuantityKind.Torque, window.LowTorque.NewtonMeters)
            .With("high", QuantityKind.Torque, window.HighTorque.NewtonMeters))
        : phrase.Of(choice.Best is null ? "choice.setting.none" : "choice.setting.noneFits");

    /// <summary>Spring lengths, the setting with most room and its margins, and last the caution of the setting.</summary>
    public static IEnumerable<string> Lines(ClutchChoice choice, Phrase phrase)
    {
        if (choice is { Window: { } window, Best: { } best })
        {
            yield return phrase.Of(Phrase.Code("choice.setting.lengths")
                .With("longest", QuantityKind.Length, window.Lowest.SpringLength.Meters)
                .With("shortest", QuantityKind.Length, window.Highest.SpringLength.Meters));
            yield return phrase.Of(Phrase.Code("choice.setting.best")
                .With("torque", QuantityKind.Torque, best.Torque.NewtonMeters)
                .With("length", QuantityKind.Length, best.SpringLength.Meters));
            if (choice.NutTurns(best) is { } turns)
            {
                yield return phrase.Of(Phrase.Code("choice.setting.turns").With("turns", QuantityKind.Number, turns));
            }

            yield return phrase.Of(Phrase.Code("choice.setting.workMargin").With("margin", BoltWords.Margin(best.WorkMargin, phrase)));
            yield return phrase.Of(Phrase.Code("choice.setting.guardMargin").With("margin", BoltWords.Margin(best.GuardMargin, phrase)));
            yield return phrase.Of("choice.setting.place");
        }

        yield return phrase.Of(ChoosingCautions.OnlyTheManualsSetting);
    }
}
