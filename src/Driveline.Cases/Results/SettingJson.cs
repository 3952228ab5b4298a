using System.Text.Json;
using Driveline.Choosing;
using Driveline.Wording;

namespace Driveline.Cases.Results;

/// <summary>Writes the settings that suit each slip clutch: torques at the clutch in N·m, lengths in mm, turns from finger-tight.</summary>
internal static class SettingJson
{
    public static void WriteAll(Utf8JsonWriter json, IReadOnlyList<ClutchChoice> settings, Texts texts, DisplayUnits units)
    {
        json.WriteStartArray("settings");
        foreach (ClutchChoice setting in settings)
        {
            json.WriteStartObject();
            json.WriteString("device", setting.Place.Name);
            WriteWindow(json, setting);
            WriteBest(json, setting);
            FindingJson.WriteAll(json, "findings", setting.Findings, texts, units);
            CautionJson.WriteAll(json, setting.Cautions, texts);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteWindow(Utf8JsonWriter json, ClutchChoice setting)
    {
        if (setting.Window is not { } window)
        {
            json.WriteNull("window");
            return;
        }

        json.WriteStartObject("window");
        json.WriteNumber("lowNm", window.LowTorque.NewtonMeters);
        json.WriteNumber("highNm", window.HighTorque.NewtonMeters);
        json.WriteStartObject("springLengthMm");
        json.WriteNumber("atLow", window.Lowest.SpringLength.Millimeters);
        json.WriteNumber("atHigh", window.Highest.SpringLength.Millimeters);
        json.WriteEndObject();
        json.WriteStartObject("nutTurns");
        JsonNumbers.Number(json, "atLow", setting.NutTurns(window.Lowest));
        JsonNumbers.Number(json, "atHigh", setting.NutTurns(window.Highest));
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WriteBest(Utf8JsonWriter json, ClutchChoice setting)
    {
        if (setting.Best is not { } best)
        {
            json.WriteNull("best");
            return;
        }

        json.WriteStartObject("best");
        JsonNumbers.Band(json, "slipTorqueNm", best.Slip.Running);
        JsonNumbers.Band(json, "breakawayTorqueNm", best.Slip.Breakaway);
        json.WriteNumber("springLengthMm", best.SpringLength.Millimeters);
        JsonNumbers.Number(json, "nutTurns", setting.NutTurns(best));
        JsonNumbers.Margin(json, "workMargin", best.WorkMargin);
        JsonNumbers.Margin(json, "guardMargin", best.GuardMargin);
        json.WriteEndObject();
    }
}
