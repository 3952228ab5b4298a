using System.Runtime.CompilerServices;

namespace Driveline.Cases.Results;

/// <summary>The names of an enum's values as they stand in results: as in C#.</summary>
internal sealed class ChoiceWords<TEnum>
    where TEnum : struct, Enum
{
    private const int MostValues = 256;

    private readonly ResultWord?[] byValue;

    private ChoiceWords()
    {
#if NET
        Values = [.. Enum.GetValues<TEnum>().Distinct()];
#else
        Values = [.. ((TEnum[])Enum.GetValues(typeof(TEnum))).Distinct()];
#endif
        Names = [.. Values.Select(v => v.ToString())];
        byValue = new ResultWord?[Values.Select(PlaceOf).Where(p => p < MostValues).DefaultIfEmpty(-1).Max() + 1];
        foreach (TEnum value in Values.Where(v => PlaceOf(v) < byValue.Length))
        {
            byValue[PlaceOf(value)] = ResultWord.Text(value.ToString());
        }
    }

    public static ChoiceWords<TEnum> All { get; } = new();

    public TEnum[] Values { get; }

    public IReadOnlyList<string> Names { get; }

    public ResultWord Of(TEnum value)
    {
        int place = PlaceOf(value);
        return place < byValue.Length && byValue[place] is { } known ? known : ResultWord.Text(value.ToString());
    }

    // Every enum here holds an int.
    private static int PlaceOf(TEnum value) => Unsafe.SizeOf<TEnum>() == sizeof(int) && Unsafe.As<TEnum, int>(ref value) >= 0
        ? Unsafe.As<TEnum, int>(ref value) : int.MaxValue;
}
