using System.Text.Json;

namespace Driveline.Cases.Results;

/// <summary>The names of an enum's values as they stand in results: as in C#.</summary>
internal sealed class ChoiceWords<TEnum>
    where TEnum : struct, Enum
{
    private readonly Dictionary<TEnum, JsonEncodedText> encoded;

    private ChoiceWords()
    {
#if NET
        Values = [.. Enum.GetValues<TEnum>().Distinct()];
#else
        Values = [.. ((TEnum[])Enum.GetValues(typeof(TEnum))).Distinct()];
#endif
        encoded = Values.ToDictionary(v => v, v => JsonEncodedText.Encode(v.ToString()));
        Names = [.. Values.Select(v => v.ToString())];
    }

    public static ChoiceWords<TEnum> All { get; } = new();

    public TEnum[] Values { get; }

    public IReadOnlyList<string> Names { get; }

    public JsonEncodedText Of(TEnum value) => encoded.TryGetValue(value, out JsonEncodedText known) ? known
        : JsonEncodedText.Encode(value.ToString());
}
