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
            WritePoint(json, "best", setting, setting.Best);
            WritePoint(json, "manuals", setting, setting.Manuals);
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
        JsonNumbers.Number(json, "atLow", Length(setting, window.Lowest));
        JsonNumbers.Number(json, "atHigh", Length(setting, window.Highest));
        json.WriteEndObject();
        json.WriteStartObject("nutTurns");
        JsonNumbers.Number(json, "atLow", Turns(setting, window.Lowest));
        JsonNumbers.Number(json, "atHigh", Turns(setting, window.Highest));
        json.WriteEndObject();
        json.WriteEndObject();
    }

    private static void WritePoint(Utf8JsonWriter json, string name, ClutchChoice setting, ClutchPoint? point)
    {
        if (point is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        JsonNumbers.Band(json, "slipTorqueNm", point.Slip.Running);
        JsonNumbers.Band(json, "breakawayTorqueNm", point.Slip.Breakaway);
        JsonNumbers.Number(json, "springLengthMm", Length(setting, point));
        JsonNumbers.Number(json, "nutTurns", Turns(setting, point));
        JsonNumbers.Margin(json, "workMargin", point.WorkMargin);
        JsonNumbers.Margin(json, "guardMargin", point.GuardMargin);
        json.WriteEndObject();
    }

    // Without the manual's torque no length is to be set.
    private static double? Length(ClutchChoice setting, ClutchPoint point) => setting.ManualsTorque is null ? null
        : point.SpringLength.Millimeters;

    private static double? Turns(ClutchChoice setting, ClutchPoint point) => setting.ManualsTorque is null ? null : setting.NutTurns(point);
}
