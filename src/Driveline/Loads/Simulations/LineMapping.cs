using Driveline.Chains;
using Driveline.Findings;
using Driveline.Torsion;

namespace Driveline.Loads;

/// <summary>Turns a chain and what drives it into lumps and links, everything referred to the PTO without loss.</summary>
/// <remarks>
/// J_pto = J · i², k_pto = k · i², c_pto = c · i², T_pto = T · i, with i the speed at the element's input over PTO speed. A part
/// with a stiffness carries half of its inertia at each end. A part without one is rigid. Elements without inertia between two
/// links are massless: their compliances add. Two couplings need an inertia between them. A shaft that ends at a device beside the
/// element that is struck carries all of its inertia at its other end, so that the device feels the shaft's torque, not a blow on
/// half a shaft.
/// </remarks>
internal sealed partial class LineMapping
{
    private readonly DrivelineChain chain;
    private readonly SimulationDrive drive;
    private readonly SimulatedStrike? strike;
    private readonly SimulationEnds ends;
    private readonly List<Lump> lumps;
    private readonly List<LineLink> links;
    private readonly List<Finding> missing;

    private LineMapping(DrivelineChain chain, SimulationDrive drive, SimulatedStrike? strike, in SimulationEnds ends, List<Finding> missing)
    {
        this.chain = chain;
        this.drive = drive;
        this.strike = strike;
        this.ends = ends;
        this.missing = missing;
        lumps = new List<Lump>(chain.Nodes.Length + 2);
        links = new List<LineLink>(chain.Nodes.Length + 1);
    }

    /// <summary>The line at one value of each band; null, with what is missing, when facts do not suffice.</summary>
    public static SimulatedLine? Of(
        DrivelineChain chain, SimulationDrive drive, SimulatedStrike? strike, in SimulationEnds ends, List<Finding> missing)
    {
        int before = missing.Count;
        var mapping = new LineMapping(chain, drive, strike, in ends, missing);
        mapping.Lay();
        if (missing.Count == before)
        {
            mapping.JoinRigid();
            mapping.DropLooseEnd();
            mapping.FreeDevicesAtStop();
            mapping.JoinMassless();
            mapping.CheckCouplings();
        }

        return missing.Count > before ? null : new SimulatedLine(chain, drive, strike, in ends, mapping.lumps, mapping.links);
    }

    private Lump Last => lumps[lumps.Count - 1];

    private void Lay()
    {
        lumps.Add(new Lump
        {
            InertiaKgM2 = drive.IsEngineFree(strike is not null) ? drive.EngineInertia!.SiBand.Expected
            : double.PositiveInfinity,
            Name = SimulatedLine.Engine
        });
        LayPtoClutch();
        Lump? rotor = null;
        for (int k = 0; k < chain.Nodes.Length; k++)
        {
            ChainNode node = chain.Nodes[k];
            if (node.Element is null or Branch)
            {
                Miss(SimulationFindings.BranchNotSupported, node.Element?.Name ?? string.Empty);
                return;
            }

            if (double.IsNaN(node.Ratio))
            {
                return;   // the gearbox before it has been named already
            }

            if (node.Device is { } device)
            {
                LayDevice(k, device, node.Ratio);
            }
            else
            {
                LayPart(k, node.Part!, node.Ratio);
                rotor = node.Part!.Kind == PartKind.Rotor ? Last : rotor;
            }

            Last.IsStruck |= ReferenceEquals(node.Element, strike?.At);
        }

        (rotor ?? Last).TakesLoad = true;
    }

    private void LayPtoClutch()
    {
        double capacity = drive.Engagement.Capacity?.SiBand.At(ends.Capacity) ?? double.PositiveInfinity;
        if (capacity is not (> 0 and < double.PositiveInfinity))
        {
            if (strike is null)
            {
                missing.Add(Finding.Of(SimulationFindings.CapacityNotKnown, Severity.Warning));
            }

            Append(LineLink.Rigid(SimulatedLine.PtoClutch));
            return;
        }

        FrictionCoupling clutch = FrictionCoupling.Of(UnitsNet.Torque.FromNewtonMeters(capacity));
        Append(LineLink.Of(SimulatedLine.PtoClutch, strike is null
            ? clutch.Engaging(UnitsNet.Duration.Zero, UnitsNet.Duration.FromSeconds(drive.RiseS(ends.Rise))) : clutch));
    }

    private void LayDevice(int k, ProtectiveDevice device, double ratio)
    {
        bool acts = ends.Devices is SimulatedDevices.Fitted or SimulatedDevices.Healthy;
        if (acts && SimulatedDevice.TripOf(device, ends.Devices == SimulatedDevices.Healthy) is null)
        {
            Miss(SimulationFindings.DeviceNotKnown, device.Name);
        }

        Coupling? coupling = SimulatedDevice.Coupling(device, in ends, ratio);
        Append((coupling is null ? LineLink.Rigid(device.Name) : LineLink.Of(device.Name, coupling)).Carrying(k));
    }

    private void LayPart(int k, Part part, double ratio)
    {
        double inertia = part.InertiaKgM2 * ratio * ratio;
        if (part.StoresEnergy && inertia == 0)
        {
            Miss(SimulationFindings.InertiaNotKnown, part.Name);
        }

        if (part.Kind == PartKind.Gearbox && part.Ratio is null)
        {
            Miss(SimulationFindings.RatioNotKnown, part.Name);
        }

        if (part.Kind == PartKind.OverrunClutch)
        {
            Append(LineLink.Of(part.Name, OneWayCoupling.Forward).Carrying(k));
        }

        if (part.Stiffness is { } stiffness)
        {
            double squared = ratio * ratio;
            Last.AddShaft(inertia / 2);
            Append(LineLink.Of(part.Name, stiffness.SiBand.At(ends.Stiffness) * squared, part.DampingNms * squared).Carrying(k));
            Last.AddShaft(inertia / 2);
            Last.Name = part.Name;
            return;
        }

        if (part.Kind == PartKind.Shaft)
        {
            Miss(SimulationFindings.StiffnessNotKnown, part.Name);
        }

        Last.Add(k, inertia, part.Name);
    }

    private void Append(LineLink link)
    {
        links.Add(link);
        lumps.Add(new Lump());
    }

    private void Miss(string code, string name) => missing.Add(Finding.Of(code, Severity.Warning).With("name", name));
}
