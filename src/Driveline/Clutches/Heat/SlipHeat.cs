using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;
using MathNet.Numerics.RootFinding;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>How hot a slip makes the faces, and how long until the facing suffers.</summary>
/// <remarks>
/// Flux into the plate q = share · P / (N · A). Blocked: constant; start-up: falling in a straight line to zero.
/// Face rise first as a semi-infinite body, ΔT = 2 · q · √(t / (π·k·ρ·c)), then as a plate that warms through, q · t / (ρ·c·L).
/// The share stays constant and no heat leaves by air during the slip, which overstates long slips: safe side for the times.
/// Temperatures are means over the face: hot spots are hotter.
/// </remarks>
public sealed class SlipHeat
{
    // Printed: too hot to touch after 2 to 3 s; 10 s the longest continuous slip an instruction manual allows.
    private const double HotToTouchS = 2;
    private const double LongestSlipS = 10;
    private const double SmokeC = 230;

    private readonly SlipEvent slip;
    private readonly HeatPath path;
    private readonly Facing facing;
    private readonly double startK;

    private SlipHeat(SlipEvent slip, HeatPath path, Facing facing, double startK)
    {
        this.slip = slip;
        this.path = path;
        this.facing = facing;
        this.startK = startK;
        Findings = Array.AsReadOnly(Judge());
    }

    /// <summary>
    /// Temperature at which an organic facing begins to smoke; common practice, never printed: 230 °C, binders from about 200 to 300 °C.
    /// </summary>
    public static Sourced FirstSmoke { get; } =
        new(SmokeC, "°C", Basis.CommonPractice("organic binders begin to smoke at about 200 to 300 °C"));

    /// <summary>The weakest basis of what the heat goes into.</summary>
    public Basis Basis => path.Basis;

    /// <summary>Heat per time and area into one face pair at the start.</summary>
    public HeatFlux FaceFlux => HeatFlux.FromWattsPerSquareMeter(slip.PowerW / (path.Faces * path.AreaM2));

    /// <summary>Highest face temperature during the slip; null when the slip never ends.</summary>
    public Temperature? PeakFaceTemperature => slip.Ends ? Temperature.FromKelvins(startK + PeakRiseK()) : null;

    /// <summary>Face temperature at the end of the slip; null when it never ends.</summary>
    public Temperature? EndFaceTemperature => slip.Ends ? Temperature.FromKelvins(startK + RiseK(slip.TimeS)) : null;

    /// <summary>Mean rise of the plates when all their share has spread: share · E / (m · c); null when the slip never ends.</summary>
    public TemperatureDelta? LumpedRise => slip.Ends ? TemperatureDelta.FromKelvins(LumpedRiseK()) : null;

    /// <summary>Time until the face reaches the facing's continuous temperature; null when not reached or the limit is not known.</summary>
    public Duration? TimeToContinuous => TimeTo(facing.Limits.ContinuousK);

    /// <summary>Time until the face reaches the facing's maximum temperature; null when not reached or the limit is not known.</summary>
    public Duration? TimeToMaximum => TimeTo(facing.Limits.MaximumK);

    /// <summary>
    /// Time until an organic facing smokes, see <see cref="FirstSmoke"/>; null when not reached. Says nothing of sintered metal.
    /// </summary>
    public Duration? TimeToFirstSmoke => TimeTo(SmokeC + 273.15);

    /// <summary>What a caller must notice.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The heating of a clutch in one slip.</summary>
    /// <param name="slip">The slip. Use the high end of the running torque for the shortest times.</param>
    /// <param name="path">Where the heat goes.</param>
    /// <param name="facing">The facing, for its limits.</param>
    /// <param name="start">Temperature of the clutch before; -60 to 500 °C.</param>
    /// <exception cref="ArgumentOutOfRangeException">The temperature is out of its range.</exception>
    internal static SlipHeat Of(SlipEvent slip, HeatPath path, Facing facing, Temperature start) => new(
        Guard.NotNull(slip, nameof(slip)),
        Guard.NotNull(path, nameof(path)),
        Guard.NotNull(facing, nameof(facing)),
        Guard.Within(Si.Kelvins(start), 213.15, 773.15, "Temperature before the slip", "K", nameof(start)));

    /// <summary>Face temperature after a time of slip.</summary>
    /// <param name="time">From 0 to the end of the slip.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside the slip.</exception>
    public Temperature FaceTemperature(Duration time) => Temperature.FromKelvins(
        startK + RiseK(Guard.Within(Si.Seconds(time), 0, Math.Min(slip.TimeS, 1e7), "Time of slip", "s", nameof(time))));

    /// <summary>The calculation, line by line.</summary>
    public IReadOnlyList<CalculationLine> Sheet()
    {
        StepList log = StepList.New();
        foreach (CalculationLine line in slip.Sheet())
        {
            log.Add(line.Formula, line.Value);
        }

        log.Add(ClutchSteps.HeatShare, path.PlateShare);
        log.Add(ClutchInputs.Faces, path.Faces);
        log.Add(ClutchInputs.FaceArea, path.AreaM2);
        log.Add(ClutchSteps.Flux, PlateFlux);
        RecordTime(ClutchSteps.TimeToContinuous, TimeToContinuous, ref log);
        RecordTime(ClutchSteps.TimeToMaximum, TimeToMaximum, ref log);
        if (slip.Ends)
        {
            log.Add(ClutchSteps.FaceRise, PeakRiseK());
            log.Add(ClutchInputs.PlateHeat, path.CapacityJPerK);
            log.Add(ClutchSteps.LumpedRise, LumpedRiseK());
        }

        return log.Lines;
    }

