using Driveline.Torsion;
using FsCheck;
using FsCheck.Fluent;
using static Driveline.Tests.Torsion.Build;

namespace Driveline.Tests.Torsion;

/// <summary>Laws that hold for any chain. Chains are drawn log-uniform: 2 to 5 rotors, each figure over two decades.</summary>
public partial class TransientLaws
{
    [Law(MaxTest = 40)]
    public Property Energy_UndampedChain_IsConserved() => Prop.ForAll(Chains(), chain =>
    {
        TransientResult result = chain.Model(0).Run(chain.Seconds);
        return Math.Abs(result.EnergyImbalance) < 1e-9;
    });

    [Law(MaxTest = 40)]
    public Property Energy_WithDampingBreakAndJam_IsAccountedFor() => Prop.ForAll(Chains(), chain =>
    {
        TransientResult result = chain.Model(1, b => b
            .AddObstacle("jam", chain.Last, Obstacle.Jam(S(0.2 * chain.Seconds)))
            .AddFrictionLoad("bearing", chain.Last, Nm(12), Nm(9))
            .AddDrive("engine", "r0", TorqueSpeedLine.Of(Nm(50), RadPerS(40), 1.5))).Run(chain.Seconds);
        return result.IsComplete && Math.Abs(result.EnergyImbalance) < 1e-7;
    });

    [Law(MaxTest = 30)]
    public Property Reversed_FreeChain_SamePeaksAndFrequencies() => Prop.ForAll(Chains(), chain =>
    {
        Drawn mirrored = chain.Reversed();
        TransientResult a = chain.Model(1).Run(chain.Seconds);
        TransientResult b = mirrored.Model(1).Run(chain.Seconds);
        Modes forward = Modes.Of(chain.Model(0).Model);
        Modes backward = Modes.Of(mirrored.Model(0).Model);
        bool same = Enumerable.Range(0, forward.Count)
            .All(i => Close(forward[i].RadPerS, backward[i].RadPerS, 1e-10 * forward[^1].RadPerS));
        for (int i = 0; i < chain.Stiffness.Length; i++)
        {
            // A torque that drives forward in one chain drives backward in its mirror image.
            same &= Close(a.PeakNm(Name("s", i)), b.ReversePeak(Name("s", chain.Stiffness.Length - 1 - i)).Own!.Value.NewtonMeters,
                1e-10 * chain.TorqueScale);
        }

        return same;
    });

    [Law(MaxTest = 30)]
    public Property Scaled_InertiaStiffnessAndDampingAlike_TorqueScalesTimeStays() => Prop.ForAll(Chains(), chain =>
    {
        TransientResult a = chain.Model(1).Run(chain.Seconds);
        TransientResult b = chain.Times(inertia: 3.7, stiffness: 3.7, damping: 3.7).Model(1).Run(chain.Seconds);
        return All(chain, s => Close(3.7 * a.PeakNm(s), b.PeakNm(s), 1e-10 * chain.TorqueScale)
            && Close(a.PeakS(s), b.PeakS(s), 1e-6 * chain.Seconds));
    });

    [Law(MaxTest = 30)]
    public Property Scaled_Time_TorquesAreThoseOfTheSlowChainOverTheFactor() => Prop.ForAll(Chains(), chain =>
    {
        // Time twice as long at equal inertia: k/4, c/2, same speeds: torques halve.
        TransientResult a = chain.Model(1).Run(chain.Seconds);
        TransientResult b = chain.Times(inertia: 1, stiffness: 0.25, damping: 0.5).Model(1).Run(2 * chain.Seconds);
        return All(chain, s => Close(0.5 * a.PeakNm(s), b.PeakNm(s), 1e-10 * chain.TorqueScale));
    });

