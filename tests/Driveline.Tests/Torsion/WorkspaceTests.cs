using Driveline.Torsion;
using Driveline.Wording;
using static Driveline.Tests.Torsion.Build;

namespace Driveline.Tests.Torsion;

public class WorkspaceTests
{
    [Theory]
    [InlineData("c02")]
    [InlineData("c06")]
    [InlineData("c10")]
    [InlineData("c12")]
    public void Run_AfterTheFirst_AllocatesNothing(string name)
    {
        (TorsionStart start, double seconds) = ReferenceModels.Of(name);
        var workspace = new TransientWorkspace();
        UnitsNet.Duration duration = S(seconds);
        Transient.Run(start, duration, workspace);
        Transient.Run(start, duration, workspace);
        long before = GC.GetAllocatedBytesForCurrentThread();
        Transient.Run(start, duration, workspace);
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
    }

    [Fact]
    public void Run_SameWorkspaceForOtherModels_GivesTheSameBits()
    {
        var workspace = new TransientWorkspace();
        foreach (string name in new[] { "c05", "c02", "c07", "c02", "c14" })
        {
            (TorsionStart start, double seconds) = ReferenceModels.Of(name);
            TransientResult shared = Transient.Run(start, S(seconds), workspace);
            TransientResult own = start.Run(seconds);
            Assert.Equal(own.EventCount, shared.EventCount);
            foreach (string element in start.Model.Elements)
            {
                Assert.Equal(own.Peak(element), shared.Peak(element));
            }
        }
    }

    // More models than a workspace remembers, twice: the second time each is new again.
    [Fact]
    public void Run_StudyOfOneStructure_GivesTheBitsOfRunsAloneAndAllocatesNothing()
    {
        TorsionStart[] study = [.. Enumerable.Range(0, 70).Select(Varied)];
        double[] peaks = new double[study.Length];
        var workspace = new TransientWorkspace();
        UnitsNet.Duration second = S(1);
        Study();
        Study();
        long before = GC.GetAllocatedBytesForCurrentThread();
        Study();
        Assert.Equal(0, GC.GetAllocatedBytesForCurrentThread() - before);
        for (int k = 0; k < study.Length; k++)
        {
            Assert.Equal(study[k].Run(1).PeakNm("s3"), peaks[k]);
        }

        void Study()
        {
            for (int k = 0; k < study.Length; k++)
            {
                peaks[k] = Transient.Run(study[k], second, workspace).PeakNm("s3");
            }
        }
    }

    private static TorsionStart Varied(int k) => new TorsionModelBuilder()
        .Rotor("r1", 1.1).Rotor("r2", 0.06).Rotor("r3", 0.1 + (0.001 * k)).Rotor("r4", 4)
        .AddShaft("s1", "r1", "r2", Shaft(20000, 1.5))
        .AddShaft("s2", "r2", "r3", Shaft(8000 + (20 * k), 0.4), BreakingCoupling.At(Nm(1500)))
        .AddShaft("s3", "r3", "r4", Shaft(15000, 0.9))
        .AddObstacle("jam", "r4", Obstacle.Jam(S(0)))
        .Build().TurningAt(RadPerS(56.5));

    [Fact]
    public void TraceTorque_UndampedStop_FollowsTheSine()
    {
        TorsionStart start = new TorsionModelBuilder().Rotor("rotor", 0.5).Held("wall", 0).AddShaft("s", "rotor", "wall", Shaft(2000))
            .Build().AtRest().WithSpeed("rotor", RadPerS(10));
        double[] torque = new double[101];
        double[] speed = new double[101];
        Transient.TraceTorque(start, S(0.5), new TransientWorkspace(), "s", torque);
        Transient.TraceSpeed(start, S(0.5), new TransientWorkspace(), "rotor", speed);
        double omega = Math.Sqrt(2000 / 0.5);
        for (int i = 0; i <= 100; i++)
        {
            double t = 0.005 * i;
            Assert.Equal(10 * Math.Sqrt(1000) * Math.Sin(omega * t), torque[i], 1e-9);
            Assert.Equal(10 * Math.Cos(omega * t), speed[i], 1e-10);
        }
    }

