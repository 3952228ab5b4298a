using Driveline.Cases.Members;
using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Pto;

namespace Driveline.Cases.Questions;

/// <summary>What a case shows beside its two questions: power against the PTO type, steep joints, what the head marks say.</summary>
internal static class CaseNotes
{
    public static IReadOnlyList<Finding> Of(CaseFile file)
    {
        var notes = new List<Finding>();
        CaseObject? tractor = file.Facts.Get(CaseFileMembers.Tractor);
        if (tractor?.Get(TractorMembers.PtoType) is { } type && tractor.Get(TractorMembers.PtoPower) is { } power)
        {
            notes.AddRange(PtoTypes.Of(type).Check(power));
        }

        foreach (CaseObject element in CaseElements.All(file.Facts.Get(CaseFileMembers.Driveline)))
        {
            if (element.Get(ElementMembers.Angle) is { } angle)
            {
                notes.AddRange(UniversalJoint.At(angle).CheckContinuousWork());
            }

            CaseObject? bolt = element.Get(ElementMembers.ShearBolt);
            if (bolt?.Get(ShearBoltMembers.HeadMarks) is { } mark && bolt.Get(ShearBoltMembers.Thread) is { } thread)
            {
                // A stated grade settles which of several it is, or contradicts them all, which the bolt itself reports.
                bool isGraded = bolt.Get(ShearBoltMembers.Grade)?.Grade is not null;
                notes.AddRange(
                    HeadMarks.Identify(mark, thread).Findings.Where(f => !isGraded || f.Code != FastenerFindings.SeveralGradesFitTheMark));
            }
        }

        return notes;
    }
}
