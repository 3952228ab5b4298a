using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Pto;

/// <summary>Torsion capacity of the tractor's PTO stub at the root circle of its splines.</summary>
/// <remarks>
/// The root circle is taken as a plain bar, from first yield to full plastic torque (<see cref="TorsionCapacity"/>); the
/// low end uses the smallest root diameter known, the high end the largest. When the steel is not known, the low end is the
/// highest torque its type is rated for, expected and high are first yield at HRC 30 and 40, all from memory, and a finding says so.
/// </remarks>
public sealed class StubStrength
{
    // Torsional yield at HRC 30 and HRC 40, which is what such a stub is guessed to be.
    private const double YieldAtHrc30Pa = 503e6;
    private const double YieldAtHrc40Pa = 690e6;

    private static readonly Basis Rated = Basis.FromMemory("no stub is weaker than the highest torque its type is rated for");
    private static readonly Basis Hardness = Basis.FromMemory(
        "guess: a stub of HRC 30 to 40, with the torsional yield at that hardness in Heat Treating Progress 2009, figure 1, after "
            + "SAE J413");

    private readonly StressBand? yield;

    private StubStrength(PtoType type)
    {
        Type = type;
        NoSteps none = default;
        Torque = TorqueBand.OfSi(
            Predict(ref none),
            new BandBasis(Basis.Weakest(Rated, type.HighestLimit.Basis), Hardness, Hardness, BandEnd.Interval95, BandEnd.Interval95)
                .With(type.RootDiameter.WeakestBasis));
        Findings =
        [
            Finding.NotKnown(PtoFindings.StubSteelNotKnown).Barring(Bars.Guards).WithSettledBy(Measurements.PartLimit)
                .With("type", QuantityKind.Count, type.Number)
                .With("rated", QuantityKind.Torque, Torque.SiBand.Low)
                .With("high", QuantityKind.Torque, Torque.SiBand.High),
        ];
    }

    private StubStrength(PtoType type, StressBand yield, IReadOnlyList<Finding> findings)
    {
        Type = type;
        this.yield = yield;
        Findings = findings;
        NoSteps none = default;
        Torque = TorqueBand.OfSi(
            Predict(ref none),
            BandBasis.Combine(yield.Basis, type.RootDiameter.Basis)
                .With(Basis.Published("NASA TM-106943", "1995", "p. 16, shear yield 0.577 of tensile yield")
                    .ReadVia("a public source file that quotes the page")));
    }

    /// <summary>The PTO type.</summary>
    public PtoType Type { get; }

    /// <summary>Torque at which the stub is permanently twisted, at the PTO.</summary>
    public TorqueBand Torque { get; }

    /// <summary>What a caller must notice.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The implied stub: the type is known, its steel is not.</summary>
    /// <example>Type 1: 1149 N·m (65 kW at 540 min⁻¹), expected 2386 N·m, to 3546 N·m, all from memory.</example>
    public static StubStrength Of(PtoType type) => new(Guard.NotNull(type, nameof(type)));

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

    /// <summary>The type of PTO and the torque its stub takes, with its unit.</summary>
    public override string ToString() => Type + ": " + Torque;

    private Band Predict<S>(ref S log)
        where S : struct, ISteps
    {
        Band root = Type.RootDiameter.SiBand;
        if (yield is null)
        {
            return new Band(
                Type.HighestLimit.PowerW / Si.RadiansPerSecond(Type.RatedSpeed),
                TorsionCapacity.FirstYieldNm(root.Expected, 0, YieldAtHrc30Pa * Math.Sqrt(3), ref log),
                TorsionCapacity.FirstYieldNm(root.High, 0, YieldAtHrc40Pa * Math.Sqrt(3), ref log));
        }

        Band stress = yield.SiBand;
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