    [Law(MaxTest = 6)]
    public Property Split_ShaftInSeries_ChangesNothing() => Prop.ForAll(Chains(0.02), chain =>
    {
        // 1/(5k) + 1/(1.25k) = 1/k. The node between needs an inertia: a millionth of the least, which bounds the agreement.
        TransientResult a = chain.Model(0).Run(chain.Seconds);
        TransientResult b = chain.Split(chain.Inertia.Min() * 1e-6).Model(0).Run(chain.Seconds);
        return Close(a.Speed("r0").RadiansPerSecond, b.Speed("r0").RadiansPerSecond, 1e-3 * chain.Speed.Max());
    });

    [Law(MaxTest = 30)]
    public Property Split_RotorIntoTwoHeldTogether_ChangesNothing() => Prop.ForAll(Chains(), chain =>
    {
        TransientResult a = chain.Model(1).Run(chain.Seconds);
        Drawn lighter = chain with { Inertia = [0.3 * chain.Inertia[0], .. chain.Inertia.Skip(1)] };
        TransientResult b = lighter.Model(
            1, x => x.Rotor("half", 0.7 * chain.Inertia[0]).AddCoupling("bolts", "half", "r0", BreakingCoupling.At(Nm(1e9))))
            .WithSpeed("half", RadPerS(chain.Speed[0])).Run(chain.Seconds);
        return All(chain, s => Close(a.PeakNm(s), b.PeakNm(s), 1e-11 * chain.TorqueScale));
    });

    [Law(MaxTest = 40)]
    public Property BreakingCoupling_Torque_NeverExceedsItsCapacity() => Prop.ForAll(Chains(), chain =>
    {
        TransientResult result = chain.Model(1, b => b.AddObstacle("jam", chain.Last, Obstacle.Jam(S(0))), BreakingCoupling.At(Nm(80)))
            .Run(chain.Seconds);
        return result.PeakNm("s0") <= 80 * (1 + 1e-13) && result.ReversePeak("s0").Own!.Value.NewtonMeters <= 80 * (1 + 1e-13);
    });

    [Law(MaxTest = 30)]
    public Property Jam_InertiaOfTheJammedRotor_DoesNotChangeUpstreamPeaks() => Prop.ForAll(Chains(), chain =>
    {
        TransientResult a = chain.Model(1, b => b.AddObstacle("jam", chain.Last, Obstacle.Jam(S(0)))).Run(chain.Seconds);
        TransientResult b = chain.WithLastInertia(17).Model(1, x => x.AddObstacle("jam", chain.Last, Obstacle.Jam(S(0))))
            .Run(chain.Seconds);
        return All(chain, s => a.PeakNm(s).Equals(b.PeakNm(s)));
    });

    [Law(MaxTest = 40)]
    public Property MoreDamping_NeverRaisesTheFirstPeakOfTheSpring() => Prop.ForAll(
        LogUniform(0.05, 5).ToArbitrary(),
        LogUniform(50, 50000).ToArbitrary(),
        LogUniform(1e-3, 0.3).ToArbitrary(),
        (j, k, zeta) => SpringAtRest(j, k, zeta) >= SpringAtRest(j, k, 1.3 * zeta));

    [Law(MaxTest = 40)]
    public Property DoubledInertias_DivideFrequenciesByRootTwo() => Prop.ForAll(Chains(), chain =>
    {
        Modes a = Modes.Of(chain.Model(0).Model);
        Modes b = Modes.Of(chain.Times(2, 1, 1).Model(0).Model);
        return a.Count == chain.Inertia.Length
            && Enumerable.Range(1, a.Count - 1)
                .All(i => a[i].RadPerS > a[i - 1].RadPerS && Close(a[i].RadPerS / Math.Sqrt(2), b[i].RadPerS, 1e-12 * a[i].RadPerS));
    });

