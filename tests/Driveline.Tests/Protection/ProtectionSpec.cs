using Driveline.Chains;
using Driveline.Loads;
using Driveline.Protection;
using UnitsNet;
using static Driveline.Tests.Protection.Thornbeck;

namespace Driveline.Tests.Protection;

/// <summary>A random question as a bag of facts, each of which can be taken away.</summary>
internal sealed record ProtectionSpec
{
    private double[]? stub;
    private double[]? tube;
    private double[]? box;
    private double[]? trip;
    private double[]? work;
    private double[]? capacity;
    private double[]? peak;
    private double? ratio;
    private double? efficiency;
    private bool complete;
    private bool isGentle;
    private bool isBehindGearbox;
    private double joint = 9000;
    private bool hasJoint = true;
    private bool hasTube = true;
    private bool hasGearbox = true;
    private bool hasRotor = true;
    private bool hasFlywheel;
    private bool hasDevice = true;
    private MachineKind machine;

    public static ProtectionSpec Random(int seed)
    {
        var random = new Random(seed);
        double[] Band(double around)
        {
            double low = around * Math.Exp((random.NextDouble() - 0.5) * 1.2);
            double expected = low * (1 + (random.NextDouble() * 0.4));
            return [low, expected, expected * (1 + (random.NextDouble() * 0.4))];
        }

        return new ProtectionSpec
        {
            stub = Band(3000),
            tube = Band(2400),
            box = Band(2800),
            trip = Band(1500),
            work = Band(800),
            capacity = Band(900),
            peak = random.Next(3) == 0 ? Band(900) : null,
            ratio = Math.Exp((random.NextDouble() - 0.5) * 1.5),
            efficiency = 0.4 + (random.NextDouble() * 0.6),
            complete = true,
            isGentle = random.Next(2) == 0,
            isBehindGearbox = random.Next(2) == 0,
            hasFlywheel = random.Next(4) == 0,
            machine = random.Next(4) == 0 ? MachineKind.PostHoleAuger : MachineKind.RotaryCutter,
        };
    }

    /// <summary>The same question with one fact or one part less.</summary>
    public IEnumerable<(string What, ProtectionSpec Without)> WithOneLess() =>
    [
        ("stub limit", this with { stub = null }),
        ("tube limit", this with { tube = null }),
        ("gearbox limit", this with { box = null }),
        ("trip", this with { trip = null }),
        ("work", this with { work = null }),
        ("capacity", this with { capacity = null }),
        ("ratio", this with { ratio = null }),
        ("efficiency", this with { efficiency = null }),
        ("parts complete", this with { complete = false }),
        ("machine", this with { machine = MachineKind.NotKnown }),
        ("gentle", this with { isGentle = false }),
        ("joint", this with { hasJoint = false }),
        ("tube", this with { hasTube = false }),
        ("gearbox", this with { hasGearbox = false }),
        ("rotor", this with { hasRotor = machine == MachineKind.PostHoleAuger && hasRotor }),
        ("device", this with { hasDevice = false }),
    ];

    public ProtectionSpec ScaledBy(double factor) => this with
    {
        stub = Scale(stub, factor),
        tube = Scale(tube, factor),
        box = Scale(box, factor),
        trip = Scale(trip, factor),
        work = Scale(work, factor),
        capacity = Scale(capacity, factor),
        peak = Scale(peak, factor),
        joint = joint * factor,
    };

    public ProtectionSpec WithStrongerParts(double factor) =>
        this with { stub = Scale(stub, factor), tube = Scale(tube, factor), box = Scale(box, factor) };

    public ProtectionSpec WithStrongerDevice(double factor) => this with { trip = Scale(trip, factor) };

    public ProtectionVerdict Check()
    {
        var elements = new List<Element> { Limited(Part.Of(PartKind.PtoStub, "PTO stub"), stub) };
        if (hasJoint)
        {
            elements.Add(Part.Of(PartKind.UniversalJoint, "joint").WithDamageTorque(Nm(joint)));
        }

        if (hasTube)
        {
            elements.Add(Limited(Part.Shaft("drive tube"), tube));
        }

        ProtectiveDevice device = trip is null ? StatedDevice.NotIdentified("bolt") : Bolt(trip[0], trip[1], trip[2]);
        if (hasDevice && !isBehindGearbox)
        {
            elements.Add(device);
        }

        if (hasFlywheel)
        {
            elements.Add(Part.Flywheel("flywheel", MassMomentOfInertia.FromKilogramSquareMeters(5)));
        }

        if (hasGearbox)
        {
            Part gearbox = Limited(Part.Gearbox("gearbox"), box);
            gearbox = ratio is { } i ? gearbox.WithRatio(i) : gearbox;
            elements.Add(efficiency is { } eta ? gearbox.WithEfficiency(eta) : gearbox);
        }

        if (hasDevice && isBehindGearbox)
        {
            elements.Add(device);
        }

        if (hasRotor)
        {
            elements.Add(Part.Rotor("rotor", MassMomentOfInertia.FromKilogramSquareMeters(3)));
        }

        Engagement engagement = Engagement.Through(PtoClutchKind.HandLever)
            .WithManner(isGentle ? EngagementManner.Gentle : EngagementManner.NotKnown);
        engagement = capacity is null ? engagement : engagement.WithCapacity(Nm(capacity[0], capacity[1], capacity[2]));
        engagement = peak is null ? engagement : engagement.WithPeak(Nm(peak[0], peak[1], peak[2]));
        return ProtectionCheck.Run(ProtectionQuestion.About(DrivelineChain.Of([.. elements]))
            .WithMachine(machine)
            .WithPartsComplete(complete)
            .WithEngagement(engagement)
            .WithWork(work is null ? null : WorkPeak.Stated(Nm(work[0], work[1], work[2]))));
    }

    private static Part Limited(Part part, double[]? limit) =>
        limit is null ? part : part.WithDamageTorque(Nm(limit[0], limit[1], limit[2]));

    private static double[]? Scale(double[]? band, double factor) => band?.Select(b => b * factor).ToArray();
}
