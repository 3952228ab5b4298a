using Driveline.Chains;
using Driveline.Quantities;
using Driveline.ShearBolts;

namespace Driveline.Protection;

/// <summary>The same driveline with a bolt one grade weaker or stronger in the same hole: what it would do to both questions.</summary>
/// <remarks>Showing a stronger bolt is not recommending it: only the bolt the machine's manual names may be fitted, unless its maker agrees.</remarks>
public sealed class NeighbourGrade
{
    private readonly ShearBoltDevice device;

    private NeighbourGrade(string grade, bool isStronger, ProtectionVerdict verdict, ShearBoltDevice device)
    {
        this.device = device;
        Grade = grade;
        IsStronger = isStronger;
        Verdict = verdict;
    }

    /// <summary>The grade, e.g. "SAE 5".</summary>
    public string Grade { get; }

    /// <summary>True for the next stronger grade, false for the next weaker.</summary>
    public bool IsStronger { get; }

    /// <summary>The verdict with that bolt, both margins in it.</summary>
    public ProtectionVerdict Verdict { get; }

    /// <summary>The torque at which that bolt acts, referred to the PTO.</summary>
    public TorqueBand? Trip => Verdict.Devices.First(d => ReferenceEquals(d.Device, device)).TripAtPto;

    /// <summary>The neighbours of the first graded shear bolt of a verdict; empty when there is none.</summary>
    internal static IReadOnlyList<NeighbourGrade> Of(ProtectionVerdict verdict) =>
        verdict.Devices.Select(d => d.Device).OfType<ShearBoltDevice>().FirstOrDefault() is { } fitted ? Of(verdict, fitted) : [];

    /// <summary>The neighbours of one graded shear bolt of a verdict.</summary>
    internal static IReadOnlyList<NeighbourGrade> Of(ProtectionVerdict verdict, ShearBoltDevice fitted)
    {
        GradeStep step = GradeStep.Of(fitted.BreakTorque.Joint);
        var neighbours = new List<NeighbourGrade>();
        Add(step.Weaker, false);
        Add(step.Stronger, true);
        return neighbours;

        void Add(BreakTorque? neighbour, bool isStronger)
        {
            if (neighbour?.Joint is { } joint)
            {
                ShearBoltDevice device = ShearBoltDevice.Of(fitted.Name, joint);
                DrivelineChain chain = verdict.Question.Chain.With(fitted, device);
                ProtectionVerdict with = ProtectionCheck.Run(verdict.Question.WithChain(chain), verdict.Policy);
                neighbours.Add(new NeighbourGrade(joint.Bolt.Material.Name, isStronger, with, device));
            }
        }
    }
}
