using Driveline.Chains;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>A driveline with usual values in place of the facts that a simulation lacks.</summary>
internal sealed class SupposedLine
{
    private readonly DrivelineSimulation stated;
    private readonly UsualMachine machine;
    private readonly List<SupposedFact> facts = [];
    private readonly List<Element> elements;

    private SupposedLine(DrivelineSimulation stated, UsualMachine machine)
    {
        this.stated = stated;
        this.machine = machine;
        elements = [.. stated.Chain.Elements];
        SupposeParts();
        SupposeDrive();
    }

    public IReadOnlyList<SupposedFact> Facts => facts.AsReadOnly();

    /// <summary>The line; null when it branches, or nothing is to be supposed.</summary>
    public static SupposedLine? Of(DrivelineSimulation stated, UsualMachine machine) =>
        stated.Chain.Elements.Any(e => e is Branch) || stated.Strike is { MissesDriveline: true } ? null
            : new SupposedLine(stated, machine) is { facts.Count: > 0 } line ? line : null;

    /// <summary>The simulation with every supposed fact at the point of its factor.</summary>
    public DrivelineSimulation At(Func<int, BandPoint> pointOf)
    {
        var filled = elements.ToDictionary(e => e);
        SimulationDrive drive = stated.Drive;
        foreach (SupposedFact fact in facts)
        {
            double si = fact.At(pointOf(fact.Factor));
            if (fact.Part is { } part)
            {
                filled[part] = Filled((Part)filled[part], fact, si);
            }
            else
            {
                drive = Filled(drive, fact, si);
            }
        }

        DrivelineChain chain = DrivelineChain.Of([.. elements.Select(e => filled[e])]);
        return stated.Strike is { } strike
            ? DrivelineSimulation.OfStrike(chain, drive, SimulatedStrike.By(filled[strike.At], strike.Place, strike.Obstacle!))
            : DrivelineSimulation.OfEngagement(chain, drive);
    }

    private static Part Filled(Part part, SupposedFact fact, double si) => fact.Quantity switch
    {
        SupposedQuantity.Stiffness => part.WithStiffness(
            StiffnessBand.Exactly(RotationalStiffness.FromNewtonMetersPerRadian(si), fact.Basis)),
        SupposedQuantity.Inertia => part.WithInertia(MassMomentOfInertia.FromKilogramSquareMeters(si)),
        _ => part.WithRatio(si),
    };

    private static SimulationDrive Filled(SimulationDrive drive, SupposedFact fact, double si) => fact.Quantity switch
    {
        SupposedQuantity.PtoClutchCapacity => drive.WithEngagement(
            drive.Engagement.WithCapacity(TorqueBand.Exactly(Torque.FromNewtonMeters(si), fact.Basis))),
        SupposedQuantity.EngagementTime => drive.WithRise(TimeBand.Exactly(Duration.FromSeconds(si), fact.Basis)),
        _ => drive.WithLoad(TorqueBand.Exactly(Torque.FromNewtonMeters(si), fact.Basis)),
    };

    private void SupposeParts()
    {
        Part[] gearboxes = [.. elements.OfType<Part>().Where(p => p.Kind == PartKind.Gearbox)];
        if (!elements.OfType<Part>().Any(p => p.Stiffness is not null || p.Kind == PartKind.Shaft))
        {
            Part shaft = Part.Shaft("PTO shaft");
            elements.Insert(elements.Count > 0 && elements[0] is Part { Kind: PartKind.PtoStub } ? 1 : 0, shaft);
            Add(SupposedQuantity.Stiffness, shaft, UsualStiffness.OfPtoShaft(machine.Joint), isPartSupposed: true);
            Add(SupposedQuantity.Inertia, shaft, UsualInertia.OfPtoShaft());
        }

        bool isInside = false;
        foreach (Part part in stated.Chain.Elements.OfType<Part>())
        {
            SupposePart(part, isInside, gearboxes.Length == 1);
            isInside |= part.Kind is PartKind.Gearbox or PartKind.Flywheel;
        }

        if (!elements.OfType<Part>().Any(p => p.StoresEnergy) && UsualInertia.OfRotor(machine) is { } inertia)
        {
            Part rotor = Part.Of(machine.Kind == MachineKind.SmallSquareBaler ? PartKind.Flywheel : PartKind.Rotor,
                machine.Kind == MachineKind.SmallSquareBaler ? "flywheel" : "rotor");
            elements.Add(rotor);
            Add(SupposedQuantity.Inertia, rotor, inertia, isPartSupposed: true);
        }
    }

    private void SupposePart(Part part, bool isInside, bool isOnlyGearbox)
    {
        if (part is { Kind: PartKind.Shaft, Stiffness: null })
        {
            Add(SupposedQuantity.Stiffness, part, isInside ? UsualStiffness.OfInnerShaft() : UsualStiffness.OfPtoShaft(machine.Joint));
        }

        if (part is { Kind: PartKind.OverrunClutch, Stiffness: null })
        {
            Add(SupposedQuantity.Stiffness, part, UsualStiffness.OfOverrunClutch());
        }

        if (part is { Kind: PartKind.Gearbox, Ratio: null } && isOnlyGearbox
            && UsualDrive.Ratio(machine, stated.Drive.SpeedRadPerS) is { } ratio)
        {
            Add(SupposedQuantity.SpeedRatio, part, ratio);
        }

        InertiaBand? inertia = part.InertiaKgM2 > 0 ? null
            : part.StoresEnergy ? UsualInertia.OfRotor(machine)
            : part.Kind == PartKind.Gearbox ? UsualInertia.OfGearbox()
            : part.Kind == PartKind.Shaft && !isInside ? UsualInertia.OfPtoShaft()
            : null;
        if (inertia is not null)
        {
            Add(SupposedQuantity.Inertia, part, inertia);
        }
    }

    private void SupposeDrive()
    {
        SimulationDrive drive = stated.Drive;
        bool isStrike = stated.Strike is not null;
        if (!isStrike && drive.Engagement.Capacity is null && UsualDrive.Capacity(machine, drive.SpeedRadPerS) is { } capacity)
        {
            Add(SupposedQuantity.PtoClutchCapacity, null, capacity);
        }

        if (!isStrike && drive.Rise is null && drive.Engagement.Manner != EngagementManner.Abrupt)
        {
            Add(SupposedQuantity.EngagementTime, null, UsualDrive.Rise(drive.Engagement.IsFeathered));
        }

        if (isStrike && drive.Load is not { HasExpected: true } && UsualDrive.Load(machine, drive.SpeedRadPerS) is { } load)
        {
            Add(SupposedQuantity.WorkTorque, null, load);
        }
    }

    private void Add(SupposedQuantity quantity, Part? part, QuantityBand band, bool isPartSupposed = false) =>
        facts.Add(new SupposedFact(quantity, part, band, isPartSupposed));
}
