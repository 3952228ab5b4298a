using System.Diagnostics.CodeAnalysis;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Fasteners;

/// <summary>What a bolt of a grade carries in tension at a size. Keeps its inputs.</summary>
/// <remarks>
/// Load = stress × stress area (A_s). ISO 898-1 rounds to three significant figures; SAE J429 to 50 lbf up to 10 000 lbf and to 100 lbf
/// above. Printed cells differ from that rule by at most one step.
/// </remarks>
public sealed class BoltStrength
{
    private BoltStrength(BoltGrade grade, ScrewThread thread, GradeStrength strength)
    {
        Grade = grade;
        Thread = thread;
        Strength = strength;
        PublishedMinimumTensileLoad = PublishedLoads.Tensile(grade, thread);
        PublishedProofLoad = PublishedLoads.Proof(grade, thread);
    }

    /// <summary>The grade.</summary>
    public BoltGrade Grade { get; }

    /// <summary>The thread.</summary>
    public ScrewThread Thread { get; }

    /// <summary>What the grade promises at the size.</summary>
    public GradeStrength Strength { get; }

    /// <summary>Minimum tensile load by the standard's rule: A_s · R_m,min, rounded.</summary>
    public Force MinimumTensileLoadByRule => Force.FromNewtons(RuleN(Strength.MinimumTensile));

    /// <summary>Proof load by the standard's rule: A_s · S_p, rounded; null when the standard gives no proof stress.</summary>
    public Force? ProofLoadByRule => Strength.PublishedProofStress is { } proof ? Force.FromNewtons(RuleN(proof)) : null;

    /// <summary>Minimum tensile load as printed; null when no cell is held.</summary>
    public Sourced? PublishedMinimumTensileLoad { get; }

    /// <summary>Proof load as printed; null when no cell is held.</summary>
    public Sourced? PublishedProofLoad { get; }

    /// <summary>Minimum tensile load: the printed cell where one was seen, else by the rule.</summary>
    public Force MinimumTensileLoad => IsSeen(PublishedMinimumTensileLoad)
        ? Force.FromNewtons(Si.Newtons(PublishedMinimumTensileLoad!))
        : MinimumTensileLoadByRule;

    /// <summary>Proof load: the printed cell where one was seen, else by the rule; null when the standard gives none.</summary>
    public Force? ProofLoad => IsSeen(PublishedProofLoad) ? Force.FromNewtons(Si.Newtons(PublishedProofLoad!)) : ProofLoadByRule;

    /// <summary>Basis of <see cref="MinimumTensileLoad"/>.</summary>
    public Basis MinimumTensileLoadBasis => IsSeen(PublishedMinimumTensileLoad)
        ? PublishedMinimumTensileLoad!.Basis
        : Basis.Weakest(Thread.AreaBasis, Strength.Basis);

    /// <summary>Tensile load of real bolts of the grade: tensile band × stress area, not rounded.</summary>
    public ForceBand TensileLoad =>
        ForceBand.OfSi(Strength.Tensile.SiBand.Times(Thread.StressAreaM2), Strength.Tensile.Basis.With(Thread.AreaBasis));

    /// <summary>Weakest basis of everything used.</summary>
    public Basis WeakestBasis => Basis.Weakest(TensileLoad.WeakestBasis, MinimumTensileLoadBasis);

    /// <summary>The strength of a bolt of a grade at a size.</summary>
    /// <exception cref="ArgumentException">The standard does not hold the grade at that size; the message lists the sizes held.</exception>
    public static BoltStrength Of(BoltGrade grade, ScrewThread thread)
    {
        Guard.NotNull(grade, nameof(grade));
        return new BoltStrength(grade, thread, grade.At(thread));
    }

    /// <summary>The strength of a bolt of a grade at a size; false when the standard does not hold it there.</summary>
    public static bool TryOf(BoltGrade grade, ScrewThread thread, [NotNullWhen(true)] out BoltStrength? strength)
    {
        strength = Guard.NotNull(grade, nameof(grade)).TryAt(thread, out GradeStrength? at) ? new BoltStrength(grade, thread, at!) : null;
        return strength is not null;
    }

    /// <summary>The calculation of the minimum tensile load before rounding, step by step.</summary>
    public IReadOnlyList<CalculationLine> Calculation()
    {
        StepList steps = StepList.New();
        Newtons(Si.Pascals(Strength.MinimumTensile), Thread.StressAreaM2, ref steps);
        return steps.Lines;
    }

    /// <summary>Grade, thread and minimum tensile load.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Grade} {Thread}: at least {Si.Newtons(MinimumTensileLoad) / 1000:0.##} kN");

    private static bool IsSeen(Sourced? cell) => cell is not null && cell.Basis.Kind > BasisKind.FromMemory;

    private double RuleN(Sourced stress)
    {
        NoSteps none = default;
        double n = Newtons(Si.Pascals(stress), Thread.StressAreaM2, ref none);
        return Thread.System == ThreadSystem.Metric
            ? LoadRounding.ToThreeFigures(n)
            : LoadRounding.ToSaeStep(n / Si.PoundForce) * Si.PoundForce;
    }

    internal static double Newtons<S>(double stressPa, double stressAreaM2, ref S log)
        where S : struct, ISteps
    {
        log.Add(FastenerSteps.TensileStrength, stressPa);
        log.Add(FastenerSteps.StressArea, stressAreaM2);
        double n = stressPa * stressAreaM2;
        log.Add(FastenerSteps.TensileLoad, n);
        return n;
    }
}
