using Driveline.Cases.Members;
using Driveline.Findings;
using Driveline.Pto;

namespace Driveline.Cases.Questions;

/// <summary>
/// What a case shows beside its two questions: power against the PTO type, steep joints, a device that only the manual names.
/// </summary>
internal static class CaseNotes
{
    public static IReadOnlyList<Finding> Of(CaseFile file)
    {
        var notes = new List<Finding>();
        CaseObject? tractor = file.Facts.Get(CaseFileMembers.Tractor);
        if (tractor?.Get(TractorMembers.PtoType) is { } type && tractor.Get(TractorMembers.PtoPower) is { } power)
        {
            notes.AddRange(PtoTypes.Of(type).Check(power)
                .Select(f => f.WithBecause(tractor.PathOf(TractorMembers.PtoType), tractor.PathOf(TractorMembers.PtoPower))));
        }

        if (file.Facts.IsStated(CaseFileMembers.Specified))
        {
            notes.AddRange(CaseSpecified.NotListed(file));
        }

        if (CaseWork.Need(file) is { } need)
        {
            notes.AddRange(need.Findings);
        }

        IReadOnlyList<CaseObject> elements = CaseElements.All(file.Facts.Get(CaseFileMembers.Driveline));
        for (int k = 0; k < elements.Count; k++)
        {
            CaseObject element = elements[k];
            if (element.Get(ElementMembers.Angle) is { } angle)
            {
                notes.AddRange(UniversalJoint.At(angle).CheckContinuousWork()
                    .Select(f => f.WithBecause(element.PathOf(ElementMembers.Angle))));
            }
        }

        return notes;
    }
}
