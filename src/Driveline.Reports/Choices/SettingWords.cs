using Driveline.Choosing;
using Driveline.Findings;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Choices;

/// <summary>The settings of one clutch in words. Where none fits, only the findings name numbers.</summary>
internal static class SettingWords
{
    /// <summary>What to mend first, or between which torques to set it, or that there is no such setting.</summary>
    public static string Lead(ClutchChoice choice, Phrase phrase)
    {
        if (choice.Window is { } window)
        {
            return phrase.Of(
                Phrase.Code(choice.Findings.Any(f => f.Code == ChoosingFindings.SettingNotTheManuals)
                ? "choice.setting.window.notTheManuals" : "choice.setting.window")
                .With("low", QuantityKind.Torque, window.LowTorque.NewtonMeters)
                .With("high", QuantityKind.Torque, window.HighTorque.NewtonMeters));
        }

        return choice.Best is null && choice.Findings.FirstOrDefault(
            f => f.Code.StartsWith("choosing.mend.", StringComparison.Ordinal)) is { } mend ? phrase.Of(mend)
            : phrase.Of(choice.Best is null ? "choice.setting.none" : "choice.setting.noneFits");
    }

    /// <summary>
    /// Spring length and turns for the torque that the manual states, with its margins, and last the caution of the setting.
    /// </summary>
    /// <remarks>Without the manual's torque, or away from the window, no length is told: only the manual names one.</remarks>
    public static IEnumerable<string> Lines(ClutchChoice choice, Phrase phrase)
    {
        if (choice is { Window: { } window, Manuals: { } manuals } && window.Holds(manuals.Torque))
        {
            yield return phrase.Of(Phrase.Code("choice.setting.manuals")
                .With("torque", QuantityKind.Torque, manuals.Torque.NewtonMeters)
                .With("length", QuantityKind.Length, manuals.SpringLength.Meters));
            if (choice.NutTurns(manuals) is { } turns)
            {
                yield return phrase.Of(Phrase.Code("choice.setting.turns").With("turns", QuantityKind.Number, turns));
            }

            yield return phrase.Of(Phrase.Code("choice.setting.workMargin").With("margin", BoltWords.Margin(manuals.WorkMargin, phrase)));
            yield return phrase.Of(Phrase.Code("choice.setting.guardMargin").With("margin", BoltWords.Margin(manuals.GuardMargin, phrase)));
            yield return phrase.Of("choice.setting.place");
        }

        yield return phrase.Of("caution.onlyTheManualsSetting");
    }
}
