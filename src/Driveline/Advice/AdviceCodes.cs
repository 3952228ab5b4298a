namespace Driveline.Advice;

/// <summary>Stable codes of the advice's enums, for texts and files: the name with a small first letter.</summary>
public static class AdviceCodes
{
    /// <summary>Number of causes, <see cref="Cause.NotKnown"/> included.</summary>
    internal const int Causes = (int)Cause.WrongHole + 1;

    /// <summary>Number of symptoms, <see cref="Symptom.NotKnown"/> included.</summary>
    internal const int Symptoms = (int)Symptom.Vibration + 1;

    /// <summary>Code of the text that says why a check comes next.</summary>
    public const string Why = "advice.why";

    /// <summary>Code of the text of a cause, e.g. "cause.hubSeized".</summary>
    public static string Of(Cause cause) => "cause." + Small(cause.ToString());

    /// <summary>Code of the text of a symptom, e.g. "symptom.breaksOften".</summary>
    public static string Of(Symptom symptom) => "symptom." + Small(symptom.ToString());

    /// <summary>Code of the text of a place, e.g. "place.standstill".</summary>
    public static string Of(CheckPlace place) => "place." + Small(place.ToString());

    /// <summary>Code of the text of something the owner asks, e.g. "asks.oneGradeUp".</summary>
    public static string Of(OwnerAsk ask) => "asks." + Small(ask.ToString());

    /// <summary>What follows "cause." in the code of a cause's short name, e.g. "hubSeized.short".</summary>
    public static string InBrief(Cause cause) => Small(cause.ToString()) + ".short";

    internal static bool TryCause(string code, out Cause cause) => Enum.TryParse(code, ignoreCase: true, out cause)
        && Small(cause.ToString()) == code;

    internal static bool TrySymptom(string code, out Symptom symptom) =>
        Enum.TryParse(code, ignoreCase: true, out symptom) && Small(symptom.ToString()) == code;

    private static string Small(string name) => char.ToLowerInvariant(name[0]) + name.Substring(1);
}
