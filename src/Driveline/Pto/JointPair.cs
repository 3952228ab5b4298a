using Driveline.Findings;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Pto;

/// <summary>Two cardan joints on one intermediate shaft, all shafts in one plane.</summary>
/// <remarks>
/// Equivalent joint: β_e = √|β₁² − β₂²| in phase, √(β₁² + β₂²) a quarter turn out: a small-angle rule, remembered from
/// driveshaft practice. Even when the ends cancel, the intermediate shaft itself surges with one joint's non-uniformity.
/// </remarks>
internal sealed class JointPair
{
    private JointPair(UniversalJoint first, UniversalJoint second, JointPhasing phasing, UniversalJoint equivalent)
    {
        First = first;
        Second = second;
        Phasing = phasing;
        Equivalent = equivalent;
    }

    /// <summary>The joint on the driving side.</summary>
    public UniversalJoint First { get; }

    /// <summary>The joint on the driven side.</summary>
    public UniversalJoint Second { get; }

    /// <summary>How the inner yokes stand.</summary>
    public JointPhasing Phasing { get; }

    /// <summary>The single joint with about the same ripple at the driven end.</summary>
    /// <example>20° and 15° in phase: 13.23°; a quarter turn out: 25.00°.</example>
    public UniversalJoint Equivalent { get; }

    /// <summary>A pair of joints whose inner yokes stand as told.</summary>
    /// <exception cref="ArgumentException">The two angles out of phase would act as a joint of 90° or more.</exception>
    public static JointPair Of(UniversalJoint first, UniversalJoint second, JointPhasing phasing)
    {
        Guard.NotNull(first, nameof(first));
        Guard.NotNull(second, nameof(second));
        double a = first.AngleRad * first.AngleRad, b = second.AngleRad * second.AngleRad;
        double equivalent = Math.Sqrt(phasing == JointPhasing.InPhase ? Math.Abs(a - b) : a + b);
        return equivalent < Math.PI / 2
            ? new JointPair(first, second, phasing, UniversalJoint.At(Angle.FromRadians(equivalent)))
            : throw Guard.OutOfRange("Equivalent angle of the two joints", "below 90°", equivalent / Si.Degree, "°", nameof(second));
    }

    /// <summary>What a caller must notice: unknown phasing, and ripple that does not cancel.</summary>
    public IReadOnlyList<Finding> Check()
    {
        var findings = new List<Finding>();
        if (Phasing == JointPhasing.NotKnown)
        {
            findings.Add(Finding.Of(PtoFindings.JointPhasingNotKnown, Severity.Warning)
                .With("equivalent", QuantityKind.Angle, Equivalent.AngleRad));
        }
        else if (Equivalent.AngleRad > 1e-9)
        {
            findings.Add(Finding.Of(PtoFindings.JointsDoNotCancel, Phasing == JointPhasing.InPhase ? Severity.Note : Severity.Warning)
                .With("first", QuantityKind.Angle, First.AngleRad)
                .With("second", QuantityKind.Angle, Second.AngleRad)
                .With("nonUniformity", QuantityKind.Number, Equivalent.NonUniformity));
        }

        return findings;
    }
}