    [Fact]
    public void Run_MoreEventsThanAllowed_StopsAndSaysSo()
    {
        (TorsionStart start, double seconds) = ReferenceModels.Of("c10");
        TransientResult result = Transient.Run(start, S(seconds), TransientLimits.Usual.WithEvents(3), new TransientWorkspace());
        Assert.False(result.IsComplete);
        Assert.True(result.Time.Seconds < seconds);
        Driveline.Findings.Finding finding = Assert.Single(result.Findings);
        Assert.Equal(TorsionFindings.TooManyEvents, finding.Code);
        Assert.Contains("do not rely on them", Texts.English.Of(finding), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_MoreStepsThanAllowed_StopsAndSaysSo()
    {
        (TorsionStart start, double seconds) = ReferenceModels.Of("c01");
        TransientResult result = Transient.Run(start, S(seconds), TransientLimits.Usual.WithSteps(5), new TransientWorkspace());
        Assert.False(result.IsComplete);
        Assert.Contains(result.Findings, f => f.Code == TorsionFindings.TooManySteps);
    }

    [Fact]
    public void Run_MoreWorkThanAllowed_StopsAndSaysSo()
    {
        (TorsionStart start, double seconds) = ReferenceModels.Of("c01");
        long whole = Transient.Run(start, S(seconds), new TransientWorkspace()).Work;
        TransientResult result = Transient.Run(start, S(seconds), TransientLimits.Usual.WithWork(whole / 2), new TransientWorkspace());
        Assert.False(result.IsComplete);
        Assert.Contains(result.Findings, f => f.Code == TorsionFindings.TooMuchWork);
        Assert.InRange(result.Work, (whole / 2) + 1, whole - 1);
        Assert.True(Transient.Run(start, S(seconds), TransientLimits.Usual.WithWork(whole), new TransientWorkspace()).IsComplete);
    }

    [Fact]
    public void Findings_ChatterMarked_NameThePartAndDistrustThePeaks()
    {
        // No model is known that chatters; the mark itself is set by hand.
        (TorsionStart start, double seconds) = ReferenceModels.Of("c05");
        var workspace = new TransientWorkspace();
        TransientResult result = Transient.Run(start, S(seconds), workspace);
        Assert.DoesNotContain(result.Findings, f => f.Code == TorsionFindings.Chatter);
        workspace.Log.Chattered = true;
        Assert.False(result.IsComplete);
        Driveline.Findings.Finding finding = Assert.Single(result.Findings, f => f.Code == TorsionFindings.Chatter);
        Assert.Equal("s1", finding.Parameter("part")!.Text);
        Assert.DoesNotContain("{", Texts.English.Of(finding), StringComparison.Ordinal);
    }

    [Fact]
    public void Run_EngagementOfAHeavyRotorAgainstFriction_EndsWithoutChatter()
    {
        // Torque equal to the friction that holds: the rotor must stay where it is, not switch back and forth.
        TransientResult result = new TorsionModelBuilder().Rotor("a", 1).Rotor("b", 0.5).AddShaft("s", "a", "b", Shaft(1000, 0.5))
            .AddFrictionLoad("f", "a", Nm(100), Nm(100)).AddTorque("push", "a", Nm(100))
            .Build().AtRest().Run(1);
        Assert.True(result.IsComplete);
        Assert.Equal(0, result.Speed("a").RadiansPerSecond, 1e-9);
    }

    [Fact]
    public void Findings_RigidStopStruckAtSpeed_TellThatTheBlowHasNoBound()
    {
        TransientResult result = new TorsionModelBuilder().Rotor("a", 1).Rotor("b", 0.5).AddShaft("s", "a", "b", Shaft(1000))
            .AddObstacle("stump", "b", Obstacle.RigidStop(S(0.01))).Build().TurningAt(RadPerS(20)).Run(0.02);
        Driveline.Findings.Finding finding = Assert.Single(result.Findings);
        Assert.Equal(TorsionFindings.RigidBlow, finding.Code);
        Assert.Equal(
            "stump does not give at all, so the torque of the blow itself has no known limit. It took 100 J.", Texts.English.Of(finding));
    }

    [Fact]
    public void Run_RotorsJoinedByCouplingOneStruckDead_TheOtherRunsOnAndSlips()
    {
        // b stops at once; a keeps 30 rad/s and slips at 50 N·m: t = J·ω/T = 2·30/50, heat ½·2·30² = 900 J.
        TransientResult result = new TorsionModelBuilder().Rotor("a", 2).Rotor("b", 1)
            .AddCoupling("c", "a", "b", FrictionCoupling.Of(Nm(50)))
            .AddObstacle("jam", "b", Obstacle.Jam(S(0.1))).Build().TurningAt(RadPerS(30)).Run(3);
        Near(900, result.SlipEnergy("c").Joules, 1e-12, "½Jω²");
        Near(450, result.ImpactEnergy("jam").Joules, 1e-12, "½·1·30²");
        Near(1.3, result.Event(result.EventCount - 1).Time.Seconds, 1e-12, "0.1 s + 1.2 s");
    }

    [Fact]
    public void Run_SlidingAndSyncedWithFrictionLoad_MatchesTheHandCalculation()
    {
        // Clutch 120 N·m running, load friction 70: b gains 50/0.3, a loses 20/0.4; they meet after 20/(166.67 + 50) s.
        // Then both gain (100 − 70)/0.7 and the clutch carries 100 − 0.4·30/0.7 = 82.857 N·m.
        TransientResult result = new TorsionModelBuilder().Rotor("a", 0.4).Rotor("b", 0.3)
            .AddCoupling("c", "a", "b", FrictionCoupling.Of(Nm(150), Nm(120)))
            .AddFrictionLoad("f", "b", Nm(80), Nm(70)).AddTorque("push", "a", Nm(100))
            .Build().AtRest().WithSpeed("a", RadPerS(20)).Run(0.5);
        double meet = 20 / ((50 / 0.3) + (20 / 0.4));
        TransientEvent sync = Enumerable.Range(0, result.EventCount).Select(i => result.Event(i)).Single(e => e.Part == "c");
        Near(meet, sync.Time.Seconds, 1e-12, "t = Δω/(α_b + α_a)");
        Near((20 - (meet * 50)) + ((0.5 - meet) * 30 / 0.7), result.Speed("a").RadiansPerSecond, 1e-12, "speed at the end");
        Assert.True(Math.Abs(result.EnergyImbalance) < 1e-13);
    }
}