    /// <summary>The highest temperature of the faces, °C.</summary>
    public override string ToString() => PeakFaceTemperature is { } peak
        ? FormattableString.Invariant($"{peak.DegreesCelsius:0} °C")
        : "not known";

    private static void RecordTime(CalculationStep step, Duration? time, ref StepList log)
    {
        if (time is { } known)
        {
            log.Add(step, known.Seconds);
        }
    }

    private double PlateFlux => path.PlateShare * slip.PowerW / (path.Faces * path.AreaM2);

    private double LumpedRiseK() => path.PlateShare * slip.EnergyJ / path.CapacityJPerK;

    private double RiseK(double timeS)
    {
        if (timeS <= 0)
        {
            return 0;
        }

        double rise = PlateHeating.RisePerFlux(timeS, path.Plate, path.ThicknessM);
        if (slip.IsFalling)
        {
            rise -= PlateHeating.RisePerFluxIntegral(timeS, path.Plate, path.ThicknessM) / slip.TimeS;
        }

        return PlateFlux * rise;
    }

    private double PeakRiseK() => RiseK(PeakTimeS());

    // Falling flux: the face is hottest where ts · u'(t) = u(t).
    private double PeakTimeS()
    {
        if (!slip.IsFalling || slip.TimeS <= 0)
        {
            return slip.TimeS;
        }

        double ts = slip.TimeS;
        return Brent.FindRoot(
            t => (ts * PlateHeating.RisePerFluxRate(t, path.Plate, path.ThicknessM)) - PlateHeating.RisePerFlux(
                t, path.Plate, path.ThicknessM),
            ts * 1e-6,
            ts,
            ts * 1e-12,
            200);
    }

    private Duration? TimeTo(double limitK)
    {
        double wanted = limitK - startK;
        if (double.IsNaN(wanted))
        {
            return null;
        }

        if (wanted <= 0)
        {
            return Duration.Zero;
        }

        double last = slip.IsFalling || slip.Ends ? PeakTimeS() : UpperTimeS(wanted);
        return PlateFlux <= 0 || RiseK(last) < wanted
            ? null
            : Duration.FromSeconds(Brent.FindRoot(t => RiseK(t) - wanted, 0, last, last * 1e-14, 300));
    }

    // The plate warming through is a lower bound of the rise, so its time is an upper bound.
    private double UpperTimeS(double riseK) => PlateFlux <= 0 ? 0
        : riseK * path.ThicknessM * path.Plate.KgPerM3 * path.Plate.JPerKgK / PlateFlux;

    private Finding[] Judge()
    {
        var findings = new List<Finding>();
        if (!slip.Ends)
        {
            findings.Add(Finding.Of(ClutchFindings.SlipNeverEnds, Severity.Danger).With("power", QuantityKind.Power, slip.PowerW));
        }

        Temperatures(findings);
        double rating = facing.Limits.HighPowerWPerM2;
        double flux = slip.PowerW / (path.Faces * path.AreaM2);
        if (flux > rating)
        {
            findings.Add(Finding.Of(ClutchFindings.SlipPowerHigh, Severity.Warning).With("times", QuantityKind.Number, flux / rating));
        }

        if (slip.Ends && slip.TimeS > LongestSlipS)
        {
            findings.Add(Finding.Of(ClutchFindings.SlipTooLong, Severity.Warning)
                .With("time", QuantityKind.Time, slip.TimeS)
                .With("limit", QuantityKind.Time, LongestSlipS));
        }
        else if (slip.Ends && slip.TimeS >= HotToTouchS)
        {
            findings.Add(Finding.Of(ClutchFindings.HotToTouch, Severity.Warning).With("time", QuantityKind.Time, slip.TimeS));
        }

        return findings.ToArray();
    }

    private void Temperatures(List<Finding> findings)
    {
        if (double.IsNaN(facing.Limits.ContinuousK) && double.IsNaN(facing.Limits.MaximumK))
        {
            findings.Add(Finding.NotKnown(ClutchFindings.TemperatureLimitNotKnown).Barring(Bars.Quiet).With("facing", facing.Name));
        }
        else if (TimeToMaximum is { } maximum)
        {
            findings.Add(Finding.Of(ClutchFindings.AboveMaximumTemperature, Severity.Danger)
                .With("time", QuantityKind.Time, maximum.Seconds)
                .With("limit", QuantityKind.Temperature, facing.Limits.MaximumK));
        }
        else if (TimeToContinuous is { } continuous)
        {
            findings.Add(Finding.Of(ClutchFindings.AboveContinuousTemperature, Severity.Warning)
                .With("time", QuantityKind.Time, continuous.Seconds)
                .With("limit", QuantityKind.Temperature, facing.Limits.ContinuousK));
        }
    }
}