    // Speed is nil where the spring's torque peaks, at acos ζ/ω_d after the stop.
    private static double SpringAtRest(double j, double k, double zeta)
    {
        double damped = Math.Sqrt(k / j) * Math.Sqrt(1 - (zeta * zeta));
        return new TorsionModelBuilder().Rotor("rotor", j).Held("wall", 0)
            .AddShaft("s", "rotor", "wall", Shaft(k, 2 * zeta * Math.Sqrt(k * j)))
            .Build().AtRest().WithSpeed("rotor", RadPerS(50)).Run(Math.Acos(zeta) / damped).SpringTorque("s").NewtonMeters;
    }

    private static bool All(Drawn chain, Func<string, bool> holds) =>
        Enumerable.Range(0, chain.Stiffness.Length).All(i => holds(Name("s", i)));

    private static bool Close(double a, double b, double tolerance) => Math.Abs(a - b) <= tolerance;

    private static string Name(string kind, int i) => FormattableString.Invariant($"{kind}{i}");

    private static Gen<double> LogUniform(double low, double high) =>
        Gen.Choose(0, 1_000_000).Select(n => low * Math.Pow(high / low, n / 1e6));

    private static Arbitrary<Drawn> Chains(double seconds = 0.15) =>
        (from n in Gen.Choose(2, 5)
         from inertia in LogUniform(0.05, 5).ArrayOf(n)
         from stiffness in LogUniform(500, 50000).ArrayOf(n - 1)
         from damping in LogUniform(0.01, 1).ArrayOf(n - 1)
         from speeds in LogUniform(5, 60).ArrayOf(n)
         select new Drawn(inertia, stiffness, damping, speeds) { Seconds = seconds }).ToArbitrary();

    private sealed record Drawn(double[] Inertia, double[] Stiffness, double[] Damping, double[] Speed)
    {
        public string Last => Name("r", Inertia.Length - 1);

        public double Seconds { get; init; } = 0.15;

        public double TorqueScale => Speed.Max() * Math.Sqrt(Stiffness.Max() * Inertia.Max());

        public TorsionStart Model(double damping) => Model(damping, b => b, null);

        public TorsionStart Model(double damping, Func<TorsionModelBuilder, TorsionModelBuilder> more, Coupling? first = null)
        {
            var builder = new TorsionModelBuilder();
            for (int i = 0; i < Inertia.Length; i++)
            {
                builder.Rotor(Name("r", i), Inertia[i]);
            }

            for (int i = 0; i < Stiffness.Length; i++)
            {
                Shaft shaft = Shaft(Stiffness[i], damping * Damping[i]);
                if (i == 0 && first is not null)
                {
                    builder.AddShaft(Name("s", i), Name("r", i), Name("r", i + 1), shaft, first);
                }
                else
                {
                    builder.AddShaft(Name("s", i), Name("r", i), Name("r", i + 1), shaft);
                }
            }

            TorsionStart start = more(builder).Build().AtRest();
            for (int i = 0; i < Speed.Length; i++)
            {
                start = start.WithSpeed(Name("r", i), RadPerS(Speed[i]));
            }

            return start;
        }

        public Drawn Reversed() => new([.. Inertia.Reverse()], [.. Stiffness.Reverse()], [.. Damping.Reverse()], [.. Speed.Reverse()]);

        public Drawn Times(double inertia, double stiffness, double damping) =>
            new([.. Inertia.Select(x => x * inertia)], [.. Stiffness.Select(x => x * stiffness)], [.. Damping.Select(x => x * damping)],
                Speed);

        public Drawn WithLastInertia(double inertia) => this with { Inertia = [.. Inertia.SkipLast(1), inertia] };

        public Drawn Split(double nodeInertia)
        {
            double k = Stiffness[0];
            double split = (Speed[0] * 0.8) + (Speed[1] * 0.2);
            return new(
                [Inertia[0], nodeInertia, .. Inertia.Skip(1)],
                [5 * k, 1.25 * k, .. Stiffness.Skip(1)],
                [0, 0, .. Damping.Skip(1)],
                [Speed[0], split, .. Speed.Skip(1)]);
        }
    }
}
