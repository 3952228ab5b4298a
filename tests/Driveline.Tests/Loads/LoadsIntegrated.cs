using Driveline.Loads;
using UnitsNet;
using static Driveline.Tests.Loads.LoadsTestBands;

namespace Driveline.Tests.Loads;

/// <summary>
/// The estimates against a second method: the same lumps stepped through time with a friction clutch that sticks and slips.
/// </summary>
public class LoadsIntegrated
{
    // Symplectic steps of 1/2000 of the fastest period lie within 0.2 % of the peak.
    private const double StepError = 5e-3;

    public static TheoryData<int> Seeds() => [.. Enumerable.Range(1, 40)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Strike_SteppedThroughTime_StaysBelowTheEstimate(int seed)
    {
        var random = new Random(seed);
        double capacity = Between(random, 300, 4000), omega = Between(random, 20, 110), steady = capacity * Between(random, 0.05, 0.95);
        double line = Between(random, 0.02, 2), engine = Between(random, 0.5, 20), k = Between(random, 500, 20000);
        DrivingSide side = DrivingSide.At(RotationalSpeed.FromRadiansPerSecond(omega), Nm(steady))
            .WithClutchCapacity(Nm(capacity)).WithLineInertia(KgM2(line)).WithEngineInertia(KgM2(engine)).WithStiffness(NmPerRad(k));
        double estimate = StrikeEstimate.Of(StrikePlace.Driveline, side).Peak.High!.Value.NewtonMeters;
        double stepped = SteppedStrike(capacity, omega, steady, line, engine, k);
        Assert.True(stepped <= estimate * (1 + StepError), FormattableString.Invariant($"stepped {stepped:G6}, estimate {estimate:G6}"));
    }

    // A heavy engine leaves nothing between the bound and what happens.
    [Theory]
    [InlineData(800, 56, 300, 0.3, 4000)]
    [InlineData(1500, 90, 900, 0.05, 12000)]
    [InlineData(400, 40, 20, 1.5, 2500)]
    public void Strike_HeavyEngine_ReachesTheEstimate(double capacity, double omega, double steady, double line, double k)
    {
        DrivingSide side = DrivingSide.At(RotationalSpeed.FromRadiansPerSecond(omega), Nm(steady))
            .WithClutchCapacity(Nm(capacity)).WithLineInertia(KgM2(line)).WithStiffness(NmPerRad(k));
        Close.Relative(
            SteppedStrike(capacity, omega, steady, line, 1e5, k),
            StrikeEstimate.Of(StrikePlace.Driveline, side).Peak.High!.Value.NewtonMeters,
            StepError,
            "stepped through time, engine 1e5 kg·m²");
    }

    // A line stuck to its engine, the clutch never slipping: the whole inertia stops.
    [Fact]
    public void Strike_ClutchThatHolds_ReachesTheEstimate()
    {
        DrivingSide side = DrivingSide.At(RotationalSpeed.FromRadiansPerSecond(40), Nm(200))
            .WithClutchCapacity(Nm(20000)).WithLineInertia(KgM2(0.3)).WithEngineInertia(KgM2(2)).WithStiffness(NmPerRad(3000));
        Close.Relative(
            SteppedStrike(20000, 40, 200, 0.3, 2, 3000),
            StrikeEstimate.Of(StrikePlace.Driveline, side).Peak.High!.Value.NewtonMeters,
            StepError,
            "stepped through time");
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Engagement_SteppedThroughTime_StaysBelowTheHighEnd(int seed)
    {
        var random = new Random(seed);
        double capacity = Between(random, 200, 3000), omega = Between(random, 10, 60), rise = Between(random, 0.005, 2);
        double near = Between(random, 0.02, 0.5), rotor = Between(random, 0.5, 5), k = Between(random, 500, 10000);
        EngagementTorque start = EngagementTorque.Of(
            Engagement.Through(PtoClutchKind.Hydraulic).WithCapacity(Nm(capacity)), RotationalSpeed.FromRadiansPerSecond(omega))
            .WithRotor(KgM2(rotor + near)).WithLoad(Nm(0)).WithStiffness(NmPerRad(k)).WithRise(Seconds(rise));
        double high = start.Peak.High!.Value.NewtonMeters;
        double stepped = SteppedEngagement(capacity, omega, rise, near, rotor, k);
        Assert.True(stepped <= high * (1 + StepError), FormattableString.Invariant($"stepped {stepped:G6}, high end {high:G6}"));
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void Engagement_SuddenBite_StaysBelowTwiceTheCapacity(int seed)
    {
        var random = new Random(seed);
        double capacity = Between(random, 200, 3000), omega = Between(random, 10, 60);
        double stepped = SteppedEngagement(
            capacity, omega, 0, Between(random, 0.02, 0.5), Between(random, 0.5, 5), Between(random, 500, 10000));
        EngagementTorque start = EngagementTorque.Of(
            Engagement.Through(PtoClutchKind.Electric).WithCapacity(Nm(capacity)), RotationalSpeed.FromRadiansPerSecond(omega));
        Assert.True(stepped <= start.Peak.High!.Value.NewtonMeters * (1 + StepError),
            FormattableString.Invariant($"stepped {stepped:G6}, capacity {capacity:G6}"));
    }

    private static double SteppedStrike(double capacity, double omega, double steady, double line, double engine, double k)
    {
        double dt = 2 * Math.PI / Math.Sqrt(k / line) / 2000;
        double before = omega, behind = omega, torque = steady, peak = steady;
        bool isStuck = true;
        while (behind > 0)
        {
            if (isStuck)
            {
                double both = (steady - torque) / (engine + line);
                isStuck = torque + (line * both) <= capacity;
                before += both * dt;
                behind = isStuck ? before : behind;
            }

            if (!isStuck)
            {
                before += (steady - capacity) / engine * dt;
                behind += (capacity - torque) / line * dt;
            }

            torque += k * behind * dt;
            peak = Math.Max(peak, torque);
        }

        return peak;
    }

    private static double SteppedEngagement(double capacity, double omega, double rise, double near, double rotor, double k)
    {
        double dt = 2 * Math.PI / Math.Sqrt((k / near) + (k / rotor)) / 2000;
        double end = rise + (2 * (near + rotor) * omega / capacity) + (4 * Math.PI / Math.Sqrt(k / rotor));
        double first = 0, second = 0, torque = 0, peak = 0;
        for (double t = 0; t < end; t += dt)
        {
            double passes = rise > 0 ? Math.Min(capacity, capacity * t / rise) : capacity;
            bool isStuck = first >= omega && Math.Abs(torque) <= passes;
            double clutch = first < omega || torque > 0 ? passes : -passes;
            first = isStuck ? omega : first + ((clutch - torque) / near * dt);
            second += torque / rotor * dt;
            torque += k * (first - second) * dt;
            peak = Math.Max(peak, torque);
        }

        return peak;
    }

    private static double Between(Random random, double low, double high) => low * Math.Pow(high / low, random.NextDouble());
}
