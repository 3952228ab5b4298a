using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Fatigue;
using Driveline.Monitoring;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Cases.Questions;

/// <summary>
/// The places of a case whose fatigue is followed under a torque at the PTO: its shear bolts, and parts with a stated category.
/// </summary>
internal static class CaseFatigue
{
    private static readonly Basis Stated = Basis.Given("detail category as stated");

    public static IEnumerable<FatigueDetail> AllOf(CaseFile file)
    {
        if (MappedCase.Of(file) is not { Errors.Count: 0, Chain: { } chain })
        {
            yield break;
        }

        foreach (ShearBoltDevice bolt in chain.Devices.OfType<ShearBoltDevice>())
        {
            if (At(chain.Nodes[chain.IndexOf(bolt)], FatigueDetail.Bolts(bolt.Name, bolt.BreakTorque.Joint)) is { } detail)
            {
                yield return detail;
            }
        }

        foreach (CaseObject facts in CaseElements.All(file.Facts.Get(CaseFileMembers.Driveline)))
        {
            if (facts.Get(ElementMembers.FatigueCategory) is not { } category || CasePart.SectionOf(facts) is not { } section)
            {
                continue;
            }

            string name = CaseElements.NameOf(facts)!;
            ChainNode? node = chain.Nodes.FirstOrDefault(n => n.Part?.Name == name);
            if (node is not null && At(node, FatigueDetail.Shaft(name, section, SNCurve.Shear(category, Stated))) is { } detail)
            {
                yield return detail;
            }
        }
    }

    private static FatigueDetail? At(ChainNode node, FatigueDetail detail)
    {
        double ratio = node.FromPto(Band.Exactly(1)).Expected;
        return Guard.IsFinite(ratio) && ratio > 0 ? detail.WithTorqueRatio(ratio) : null;
    }
}
