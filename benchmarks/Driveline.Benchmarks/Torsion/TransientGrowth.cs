using System.Globalization;
using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Benchmarks.Torsion;

/// <summary>How the cost of one second grows with inertias, damping, a stiff part and events; printed as rows of a table.</summary>
/// <remarks>
/// Each row is timed by turns with the plain chain: four inertias, the far end jams, a coupling in the middle breaks. One part of it is
/// changed at a time. Rows of events are another chain: a rotor that bounces in the play of an undamped shaft.
/// </remarks>
internal static class TransientGrowth
{
    private static readonly Duration Second = Duration.FromSeconds(1);
    private static readonly TransientWorkspace PlainRoom = new();
    private static readonly TransientWorkspace Room = new();
    private static readonly TorsionStart Plain = Chain(4, 1, 1);

    public static void All()
    {
        Console.WriteLine("| changed | time over the plain chain's | 95 % interval | \u00B5s | steps | events |");
        Console.WriteLine("| --- | --- | --- | --- | --- | --- |");
        Row("nothing", Plain);
        foreach (int rotors in (int[])[2, 3, 6, 10, 20, 50])
        {
            Row(rotors + " inertias", Chain(rotors, 1, 1));
        }

        foreach (double damping in (double[])[0, 10, 100, 1000, 4000])
        {
            Row(Text(damping) + " N\u00B7m\u00B7s/rad in one shaft", Chain(4, damping, 1));
        }

        foreach (double ratio in (double[])[10, 1e3, 1e5])
        {
            Row("one shaft " + Text(ratio) + " times as stiff", Chain(4, 1, ratio));
        }

        foreach (double play in (double[])[2, 0.5, 0.1, 0.02, 0.002])
        {
            Row("two inertias, play of " + Text(play) + " rad", Bouncing(play));
        }
    }

    private static void Row(string changed, TorsionStart start)
    {
        TransientResult result = Transient.Run(start, Second, Room);
        long steps = result.StepCount;
        int events = result.EventCount;
        PairedRatio ratio = PairedRatio.Of(
            () => Transient.Run(Plain, Second, PlainRoom).StepCount, () => Transient.Run(start, Second, Room).StepCount, 1);
        Console.WriteLine(string.Format(
            CultureInfo.InvariantCulture, "| {0} | {1:F2} | {2:F2} to {3:F2} | {4:F0} | {5} | {6} |",
            changed, ratio.Median, ratio.Low, ratio.High, ratio.Nanoseconds / 1000, steps, events));
    }

    // A chain of that many inertias, with the damping of one shaft as given (1: as the others) and one shaft so many times as stiff.
    private static TorsionStart Chain(int rotors, double damping, double stiffer)
    {
        var builder = new TorsionModelBuilder();
        for (int i = 0; i < rotors; i++)
        {
            double inertia = i == 0 ? 1.1 : i == rotors - 1 ? 4 : 0.06 + (0.04 * (i % 3));
            builder.AddRotor("r" + i, MassMomentOfInertia.FromKilogramSquareMeters(inertia));
        }

        for (int i = 0; i + 1 < rotors; i++)
        {
            bool isFirst = i == 0;
            double stiffness = (8000 + (6000 * (i % 3))) * (isFirst ? stiffer : 1);
            Shaft shaft = Shaft.OfStiffness(RotationalStiffness.FromNewtonMetersPerRadian(stiffness))
                .WithDamping(isFirst && damping != 1 ? damping : 0.9);
            builder = i == (rotors - 1) / 2
                ? builder.AddShaft("s" + i, "r" + i, "r" + (i + 1), shaft, BreakingCoupling.At(Torque.FromNewtonMeters(1500)))
                : builder.AddShaft("s" + i, "r" + i, "r" + (i + 1), shaft);
        }

        return builder.AddObstacle("jam", "r" + (rotors - 1), Obstacle.Jam(Duration.Zero)).Build()
            .TurningAt(RotationalSpeed.FromRadiansPerSecond(TransientBenchmarks.Speed));
    }

    private static TorsionStart Bouncing(double play)
    {
        Shaft shaft = Shaft.OfStiffness(RotationalStiffness.FromNewtonMetersPerRadian(20000)).WithBacklash(Angle.FromRadians(play));
        return new TorsionModelBuilder()
            .AddRotor("r0", MassMomentOfInertia.FromKilogramSquareMeters(0.1))
            .AddRotor("r1", MassMomentOfInertia.FromKilogramSquareMeters(4))
            .AddShaft("s0", "r0", "r1", shaft)
            .AddObstacle("jam", "r1", Obstacle.Jam(Duration.Zero))
            .Build()
            .TurningAt(RotationalSpeed.FromRadiansPerSecond(TransientBenchmarks.Speed));
    }

    private static string Text(double value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
