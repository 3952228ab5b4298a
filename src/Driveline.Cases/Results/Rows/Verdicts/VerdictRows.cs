using Driveline.Protection;

namespace Driveline.Cases.Results;

/// <summary>The verdict.</summary>
internal static class VerdictRows
{
    public static readonly ShapeOf<ProtectionVerdict> Shape = new ShapeOf<ProtectionVerdict>(
            "assess", "The verdict on a case. Torques are in N·m and referred to the tractor's PTO.")
        .Object("standing", v => v.Standing, StandingRows.Shape, "Whether the machine may be used as it is.")
        .Choice("verdict", v => v.Headline, "The verdict in one word.")
        .Choice("guards", v => v.Guards, "Does the protection act before a part is damaged?")
        .Choice("quiet", v => v.Quiet, "Does it stay quiet in normal work?")
        .Object("asSpecified", v => v.AsSpecified, AsSpecifiedRows.Shape, "Is what is fitted what the manual names?")
        .Maybe("history", v => v.Question.History is null ? null : v, HistoryRows.Shape, "What hours of work say; null when none are told.")
        .Object("fittedAgainstSpecified", v => v, FittedRows.Shape, "What is fitted against what the manual specifies.")
        .Band("tripTorqueNm", v => v.Trip, "Torque at which the first device acts.")
        .Band("workPeakNm", v => v.WorkPeak, "Peaks of normal work.")
        .Maybe("weakestPart", v => v.WeakestPart, PartRows.Weakest, "The part that is damaged first; null when no limit is known.")
        .Margin("workMargin", v => v.WorkMargin, "Lowest torque at which a device acts over the highest of normal work.")
        .Margin("guardMargin", v => v.GuardMargin, "Lowest torque that damages a part over the highest at which a device acts for it.")
        .List("parts", v => v.Parts, (v, p) => new InVerdict<PartCheck>(v, p), PartRows.Shape, "Every part, in order from the tractor.")
        .List("devices", v => v.Devices, (v, d) => new InVerdict<DeviceCheck>(v, d), DeviceRows.Shape,
            "Every device, in order from the tractor.")
        .List("gradeSteps", v => v.NeighbourGrades, GradeStepRows.Shape, "The next grades in the same hole.")
        .List("findings", v => v.Findings, FindingRows.Shape, "Everything to notice, worst first.")
        .List("measureNext", v => v.MeasureNext, MeasurementRows.Shape, "What to measure next, most useful first.")
        .List("cautions", v => v.Cautions, CautionRows.Shape, "Cautions; show them all.")
        .Maybe("weakestBasis", v => v.WeakestBasis, BasisRows.Shape, "The weakest basis of all numbers; null when there is none.")
        .Add("doubt", ResultType.Object(DoubtRows.Shape, true),
            "Where the doubt about the torques of the devices comes from; null unless asked for (`assess --doubt`).",
            static (json, verdict, to) =>
            {
                if (to.HasDoubts)
                {
                    DoubtRows.Shape.Write(json, verdict, to);
                }
                else
                {
                    json.Null();
                }
            });
}
