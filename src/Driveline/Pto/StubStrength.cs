using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Pto;

/// <summary>Torsion capacity of the tractor's PTO stub at the root circle of its splines.</summary>
/// <remarks>
/// The root circle is taken as a plain bar, from first yield to full plastic torque (<see cref="TorsionCapacity"/>); the
/// low end uses the smallest root diameter known, the high end the largest. When the steel is not known, the band spans
/// every shaft steel considered, rests on memory, and a finding says so.
/// </remarks>
public sealed class StubStrength
{
    private readonly StressBand yield;

    private StubStrength(PtoType type, StressBand yield, IReadOnlyList<Finding> findings)
    {
        Type = type;
        this.yield = yield;
        Findings = findings;
        NoSteps none = default;
        Torque = TorqueBand.OfSi(
            Predict(ref none),
            BandBasis.Combine(yield.Basis, type.RootDiameter.Basis)
                .With(Basis.CommonPractice("distortion energy: shear yield is 1/√3 of tensile yield, in textbooks of mechanics")));
    }

    /// <summary>The PTO type.</summary>
    public PtoType Type { get; }

    /// <summary>Torque at which the stub is permanently twisted, at the PTO.</summary>
    public TorqueBand Torque { get; }

    /// <summary>What a caller must notice.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The implied stub: the type is known, its steel is not.</summary>
    /// <example>Type 1: 849 to 4510 N·m, expected 1794 N·m, all from memory.</example>
    public static StubStrength Of(PtoType type)
    {
        Guard.NotNull(type, nameof(type));
        StressBand yield = ShaftMaterials.NotKnown;
        Finding finding = Finding.Of(PtoFindings.StubSteelNotKnown, Severity.Warning)
            .With("type", QuantityKind.Count, type.Number)
            .With("yieldLow", QuantityKind.Stress, yield.SiBand.Low)
            .With("yieldHigh", QuantityKind.Stress, yield.SiBand.High);
        return new StubStrength(type, yield, [finding]);
    }

    /// <summary>The stub of a type in a steel whose yield strength is known.</summary>
    public static StubStrength Of(PtoType type, StressBand yield) =>
        new(Guard.NotNull(type, nameof(type)), Guard.NotNull(yield, nameof(yield)), []);

    /// <summary>The lines of the calculation: the low end, then the expected value, then the high end.</summary>
    public IReadOnlyList<CalculationLine> Sheet()
    {
        var steps = StepList.New();
        Predict(ref steps);
        return steps.Lines;
    }

    private Band Predict<S>(ref S log)
        where S : struct, ISteps
    {
        Band root = Type.RootDiameter.SiBand, stress = yield.SiBand;
        double low = TorsionCapacity.FirstYieldNm(root.Low, 0, stress.Low, ref log);
        double expected = stress.HasExpected
            ? TorsionCapacity.FirstYieldNm(root.Expected, 0, stress.Expected, ref log)
            : double.PositiveInfinity;
        double high = stress.IsBounded
            ? TorsionCapacity.FullPlasticNm(root.High, 0, stress.High, ref log)
            : double.PositiveInfinity;
        return new Band(low, expected, high);
    }
}
