using Driveline.Advice;
using Driveline.Cases.Members;
using Driveline.Clutches;
using Driveline.Protection;

namespace Driveline.Cases.Questions;

/// <summary>Defects that a case states, in its complaint or of a device, however little else is known of that device.</summary>
internal static class CaseDefects
{
    private static readonly Dictionary<SeenDefect, string[]> None = [];

    /// <summary>The defects, each with the paths that state it.</summary>
    public static IReadOnlyDictionary<SeenDefect, string[]> Of(CaseFile file)
    {
        CaseObject? complaint = file.Facts.Get(CaseFileMembers.Complaint);
        if (complaint is null && !MayHaveSeen(CaseElements.All(file.Facts.Get(CaseFileMembers.Driveline))))
        {
            return None;
        }

        Symptom symptom = complaint?.Get(ComplaintMembers.Symptom) ?? Symptom.NotKnown;
        IEnumerable<(SeenDefect? Defect, string[] Paths)> told = SeenDefects.Told(symptom, ComplaintMembers.FactsOf(complaint))
            .Select(t => ((SeenDefect?)t.Defect, new[] { t.Path }));
        CaseList driveline = file.Facts.Get(CaseFileMembers.Driveline);
        return told
            .Concat(CaseElements.All(driveline, ElementMembers.ShearBolt).Select(OfBolt))
            .Concat(CaseElements.All(driveline, ElementMembers.SlipClutch).SelectMany(OfClutch))
            .Where(d => d.Defect is not null)
            .GroupBy(d => d.Defect!.Value, d => d.Paths)
            .ToDictionary(g => g.Key, g => g.SelectMany(p => p).Distinct().ToArray());
    }

    private static bool MayHaveSeen(IReadOnlyList<CaseObject> elements)
    {
        for (int k = 0; k < elements.Count; k++)
        {
            bool isSound = elements[k].Get(ElementMembers.ShearBolt) is not { } bolt || HubDefect(bolt) is null;
            if (!isSound || (elements[k].Get(ElementMembers.SlipClutch) is { } clutch && (IsStuck(clutch) || IsSolid(clutch))))
            {
                return true;
            }
        }

        return false;
    }

    private static SeenDefect? HubDefect(CaseObject bolt) =>
        SeenDefects.OfHub(bolt.Get(ShearBoltMembers.Hub), bolt.IsStated(ShearBoltMembers.HubFriction));

    private static (SeenDefect? Defect, string[] Paths) OfBolt(CaseObject bolt) => (
        HubDefect(bolt),
        [bolt.PathOf(ShearBoltMembers.Hub)]);

    private static IEnumerable<(SeenDefect? Defect, string[] Paths)> OfClutch(CaseObject clutch)
    {
        yield return (IsStuck(clutch) ? SeenDefect.ClutchStuck : null, [clutch.PathOf(SlipClutchMembers.SlipTestResult)]);
        yield return (IsSolid(clutch) ? SeenDefect.ClutchSolid : null,
            [clutch.PathOf(SlipClutchMembers.SpringLength), Coil(clutch)?.PathOf(CoilSpringsMembers.SolidLength) ?? string.Empty]);
    }

    private static bool IsStuck(CaseObject clutch) => clutch.Get(SlipClutchMembers.SlipTestResult) == SlipTestOutcome.DidNotSlip;

    private static bool IsSolid(CaseObject clutch) => Coil(clutch)?.Get(CoilSpringsMembers.SolidLength) is { } solid
        && clutch.Get(SlipClutchMembers.SpringLength) is { } set
        && SeenDefects.IsSolid(set, clutch.Get(SlipClutchMembers.Wear), solid);

    private static CaseObject? Coil(CaseObject clutch) => clutch.Get(SlipClutchMembers.Springs)?.Get(ClutchSpringsMembers.Coil);
}
