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
        if (file.Tractor is { PtoType: { } type, PtoPower: { } power })
        {
            notes.AddRange(PtoTypes.Of(type).Check(power));
        }

        AddElements(file.Driveline, notes);
        return notes;
    }

    private static void AddElements(IReadOnlyList<DrivelineElement> elements, List<Finding> notes)
    {
        foreach (DrivelineElement element in elements)
        {
            if (element.Angle is { } angle)
            {
                notes.AddRange(UniversalJoint.At(angle).CheckContinuousWork());
            }

            if (element.ShearBolt is { } bolt)
            {
                AddMarks(bolt, notes);
            }

            AddElements(element.Driveline, notes);
        }
    }

    private static void AddMarks(ShearBoltFacts bolt, List<Finding> notes)
    {
        if (bolt.ParsedHeadMark is not { } mark || bolt.ParsedThread is not { } thread)
        {
            return;
        }

        // A stated grade settles which of several it is, or contradicts them all, which the bolt itself reports.
        notes.AddRange(HeadMarks.Identify(mark, thread).Findings
            .Where(f => bolt.ParsedGrade is null || f.Code != FastenerFindings.SeveralGradesFitTheMark));
    }
}
