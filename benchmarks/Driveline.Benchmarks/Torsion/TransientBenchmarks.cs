using BenchmarkDotNet.Attributes;
using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Benchmarks.Torsion;

/// <summary>One second of a damped four-inertia chain whose end jams and whose coupling breaks.</summary>
[MemoryDiagnoser]
public class TransientBenchmarks
{
    /// <summary>Least number of fixed steps at which every peak is within 1e-7 of the exact one; see <see cref="PeakErrors"/>.</summary>
    public const int EqualSteps = 10_800;

    public const double Speed = 56.5;

    /// <summary>Models of a study, more than a workspace remembers, so that each run meets a model that is new to it.</summary>
    public const int StudyRuns = 100;

    private static readonly double[] Inertia = [1.1, 0.06, 0.1, 4.0];
    private static readonly double[] Stiffness = [20000, 8000, 15000];
    private static readonly double[] Damping = [1.5, 0.4, 0.9];
    private readonly FixedStepChain fixedStep = new(Inertia, Stiffness, Damping, 1500);
    private readonly TransientWorkspace workspace = new();
    private readonly TorsionStart start = Model();
    private readonly TorsionStart[] study = [.. Enumerable.Range(0, StudyRuns).Select(k => Model(Factor(k)))];
    private readonly FixedStepChain[] studyByFixedSteps =
    [
        .. Enumerable.Range(0, StudyRuns).Select(k => new FixedStepChain(Inertia, Stiffnesses(Factor(k)), Damping, 1500)),
    ];

    private readonly FixedStepLanes[] studyByLanes =
    [
        .. Enumerable.Range(0, StudyRuns).Chunk(FixedStepLanes.Lanes).Select(
            runs => new FixedStepLanes(Inertia, Stiffness, [.. runs.Select(k => Stiffness[1] * Factor(k))], Damping, 1500)),
    ];

    private readonly TransientBatch batch = TransientBatch.Of(Model())
        .WithStiffness("s2", [.. Enumerable.Range(0, StudyRuns).Select(k => Stiffness[1] * Factor(k))]);

    private readonly TransientBatch bolts = TransientBatch.Of(Model())
        .WithTripTorque("s2", [.. Enumerable.Range(0, StudyRuns).Select(k => 1500 * Factor(k))]);

    private readonly Duration second = Duration.FromSeconds(1);

    [Benchmark(Baseline = true)]
    public double FixedStep_OneSecond() => fixedStep.Run(Speed, 1, EqualSteps);

    [Benchmark]
    public double Transient_OneSecond() => Transient.Run(start, second, workspace).Peak("s3").Own!.Value.NewtonMeters;

    [Benchmark(OperationsPerInvoke = StudyRuns)]
    public double FixedStep_Study()
    {
        double sum = 0;
        foreach (FixedStepChain chain in studyByFixedSteps)
        {
            sum += chain.Run(Speed, 1, EqualSteps);
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = StudyRuns)]
    public double Transient_Study()
    {
        double sum = 0;
        foreach (TorsionStart run in study)
        {
            sum += Transient.Run(run, second, workspace).Peak("s3").Own!.Value.NewtonMeters;
        }

        return sum;
    }

    /// <summary>Four lanes of one vector at a time.</summary>
    [Benchmark(OperationsPerInvoke = StudyRuns)]
    public double FixedStepInLanes_Study()
    {
        double sum = 0;
        foreach (FixedStepLanes lanes in studyByLanes)
        {
            sum += lanes.Run(Speed, 1, EqualSteps);
        }

        return sum;
    }

    [Benchmark(OperationsPerInvoke = StudyRuns)]
    public double TransientBatch_Study()
    {
        batch.Run(second, TransientLimits.Usual, workspace);
        return batch.Peaks("s3")[StudyRuns - 1];
    }

    /// <summary>Bolts of a hundred strengths in one driveline, which share their modes.</summary>
    [Benchmark(OperationsPerInvoke = StudyRuns)]
    public double TransientBatch_Bolts()
    {
        bolts.Run(second, TransientLimits.Usual, workspace);
        return bolts.Peaks("s3")[StudyRuns - 1];
    }

    /// <summary>Largest difference of a peak between the lanes and the chains, as a part of it.</summary>
    public double LaneError()
    {
        FixedStepInLanes_Study();
        FixedStep_Study();
        double worst = 0;
        for (int n = 0; n < studyByLanes.Length * FixedStepLanes.Lanes * 3; n++)
        {
            double lane = studyByLanes[n / 3 / FixedStepLanes.Lanes].Peak(n % 3, n / 3 % FixedStepLanes.Lanes);
            worst = Math.Max(worst, Math.Abs((lane / studyByFixedSteps[n / 3].Peak[n % 3]) - 1));
        }

        return worst;
    }

    /// <summary>Relative error of each shaft's peak with that many fixed steps.</summary>
    public static double[] PeakErrors(int steps)
    {
        var chain = new FixedStepChain(Inertia, Stiffness, Damping, 1500);
        chain.Run(Speed, 1, steps);
        TransientResult exact = Transient.Run(Model(), Duration.FromSeconds(1));
        return Array.ConvertAll([0, 1, 2], i => Math.Abs((chain.Peak[i] / exact.Peak("s" + (i + 1)).Own!.Value.NewtonMeters) - 1));
    }

    internal static TorsionStart Model() => Model(1);

    private static double Factor(int run) => 0.8 + (0.4 * run / StudyRuns);

    private static double[] Stiffnesses(double factor) => [Stiffness[0], Stiffness[1] * factor, Stiffness[2]];

    private static TorsionStart Model(double factor)
    {
        double[] stiffness = Stiffnesses(factor);
        var builder = new TorsionModelBuilder();
        for (int i = 0; i < 4; i++)
        {
            builder.AddRotor("r" + (i + 1), MassMomentOfInertia.FromKilogramSquareMeters(Inertia[i]));
        }

        for (int i = 0; i < 3; i++)
        {
            Shaft shaft = Shaft.OfStiffness(RotationalStiffness.FromNewtonMetersPerRadian(stiffness[i])).WithDamping(Damping[i]);
            string name = "s" + (i + 1);
            string from = "r" + (i + 1);
            string to = "r" + (i + 2);
            builder = i == 1
                ? builder.AddShaft(name, from, to, shaft, BreakingCoupling.At(Torque.FromNewtonMeters(1500)))
                : builder.AddShaft(name, from, to, shaft);
        }

        return builder.AddObstacle("jam", "r4", Obstacle.Jam(Duration.Zero)).Build().TurningAt(RotationalSpeed.FromRadiansPerSecond(Speed));
    }
}
