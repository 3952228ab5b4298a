using Driveline.Torsion;
using static Driveline.Tests.Torsion.Build;

namespace Driveline.Tests.Torsion;

public class TransientBatchTests
{
    [Fact]
    public void Run_BoltOfEverySize_BreaksWhereTheSineReachesIt()
    {
        // A rotor of 0.5 kg·m² at 10 rad/s winds up a shaft of 2000 N·m/rad: T = ω·√(J·k)·sin(t·√(k/J)), √(J·k) = 31.6228.
        double[] trips = [100, 200, 300];
        TransientBatch batch = TransientBatch.Of(Stop()).WithTripTorque("s", trips);
        batch.Run(S(0.1), TransientLimits.Usual, new TransientWorkspace());
        for (int run = 0; run < 3; run++)
        {
            Near(trips[run], batch.Peaks("s")[run], 1e-13, "the bolt");
            Near(Math.Asin(trips[run] / (10 * Math.Sqrt(1000))) / Math.Sqrt(4000), batch.TripTimes("s")[run], 1e-12, "asin");
            Assert.True(batch.AreComplete[run]);
        }
    }

    [Fact]
    public void Run_StiffnessOfEveryShaft_GivesTheRootLaw()
    {
        // T = ω·√(J·k), at a quarter of a swing, while the bolt of 1000 N·m holds; 10·√(0.5·50 000) = 1581 N·m breaks it.
        double[] stiffness = [500, 2000, 8000, 50_000];
        TransientBatch batch = TransientBatch.Of(Stop()).WithStiffness("s", stiffness);
        batch.Run(S(0.2), TransientLimits.Usual, new TransientWorkspace());
        for (int run = 0; run < 3; run++)
        {
            Near(10 * Math.Sqrt(0.5 * stiffness[run]), batch.Peaks("s")[run], 1e-13, "ω√(Jk)");
            Assert.True(double.IsNaN(batch.TripTimes("s")[run]));
        }

        Near(1000, batch.Peaks("s")[3], 1e-13, "the bolt");
    }

    [Fact]
    public void Run_ShaftThatStartsWithATorque_StartsWithTheSameAtEveryStiffness()
    {
        // At rest but wound up: the rotor swings about nothing, so that the torque at the start is the largest.
        TorsionStart wound = Stop().Model.AtRest().WithTorque("s", Nm(120));
        TransientBatch batch = TransientBatch.Of(wound).WithStiffness("s", [500, 2000, 8000]);
        batch.Run(S(0.2), TransientLimits.Usual, new TransientWorkspace());
        Assert.All(batch.Peaks("s").ToArray(), peak => Near(120, peak, 1e-13, "T₀"));
    }

    [Fact]
    public void Run_AfterTheFirst_AllocatesNothing()
    {
        double[] stiffness = [.. Enumerable.Range(0, 90).Select(k => 1500.0 + (10 * k))];
        double[] trips = [.. Enumerable.Range(0, 90).Select(k => 150.0 + k)];
        double[] speeds = new double[90];
        Array.Fill(speeds, 10);
        TransientBatch batch = TransientBatch.Of(Stop()).WithStiffness("s", stiffness).WithTripTorque("s", trips).WithSpeed(speeds);
        var workspace = new TransientWorkspace();
        UnitsNet.Duration duration = S(0.2);
        batch.Run(duration, TransientLimits.Usual, workspace);
        batch.Run(duration, TransientLimits.Usual, workspace);
        long before = GC.GetAllocatedBytesForCurrentThread();
        stiffness[0] = 1400;
        batch.Run(duration, TransientLimits.Usual, workspace);
        double peak = batch.Peaks("s")[0];
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        Near(150, peak, 1e-13, "the bolt");
    }

    [Fact]
    public void Columns_OfWhatIsNotThereOrOfOtherLengths_AreRefusedByName()
    {
        TransientBatch batch = TransientBatch.Of(Stop()).WithStiffness("s", [500, 2000]);
        Refuses("\"wall\"", () => batch.WithInertia("wall", [1, 2]));
        Refuses("\"t\"", () => batch.WithDamping("t", [1, 2]));
        Refuses("got 3", () => batch.WithSpeed([1, 2, 3]));
        Refuses("Only a coupling trips", () => TransientBatch.Of(Plain()).WithTripTorque("s", [1]));

        static void Refuses(string words, Func<object> column) =>
            Assert.Contains(words, Assert.Throws<ArgumentException>(column).Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(-1)]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    public void Run_StiffnessThatIsNone_IsRefusedWithItsRun(double wrong)
    {
        TransientBatch batch = TransientBatch.Of(Stop()).WithStiffness("s", [500, wrong]);
        ArgumentOutOfRangeException refused = Assert.Throws<ArgumentOutOfRangeException>(
            () => batch.Run(S(0.1), TransientLimits.Usual, new TransientWorkspace()));
        Assert.Contains("Stiffness of \"s\" in run 1", refused.Message, StringComparison.Ordinal);
    }

    // What does not change the motion between events shares its modes; a friction load's share in holding does change a row.
    [Fact]
    public void Run_TwoLoadsThatHoldARotor_ShareByTheirTorquesInEveryRun()
    {
        // 60 N·m are held by 100 and 50 N·m of breakaway: 2 to 1; then by 100 and 300: 1 to 3.
        TorsionStart start = new TorsionModelBuilder().Rotor("a", 1).Rotor("b", 1).AddShaft("s", "a", "b", Shaft(1000, 1))
            .AddFrictionLoad("f", "a", Nm(100), Nm(100)).AddFrictionLoad("g", "a", Nm(50), Nm(50)).AddTorque("push", "a", Nm(60))
            .Build().AtRest();
        TransientBatch batch = TransientBatch.Of(start).WithTripTorque("g", [50, 300]);
        batch.Run(S(0.1), TransientLimits.Usual, new TransientWorkspace());
        Near(40, batch.Peaks("f")[0], 1e-12, "60·100/150");
        Near(15, batch.Peaks("f")[1], 1e-12, "60·100/400");
    }

    private static TorsionStart Stop() => new TorsionModelBuilder().Rotor("rotor", 0.5).Held("wall", 0)
        .AddShaft("s", "rotor", "wall", Shaft(2000), BreakingCoupling.At(Nm(1000)))
        .Build().AtRest().WithSpeed("rotor", RadPerS(10));

    private static TorsionStart Plain() => new TorsionModelBuilder().Rotor("rotor", 0.5).Held("wall", 0)
        .AddShaft("s", "rotor", "wall", Shaft(2000)).Build().AtRest();
}
