using Driveline.Torsion;
using FsCheck;
using FsCheck.Fluent;
using static Driveline.Tests.Torsion.Build;

namespace Driveline.Tests.Torsion;

/// <content>Runs side by side are the runs alone.</content>
public partial class TransientLaws
{
    [Law(MaxTest = 40)]
    public Property Batch_EveryColumn_GivesWhatModelsBuiltWithTheFiguresGive() => Prop.ForAll(Chains(), Factors(), (chain, factors) =>
    {
        double trip = 0.1 * chain.TorqueScale;
        string last = Name("r", chain.Inertia.Length - 1);
        TransientBatch batch = TransientBatch.Of(Struck(chain, trip))
            .WithInertia("r0", [.. factors.Select(f => chain.Inertia[0] * f)])
            .WithStiffness("s0", [.. factors.Select(f => chain.Stiffness[0] / f)])
            .WithDamping("s0", [.. factors.Select(f => chain.Damping[0] * f)])
            .WithTripTorque("s0", [.. factors.Select(f => trip * f)])
            .WithSpeed([.. factors.Select(f => 30 * f)]);
        batch.Run(S(chain.Seconds), TransientLimits.Usual, new TransientWorkspace());
        bool same = batch.Count == factors.Length;
        for (int run = 0; run < factors.Length; run++)
        {
            double f = factors[run];
            Drawn own = chain with
            {
                Inertia = [chain.Inertia[0] * f, .. chain.Inertia.Skip(1)],
                Stiffness = [chain.Stiffness[0] / f, .. chain.Stiffness.Skip(1)],
                Damping = [chain.Damping[0] * f, .. chain.Damping.Skip(1)],
            };
            TransientResult alone = Struck(own, trip * f).Model.TurningAt(RadPerS(30 * f)).Run(chain.Seconds);
            same &= batch.AreComplete[run] == alone.IsComplete;
            foreach (string element in alone.Model.Elements)
            {
                double peak = Math.Max(alone.PeakNm(element), alone.ReversePeak(element).Own!.Value.NewtonMeters);
                same &= Close(alone.PeakNm(element), batch.Peaks(element)[run], 1e-12 * peak)
                    && Close(alone.ReversePeak(element).Own!.Value.NewtonMeters, batch.ReversePeaks(element)[run], 1e-12 * peak)
                    && Close(alone.TripTime(element)?.Seconds ?? -1, OrNone(batch.TripTimes(element)[run]), 1e-12);
            }
        }

        return same;
    });

    private static double OrNone(double seconds) => double.IsNaN(seconds) ? -1 : seconds;

    private static Arbitrary<double[]> Factors() => LogUniform(0.3, 3).ArrayOf(5).ToArbitrary();

    private static TorsionStart Struck(Drawn chain, double trip) => chain.Model(
        1,
        b => b.AddObstacle("jam", chain.Last, Obstacle.SpringDamper(S(0.1 * chain.Seconds), NmPerRad(20000), 0))
            .AddFrictionLoad("bearing", chain.Last, Nm(12), Nm(9)).AddFrictionLoad("seal", chain.Last, Nm(5), Nm(5))
            .AddDrive("engine", "r0", TorqueSpeedLine.Of(Nm(50), RadPerS(40), 1.5)),
        BreakingCoupling.At(Nm(trip)));
}
