using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Quantities;
using Driveline.ShearBolts;

namespace Driveline.Protection;

/// <summary>The same driveline with a bolt one grade weaker or stronger in the same hole: what it would do to both questions.</summary>
/// <remarks>
/// Showing a stronger bolt is not recommending it: only the bolt the machine's manual names may be fitted, unless its maker agrees.
/// </remarks>
public sealed class NeighbourGrade
{
    private readonly ShearBoltDevice device;
    private readonly ShearBoltDevice fitted;
    private IReadOnlyList<GuardedPart>? guarded;

    private NeighbourGrade(
        string grade, bool isStronger, bool isSpecified, ProtectionVerdict verdict, ShearBoltDevice device, ShearBoltDevice fitted)
    {
        this.device = device;
        this.fitted = fitted;
        IsSpecified = isSpecified;
        Grade = grade;
        IsStronger = isStronger;
        Verdict = verdict;
    }

    /// <summary>The grade, e.g. "SAE 5".</summary>
    public string Grade { get; }

    /// <summary>Size and grade as people ask for them, e.g. "3/8-16 UNC SAE 5".</summary>
    public string Bolt => device.BreakTorque.Joint.Bolt is { Thread: { } thread } ? thread.Designation + " " + Grade : Grade;

    /// <summary>How much more or less it holds than the fitted one in the same hole.</summary>
    public GradeRatio Ratio => GradeRatio.Of(device.BreakTorque.IfHubFree.SiBand, fitted.BreakTorque.IfHubFree.SiBand);

    /// <summary>Every part that the bolt is expected to guard, and what it must then take; in order from the tractor.</summary>
    public IReadOnlyList<GuardedPart> Parts => guarded ??= Guarded().AsReadOnly();

    /// <summary>True for a stronger grade than the fitted one, false for a weaker.</summary>
    public bool IsStronger { get; }

    /// <summary>True for the grade that the manual specifies; it is always among the neighbours of a fitted bolt of its size.</summary>
    public bool IsSpecified { get; }

    /// <summary>The verdict with that bolt, both margins in it.</summary>
    public ProtectionVerdict Verdict { get; }

    /// <summary>The torque at which that bolt acts, referred to the PTO.</summary>
    public TorqueBand? Trip => Array.Find(Verdict.AllDevices, d => ReferenceEquals(d.Device, device))!.TripAtPto;

    /// <summary>The grade, and the torque at which it would act.</summary>
    public override string ToString() => Grade + ": " + (Trip?.ToString() ?? "not known");

    /// <summary>The neighbours of the first graded shear bolt of a verdict, and the manual's grade; empty when there is none.</summary>
    internal static IReadOnlyList<NeighbourGrade> Of(ProtectionVerdict verdict) =>
        Array.Find(verdict.AllDevices, d => d.Device is ShearBoltDevice)?.Device is ShearBoltDevice fitted
            ? Of(verdict, fitted, verdict.Question.Specified as ShearBoltDevice).AsReadOnly()
            : [];

    /// <summary>The neighbours of one graded shear bolt of a verdict.</summary>
    internal static IReadOnlyList<NeighbourGrade> Of(ProtectionVerdict verdict, ShearBoltDevice fitted) =>
        Of(verdict, fitted, null).AsReadOnly();

    private static List<NeighbourGrade> Of(ProtectionVerdict verdict, ShearBoltDevice fitted, ShearBoltDevice? specified)
    {
        ShearBoltJoint joint = fitted.BreakTorque.Joint;
        GradeStep step = GradeStep.Of(fitted.BreakTorque);
        BoltGrade? manuals = specified?.BreakTorque.Joint.Bolt is { IsSpecial: false, Grade: { } grade, Thread: { } thread }
            && joint.Bolt is { IsSpecial: false, Grade: { } own } && thread.Equals(joint.Bolt.Thread) && !grade.Equals(own) ? grade : null;
        var neighbours = new List<NeighbourGrade>();
        Add(step.Weaker, false);
        Add(step.Stronger, true);
        if (manuals is not null && !neighbours.Any(n => n.IsSpecified))
        {
            BreakTorque named = BreakTorque.Of(joint.With(joint.Bolt.WithMaterial(FastenerMaterial.Graded(manuals, joint.Bolt.Thread!))));
            Add(named, named.IfHubFree.SiBand.Low > fitted.BreakTorque.IfHubFree.SiBand.Low);
        }

        return neighbours;

        void Add(BreakTorque? neighbour, bool isStronger)
        {
            if (neighbour?.Joint is { } with)
            {
                ShearBoltDevice device = ShearBoltDevice.OfOtherMaterial(neighbour, fitted);
                DrivelineChain chain = verdict.Question.Chain.With(fitted, device);
                ProtectionVerdict checkedWith = ProtectionCheck.Run(verdict.Question.WithChain(chain), verdict.Policy);
                bool isSpecified = manuals is not null && manuals.Equals(with.Bolt.Grade);
                neighbours.Add(new NeighbourGrade(with.Bolt.Material.Name, isStronger, isSpecified, checkedWith, device, fitted));
            }
        }
    }

    // As a strong bolt acts when its hub turns: what is not known of the hub is no part of the comparison.
    private List<GuardedPart> Guarded()
    {
        if (device.BreakTorque.Joint is { Hub: HubState.Free, IsHubSeenTooLongAgo: false })
        {
            return GuardedBy(device, Verdict);
        }

        ShearBoltDevice free = ShearBoltDevice.Of(device.Name, device.BreakTorque.Joint.WithHub(HubState.Free));
        ProtectionQuestion question = Verdict.Question;
        return GuardedBy(free, ProtectionCheck.Run(question.WithChain(question.Chain.With(device, free)), Verdict.Policy));
    }

    private static List<GuardedPart> GuardedBy(ShearBoltDevice bolt, ProtectionVerdict verdict)
    {
        var guarded = new List<GuardedPart>();
        foreach (PartCheck part in verdict.AllParts)
        {
            if (ReferenceEquals(part.GuardedBy, bolt) && !(part.Part is { StoresEnergy: true, Limit: null }))
            {
                guarded.Add(new GuardedPart(part.Part.Name, part.ActsAtMost));
            }
        }

        return guarded;
    }
}
