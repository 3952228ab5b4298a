using System.Globalization;

namespace Driveline.Cases.Results;

/// <summary>What every result says of itself, before its own members.</summary>
internal static class HeadRows
{
    private static readonly string Version = typeof(HeadRows).Assembly.GetName().Version!.ToString(3);

    public static readonly ShapeOf<ResultHead> Shape = new ShapeOf<ResultHead>("head", "What every result says of itself.")
        .Whole("contract", _ => ResultDocument.Contract,
            "Number of the contract that the members keep. Members may be added under it; a changed one raises it.")
        .Text("library", _ => Version, "Version of the library that gave it.")
        .Choice("result", h => h.Kind, "What it is a result of.")
        .Text("language", h => h.Options.Texts.LanguageCode, "Language of the texts, ISO 639-1.")
        .Choice("units", h => h.Options.Units, "Units in the texts; numbers have the unit of their member's name.")
        .MaybeText("title", h => h.Options.Title, "Title of the case; null when it has none.")
        .MaybeText("date", h => h.Options.Date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture),
            "The day for which the case is stated; null when it states none.");
}
