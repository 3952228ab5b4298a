using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>Estimate of the torque a strike puts on the driveline, by the inertia on the driving side of what stops.</summary>
/// <remarks>
/// All at the PTO. An inertia J that carries T₀ at speed ω and is stopped dead through a stiffness k reaches T₀ + ω √(J k).
/// Without slip J is engine and line together. A PTO clutch that slips passes T_c at most, so the peak also stays below
/// T_c + ω √(J_line k), J_line lying behind the clutch: the lower of the two holds, end by end. What is not known has no bound
/// and never caps: without a capacity only the first remains. A rotor stopped at its blades spends its own energy in what it
/// strikes and adds nothing before it. When something before the rotor stops, the rotor twists what lies between,
/// ω √(J_rotor k), unless an overrun clutch lets it run on. A blow on the deck passes the driveline by;
/// one on the pan mostly does, but a pan that wedges stops the rotor: the worse case is taken.
/// Unless a dead stop is stated the low end is T₀: wood, soil and swinging blades give way. Immutable.
/// Source: energy balance, textbooks of vibration and machine elements; no damping, no backlash, and an engine torque that
/// does not rise in the few hundredths of a second the blow lasts.
/// </remarks>
internal sealed partial class StrikeEstimate
{
    private StrikeEstimate(StrikeEstimate? from, StrikePlace place, DrivingSide side)
    {
        Place = place;
        Side = side;
        IsDeadStop = from?.IsDeadStop ?? false;
        Rotor = from?.Rotor;
        RotorStiffness = from?.RotorStiffness;
        Overrun = from?.Overrun ?? OverrunClutch.NotKnown;
    }

    /// <summary>What the strike stops.</summary>
    public StrikePlace Place { get; }

    /// <summary>What drives it.</summary>
    public DrivingSide Side { get; }

    /// <summary>True when it is known that nothing gave way: the low end is then a dead stop too.</summary>
    public bool IsDeadStop { get; private set; }

    /// <summary>Inertia of the rotor, at the PTO; null when not known.</summary>
    public InertiaBand? Rotor { get; private set; }

    /// <summary>Stiffness between the stopped point and the rotor, at the PTO; null when not known.</summary>
    public StiffnessBand? RotorStiffness { get; private set; }

    /// <summary>Whether an overrun clutch lies between the stopped point and the rotor.</summary>
    public OverrunClutch Overrun { get; private set; }

    /// <summary>
    /// True when the blow goes through the driveline, false when it goes past it; null when the place is not known, and for the pan, whose
    /// blow mostly goes past.
    /// </summary>
    public bool? PassesDriveline => Place switch
    {
        StrikePlace.Blade or StrikePlace.Driveline => true,
        StrikePlace.Deck => false,
        _ => null,
    };

    /// <summary>
    /// Highest torque in the line before the stopped point. The steady torque when the blow does not pass; no bound when facts are missing.
    /// </summary>
    /// <example>No steady torque, 540 min⁻¹, no engine inertia, line 2.0 kg·m² and 5000 N·m/rad, dead stop: 5655 N·m.</example>
    public TorqueBand Peak
    {
        get
        {
            NoSteps none = default;
            return TorqueBand.OfSi(PeakBand(ref none), PeakBasis());
        }
    }

    /// <summary>
    /// Highest torque between the stopped point and the rotor, when something before the rotor stops; null when it does not arise or is not
    /// known.
    /// </summary>
    public TorqueBand? RotorSidePeak
    {
        get
        {
            if (PassesDriveline == false || Place == StrikePlace.Blade || Overrun == OverrunClutch.Fitted || Rotor is not { } rotor
                || RotorStiffness is not { } stiffness)
            {
                return null;
            }

            NoSteps none = default;
            Band j = rotor.SiBand, k = stiffness.SiBand;
            double omega = Side.SpeedRadPerS;
            var band = new Band(
                Place == StrikePlace.Driveline && Overrun == OverrunClutch.None && IsDeadStop
                    ? StrikeKernel.ImpactNm(0, omega, j.Low, k.Low, ref none) : 0,
                StrikeKernel.ImpactNm(0, omega, j.Expected, k.Expected, ref none),
                StrikeKernel.ImpactNm(0, omega, j.High, k.High, ref none));
            return TorqueBand.OfSi(band, BandBasis.Combine(rotor.Basis, stiffness.Basis));
        }
    }

    /// <summary>
    /// Energy the rotor spends: in what its blades strike, or in the line when that stops; null when its inertia is not known.
    /// </summary>
    public EnergyBand? RotorEnergy
    {
        get
        {
            NoSteps none = default;
            return Rotor is not { } rotor || PassesDriveline == false
                ? null
                : EnergyBand.OfSi(rotor.SiBand.Times(RotorKernel.Joules(1, Side.SpeedRadPerS, ref none)), rotor.Basis);
        }
    }

    /// <summary>The estimate for a place and what drives it.</summary>
    public static StrikeEstimate Of(StrikePlace place, DrivingSide side) => new(null, place, Guard.NotNull(side, nameof(side)));

    /// <summary>The same when it is known that nothing gave way.</summary>
    public StrikeEstimate WithDeadStop() => new(this, Place, Side) { IsDeadStop = true };

    /// <summary>The same with the inertia of the rotor, at the PTO.</summary>
    public StrikeEstimate WithRotor(InertiaBand atPto) => new(this, Place, Side) { Rotor = Guard.NotNull(atPto, nameof(atPto)) };

    /// <summary>The same with the inertia of the rotor and the stiffness between the stopped point and it, at the PTO.</summary>
    public StrikeEstimate WithRotor(InertiaBand atPto, StiffnessBand stiffness) => new(this, Place, Side)
    {
        Rotor = Guard.NotNull(atPto, nameof(atPto)),
        RotorStiffness = Guard.NotNull(stiffness, nameof(stiffness)),
    };

    /// <summary>The same with an overrun clutch between the stopped point and the rotor, or none.</summary>
    public StrikeEstimate WithOverrun(OverrunClutch overrun) => new(this, Place, Side) { Overrun = overrun };

    /// <summary>The lines of the calculation: low, expected and high end, each without slip and with.</summary>
    public IReadOnlyList<CalculationLine> Sheet()
    {
        var steps = StepList.New();
        PeakBand(ref steps);
        return steps.Lines;
    }
}
