namespace Driveline.Advice;

/// <summary>Codes of what a caller must notice about an advice as a whole.</summary>
public static class AdviceFindings
{
    /// <summary>No symptom is stated, so that every cause starts alike.</summary>
    public const string NoSymptom = "advice.noSymptom";

    /// <summary>The strike's torque is stated, but there is no trip torque to compare it with.</summary>
    public const string StrikeNotCompared = "advice.strikeNotCompared";

    /// <summary>In the last year looked at the clutch of an option is likely stuck, given the owner's habit.</summary>
    public const string ClutchLikelyStuck = "advice.clutchLikelyStuck";
}
