using Driveline.Findings;
using Driveline.Torsion;

namespace Driveline.Loads;

/// <content>What becomes of links and lumps that nothing tells apart.</content>
internal sealed partial class LineMapping
{
    private void JoinRigid()
    {
        for (int l = links.Count - 1; l >= 0; l--)
        {
            if (links[l].IsRigid)
            {
                lumps[l].Join(lumps[l + 1], links[l]);
                lumps.RemoveAt(l + 1);
                links.RemoveAt(l);
            }
        }
    }

    // Nothing behind the last inertia carries torque.
    private void DropLooseEnd()
    {
        while (links.Count > 0 && Last.InertiaKgM2 == 0 && !Last.IsStruck)
        {
            bool tookLoad = Last.TakesLoad;
            lumps.RemoveAt(lumps.Count - 1);
            links.RemoveAt(links.Count - 1);
            Last.TakesLoad |= tookLoad;
        }

        if (links.Count == 0)
        {
            missing.Add(Finding.Of(SimulationFindings.NothingTwists, Severity.Warning));
        }
    }

    private void FreeDevicesAtStop()
    {
        for (int l = 0; l < links.Count; l++)
        {
            bool isHard = links[l].Compliance == 0 && links[l].Coupling is not null;
            if (isHard && lumps[l + 1].IsStruck && l > 0 && links[l - 1].Compliance > 0 && lumps[l].IsShaftsOnly)
            {
                lumps[l].MoveTo(lumps[l - 1]);
            }

            if (isHard && lumps[l].IsStruck && l + 1 < links.Count && links[l + 1].Compliance > 0 && lumps[l + 1].IsShaftsOnly)
            {
                lumps[l + 1].MoveTo(lumps[l + 2]);
            }
        }
    }

    private void JoinMassless()
    {
        for (int l = lumps.Count - 1; l >= 1; l--)
        {
            Lump lump = lumps[l];
            if (lump.InertiaKgM2 > 0)
            {
                continue;
            }

            LineLink? joined = l < links.Count && !lump.IsStruck ? links[l - 1].InSeries(links[l], lump) : null;
            if (joined is null)
            {
                missing.Add(lump.IsStruck || l == links.Count
                    ? Finding.Of(SimulationFindings.InertiaNotKnown, Severity.Warning)
                        .With("name", lump.IsStruck ? strike!.At.Name : lump.Name)
                    : Finding.Of(SimulationFindings.InertiaBetweenNotKnown, Severity.Warning).With("first", links[l - 1].Name)
                        .With("second", links[l].Name));
                return;
            }

            links[l - 1] = joined;
            links.RemoveAt(l);
            lumps.RemoveAt(l);
        }
    }

    private void CheckCouplings()
    {
        foreach (LineLink link in links)
        {
            if (link.Coupling is OneWayCoupling && link.Compliance == 0)
            {
                Miss(SimulationFindings.StiffnessNotKnown, link.Name);
            }
        }
    }
}
