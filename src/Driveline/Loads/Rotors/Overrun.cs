using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>What the rotor's stored energy does when the tractor slows or stops the PTO.</summary>
/// <remarks>
/// E = ½ J ω². With an overrun clutch the rotor turns on alone and its energy goes into air and crop. Without one it goes back
/// through the driveline: a PTO that turns with the travel clutch then pushes the whole tractor on, a PTO with its own clutch
/// brakes the rotor through the line until it is disengaged. The low end is 0: air and crop may eat it all. Immutable.
/// Source: a rotary cutter manual asks for an independent PTO or an overrun clutch; energy by mechanics.
/// </remarks>
internal sealed class Overrun
{
    private readonly InertiaBand rotor;
    private readonly double omega;

    private Overrun(InertiaBand rotor, double omega, OverrunClutch clutch, PtoClutchKind pto)
    {
        this.rotor = rotor;
        this.omega = omega;
        Clutch = clutch;
        PtoClutch = pto;
    }

    /// <summary>Whether an overrun clutch is fitted.</summary>
    public OverrunClutch Clutch { get; }

    /// <summary>The tractor's PTO clutch.</summary>
    public PtoClutchKind PtoClutch { get; }

    /// <summary>Energy stored in the rotor.</summary>
    /// <example>1.5 kg·m² at 540 min⁻¹: 2398 J.</example>
    public EnergyBand Stored
    {
        get
        {
            NoSteps none = default;
            return EnergyBand.OfSi(
                rotor.SiBand.Times(RotorKernel.Joules(1, omega, ref none)), rotor.Basis.With(Basis.Given("speed as stated")));
        }
    }

    /// <summary>Energy that goes back into the driveline; 0 with an overrun clutch.</summary>
    public EnergyBand IntoLine => Back(Clutch != OverrunClutch.Fitted);

    /// <summary>Energy that pushes the tractor on; 0 with an overrun clutch, or when the PTO has a clutch of its own.</summary>
    public EnergyBand IntoTractor =>
        Back(Clutch != OverrunClutch.Fitted && PtoClutch is (PtoClutchKind.None or PtoClutchKind.NotKnown));

    /// <summary>What a caller must notice.</summary>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            var findings = new List<Finding>();
            double joules = Stored.SiBand.High;
            if (Clutch == OverrunClutch.NotKnown)
            {
                findings.Add(Finding.Of(LoadsFindings.OverrunNotKnown, Severity.Warning));
            }

            if (IntoTractor.SiBand.High > 0)
            {
                findings.Add(Finding.Of(LoadsFindings.OverrunPushesTractor, Severity.Danger).With("energy", QuantityKind.Energy, joules));
            }

            if (Clutch != OverrunClutch.None)
            {
                findings.Add(Finding.Of(LoadsFindings.OverrunRotorTurnsOn, Severity.Danger).With("energy", QuantityKind.Energy, joules));
                findings.Add(Finding.Of(LoadsFindings.OverrunHalvesFrequency, Severity.Note));
            }

            return findings;
        }
    }

    /// <summary>The rotor at a PTO speed, with or without an overrun clutch, behind a PTO clutch.</summary>
    /// <param name="rotorAtPto">Inertia of the rotor as the PTO feels it.</param>
    /// <param name="ptoSpeed">PTO speed before slowing; 0 or more.</param>
    /// <param name="clutch">Whether an overrun clutch is fitted.</param>
    /// <param name="pto">The tractor's PTO clutch.</param>
    /// <exception cref="ArgumentOutOfRangeException">The speed is negative or not finite.</exception>
    public static Overrun Of(InertiaBand rotorAtPto, RotationalSpeed ptoSpeed, OverrunClutch clutch, PtoClutchKind pto) => new(
        Guard.NotNull(rotorAtPto, nameof(rotorAtPto)),
            Guard.NotNegative(Si.RadiansPerSecond(ptoSpeed), "PTO speed", "rad/s", nameof(ptoSpeed)), clutch, pto);

    /// <summary>Time the rotor turns on against a steady drag at the PTO, t = J ω / T; no bound when the drag may be nothing.</summary>
    /// <param name="drag">Drag of air, crop and bearings, at the PTO.</param>
    /// <example>1.5 kg·m² at 540 min⁻¹ against 10 N·m: 8.48 s.</example>
    public TimeBand CoastTime(TorqueBand drag)
    {
        Guard.NotNull(drag, nameof(drag));
        Band j = rotor.SiBand, t = drag.SiBand;
        NoSteps none = default;
        double low = t.IsBounded ? Seconds(j.Low, omega, t.High, ref none) : 0;
        double expected = Seconds(j.Expected, omega, t.HasExpected ? t.Expected : t.Low, ref none);
        double high = Seconds(j.High, omega, t.Low, ref none);
        return TimeBand.OfSi(new Band(Guard.IsFinite(low) ? low : 0, expected, high), BandBasis.Combine(rotor.Basis, drag.Basis));
    }

    /// <summary>Farthest the stored energy rolls the tractor on against a steady braking force, s = E / F.</summary>
    /// <param name="braking">Rolling and braking resistance; above 0.</param>
    /// <exception cref="ArgumentOutOfRangeException">The force is zero, negative or not finite.</exception>
    public LengthBand PushDistance(Force braking)
    {
        double newtons = Guard.Positive(Si.Newtons(braking), "Braking force", "N", nameof(braking));
        EnergyBand energy = IntoTractor;
        return LengthBand.OfSi(energy.SiBand.Times(1 / newtons), energy.Basis.With(Basis.Given("braking force as stated")));
    }

    internal static double Seconds<S>(double kgM2, double radPerS, double dragNm, ref S log)
        where S : struct, ISteps
    {
        double t = kgM2 == 0 || radPerS == 0 ? 0 : dragNm == 0 ? double.PositiveInfinity : kgM2 * radPerS / dragNm;
        log.Add(LoadsSteps.CoastTime, t);
        return t;
    }

    private EnergyBand Back(bool flows)
    {
        Band stored = Stored.SiBand;
        return EnergyBand.OfSi(flows ? new Band(0, stored.Expected, stored.High) : Band.Exactly(0), Stored.Basis);
    }
}
