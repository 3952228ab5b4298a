using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <content>The arithmetic of the peak, and what to notice.</content>
internal sealed partial class StrikeEstimate
{
    private static readonly Band AnyTorque = new(0, double.PositiveInfinity, double.PositiveInfinity);

    private static readonly Basis Undamped = Basis.CommonPractice("undamped inertia on a spring, stopped dead");

    private static readonly Basis NotStated = Basis.FromMemory("a fact of the driving side that is not known");

    /// <summary>What a caller must notice.</summary>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            var findings = new List<Finding>();
            if (PassesDriveline == false)
            {
                findings.Add(Finding.Of(LoadsFindings.StrikeDoesNotPass, Severity.Note));
                return findings;
            }

            if (Place is not (StrikePlace.Blade or StrikePlace.Driveline))
            {
                findings.Add(Finding.Of(
                    Place == StrikePlace.Pan ? LoadsFindings.StrikePanMayWedge : LoadsFindings.StrikePlaceNotKnown, Severity.Warning));
            }

            AddDrive(findings);
            AddRotor(findings);
            if (!IsDeadStop)
            {
                findings.Add(Finding.Of(LoadsFindings.StrikeAssumesDeadStop, Severity.Note));
            }

            return findings;
        }
    }

    private void AddDrive(List<Finding> findings)
    {
        if (Side.ClutchCapacity is not { } capacity)
        {
            findings.Add(Finding.Of(LoadsFindings.StrikeCapacityNotKnown, Severity.Warning));
        }
        else if (Side.Steady.SiBand.Expected > capacity.SiBand.Expected)
        {
            findings.Add(Finding.Of(LoadsFindings.StrikeSteadyAboveCapacity, Severity.Warning)
                .With("steady", QuantityKind.Torque, Side.Steady.SiBand.Expected)
                .With("capacity", QuantityKind.Torque, capacity.SiBand.Expected));
        }

        if (Side.LineInertia is null)
        {
            findings.Add(Finding.Of(LoadsFindings.StrikeLineInertiaNotKnown, Severity.Warning));
        }

        if (Side.Stiffness is null)
        {
            findings.Add(Finding.Of(LoadsFindings.StrikeStiffnessNotKnown, Severity.Warning));
        }
    }

    private void AddRotor(List<Finding> findings)
    {
        if (Place == StrikePlace.Blade)
        {
            Finding finding = Finding.Of(LoadsFindings.StrikeRotorSpendsItself, Severity.Note);
            findings.Add(RotorEnergy is { } energy
                ? finding.With("energy", QuantityKind.Energy, energy.SiBand.Expected)
                : finding.With("energy", "how much is not known"));
            return;
        }

        if (Overrun == OverrunClutch.Fitted)
        {
            return;
        }

        if (Overrun == OverrunClutch.NotKnown)
        {
            findings.Add(Finding.Of(LoadsFindings.StrikeOverrunNotKnown, Severity.Note));
        }

        // Without inertia or stiffness of the rotor's side nothing bounds what it puts there.
        findings.Add(Finding.Of(LoadsFindings.StrikeRotorLoadsLine, Severity.Danger)
            .With("peak", QuantityKind.Torque, RotorSidePeak?.SiBand.High ?? double.PositiveInfinity));
    }

    private Band PeakBand<S>(ref S log)
        where S : struct, ISteps
    {
        Band steady = Side.Steady.SiBand;
        if (PassesDriveline == false)
        {
            return steady;
        }

        Band k = Side.Stiffness?.SiBand ?? AnyTorque;
        Band line = Side.LineInertia?.SiBand ?? AnyTorque;
        Band all = line + (Side.EngineInertia?.SiBand ?? AnyTorque);
        Band capacity = Side.ClutchCapacity?.SiBand ?? AnyTorque;
        double low = steady.Low;
        if (IsDeadStop && PassesDriveline == true)
        {
            log.Begin(SheetEnd.Lowest);
            low = LowNm(steady.Low, capacity.Low, line.Low, all.Low, k.Low, ref log);
        }

        log.Begin(SheetEnd.MostLikely);
        double expected = PeakNm(steady.Expected, capacity.Expected, line.Expected, all.Expected, k.Expected, ref log);
        log.Begin(SheetEnd.Highest);
        double high = PeakNm(steady.High, capacity.High, line.High, all.High, k.High, ref log);
        return new Band(low, expected, high);
    }

    // An unknown capacity has no low end that could lower this one: without slip only the first of the two stands.
    private double LowNm<S>(double steadyNm, double capacityNm, double lineKgM2, double allKgM2, double nmPerRad, ref S log)
        where S : struct, ISteps
    {
        if (Side.ClutchCapacity is not null)
        {
            return PeakNm(steadyNm, capacityNm, lineKgM2, allKgM2, nmPerRad, ref log);
        }

        Begin(steadyNm, allKgM2, nmPerRad, ref log);
        double nm = StrikeKernel.ImpactNm(steadyNm, Side.SpeedRadPerS, allKgM2, nmPerRad, ref log);
        log.Add(LoadsSteps.StrikePeak, nm);
        return nm;
    }

    private double PeakNm<S>(double steadyNm, double capacityNm, double lineKgM2, double allKgM2, double nmPerRad, ref S log)
        where S : struct, ISteps
    {
        Begin(steadyNm, allKgM2, nmPerRad, ref log);
        double withoutSlip = StrikeKernel.ImpactNm(steadyNm, Side.SpeedRadPerS, allKgM2, nmPerRad, ref log);
        log.Add(LoadsSteps.Capacity, capacityNm);
        log.Add(LoadsSteps.LineInertia, lineKgM2);
        double withSlip = StrikeKernel.SlippingNm(capacityNm, Side.SpeedRadPerS, lineKgM2, nmPerRad, ref log);

        // A steady torque above the clutch's capacity is a contradiction in what is stated: the peak is never below it.
        double nm = Math.Max(steadyNm, Math.Min(withoutSlip, withSlip));
        log.Add(LoadsSteps.StrikePeak, nm);
        return nm;
    }

    private void Begin<S>(double steadyNm, double kgM2, double nmPerRad, ref S log)
        where S : struct, ISteps
    {
        log.Add(LoadsSteps.Steady, steadyNm);
        log.Add(LoadsSteps.Speed, Side.SpeedRadPerS);
        log.Add(LoadsSteps.Inertia, kgM2);
        log.Add(LoadsSteps.Stiffness, nmPerRad);
    }

    private BandBasis PeakBasis()
    {
        if (PassesDriveline == false)
        {
            return Side.Steady.Basis;
        }

        BandBasis basis = Side.Steady.Basis.With(Undamped);
        foreach (QuantityBand? fact in new QuantityBand?[] { Side.ClutchCapacity, Side.LineInertia, Side.Stiffness })
        {
            basis = fact is null ? basis.With(NotStated) : BandBasis.Combine(basis, fact.Basis);
        }

        return Side.EngineInertia is { } engine ? BandBasis.Combine(basis, engine.Basis) : basis;
    }
}
