using System.Text.Json;

namespace Driveline.Cases.Results;

/// <summary>The names of an enum's values as they stand in results: as in C#.</summary>
internal sealed class ChoiceWords<TEnum>
    where TEnum : struct, Enum
{
    private readonly Dictionary<TEnum, JsonEncodedText> encoded;

    private ChoiceWords()
    {
        var values = (TEnum[])Enum.GetValues(typeof(TEnum));
        encoded = values.Distinct().ToDictionary(v => v, v => JsonEncodedText.Encode(v.ToString()));
        Names = [.. encoded.Keys.Select(v => v.ToString())];
    }

    public static ChoiceWords<TEnum> All { get; } = new();

    public IReadOnlyList<string> Names { get; }

    public JsonEncodedText Of(TEnum value) => encoded.TryGetValue(value, out JsonEncodedText known) ? known
        : JsonEncodedText.Encode(value.ToString());
}
