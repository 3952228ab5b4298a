using Driveline.Fasteners;
using Driveline.Quantities;

namespace Driveline.ShearBolts;

/// <summary>The same joint with a bolt one grade weaker and one grade stronger, so that both margins can be shown.</summary>
/// <remarks>Ladders: SAE 2, 5, 8; ISO 4.6, 5.8, 8.8, 10.9, 12.9. Showing a stronger bolt is not recommending it.</remarks>
internal sealed class GradeStep
{
    private static readonly BoltGrade[][] Ladders =
    [
        [SaeJ429.Grade1, SaeJ429.Grade2, SaeJ429.Grade5, SaeJ429.Grade8],
        [Iso898.Class4_6, Iso898.Class5_8, Iso898.Class8_8, Iso898.Class10_9, Iso898.Class12_9],
        [Iso898.Class4_6, Iso898.Class4_8, Iso898.Class5_8, Iso898.Class6_8, Iso898.Class8_8],
        [Iso898.Class4_6, Iso898.Class5_6, Iso898.Class8_8],
        [Iso898.Class8_8, Iso898.Class9_8, Iso898.Class10_9],
    ];

    private GradeStep(BreakTorque fitted, BreakTorque? weaker, BreakTorque? stronger)
    {
        Fitted = fitted;
        Weaker = weaker;
        Stronger = stronger;
    }

    /// <summary>The joint as it is.</summary>
    public BreakTorque Fitted { get; }

    /// <summary>
    /// With a bolt of the next weaker grade; null when the grade stands on no ladder or is the lowest, or the size is not held.
    /// </summary>
    public BreakTorque? Weaker { get; }

    /// <summary>
    /// With a bolt of the next stronger grade; null when the grade stands on no ladder or is the highest, or the size is not held.
    /// </summary>
    public BreakTorque? Stronger { get; }

    /// <summary>The neighbours of a joint's bolt in the same hole.</summary>
    public static GradeStep Of(ShearBoltJoint joint)
    {
        Guard.NotNull(joint, nameof(joint));
        return Of(BreakTorque.Of(joint));
    }

    internal static GradeStep Of(BreakTorque fitted) => new(fitted, Neighbour(fitted.Joint, -1), Neighbour(fitted.Joint, +1));

    /// <summary>The grade next to one on the first ladder that holds it; null when there is none.</summary>
    internal static BoltGrade? Next(BoltGrade grade, int step)
    {
        foreach (BoltGrade[] ladder in Ladders)
        {
            int place = Array.IndexOf(ladder, grade);
            if (place >= 0 && place + step >= 0 && place + step < ladder.Length)
            {
                return ladder[place + step];
            }
        }

        return null;
    }

    private static BreakTorque? Neighbour(ShearBoltJoint joint, int step)
    {
        ShearBolt bolt = joint.Bolt;
        return bolt.Grade is { } grade && bolt.Thread is { } thread && !bolt.IsSpecial
            && Next(grade, step) is { } next && next.TryAt(thread, out _)
            ? BreakTorque.Of(joint.With(bolt.WithMaterial(FastenerMaterial.Graded(next, thread))))
            : null;
    }
}
