using Driveline.Findings;
using Driveline.Protection;

namespace Driveline.Advice;

/// <summary>The answers to what owners ask beside what is wrong, by what the advice knows.</summary>
internal static class OwnerAnswers
{
    public static OwnerAnswer To(OwnerAsk ask, OwnerAdvice advice) => new(ask, ask switch
    {
        OwnerAsk.TractorHurt => TractorHurt(advice),
        OwnerAsk.OneGradeUp => OneGradeUp(advice),
        OwnerAsk.ClutchInstead => Note(
            advice.Diagnosis.Complaint.Says(OwnerFacts.Device.SlipClutch) ? "answer.clutchInstead.fitted" : "answer.clutchInstead"),
        OwnerAsk.RoughGround => Note("answer.roughGround"),
        OwnerAsk.StuckBolt => Note("answer.stuckBolt"),
        OwnerAsk.OtherMachine => OtherMachine(advice),
        _ => throw new ArgumentOutOfRangeException(nameof(ask), ask, "Nothing was asked."),
    });

    private static Finding TractorHurt(OwnerAdvice advice) => advice.Inspection is null ? Note("answer.tractorHurt.noBlow")
        : advice.Inspection.Tractor is { } load && load.Code != InspectionList.LoadNotKnown ? load
        : Note("answer.tractorHurt.look");

    // A weaker bolt than the manual's is one grade up at once: the manual's.
    private static Finding OneGradeUp(OwnerAdvice advice) =>
        Note(advice.Diagnosis.Complaint.Says(OwnerFacts.GradeAgainstManual.Softer)
            ? "answer.oneGradeUp.toTheManuals" : "answer.oneGradeUp.no");

    private static Finding OtherMachine(OwnerAdvice advice) =>
        Note(advice.Diagnosis.Complaint.Says(OwnerFacts.TractorPower.AboveRating)
            || advice.Standing.Reasons.Any(r => r.Why.Code == StandingFindings.WorkTooHeavy)
            ? "answer.otherMachine.mayPay" : "answer.otherMachine.mendFirst");

    private static Finding Note(string code) => Finding.Of(code, Severity.Note);
}
