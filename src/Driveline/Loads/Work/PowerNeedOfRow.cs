using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>The power that one row of <see cref="ImplementPower"/> gives: from its parameters, or as printed.</summary>
internal static class PowerNeedOfRow
{
    // A printed machine scaled by more than this share of its width is another machine.
    private const double SameWidth = 0.02;

    public static PowerBand ByParameters(PowerRow row, double widthM, double feedKgPerS)
    {
        NoSteps none = default;
        var basis = new BandBasis(row.Basis, row.Basis, row.Basis, BandEnd.Interval95, BandEnd.Interval95);
        return PowerBand.OfSi(Parameters(row, widthM, feedKgPerS, ref none), basis.With(Basis.Given("width and feed rate as stated")));
    }

    public static PowerBand ByPrint(PowerRow row, double widthM, List<Finding> findings)
    {
        PowerBand printed = row.Printed!;
        if (widthM == 0)
        {
            return printed;
        }

        double scale = widthM / row.WidthM;
        if (!row.IsPerWidth && Math.Abs(scale - 1) > SameWidth)
        {
            findings.Add(Finding.Of(LoadsFindings.PowerScaledByWidth, Severity.Note)
                .With("machine", row.ToString())
                .With("width", QuantityKind.Length, widthM)
                .With("printedWidth", QuantityKind.Length, row.WidthM));
        }

        return PowerBand.OfSi(printed.SiBand.Times(scale), printed.Basis.With(Basis.Given("width as stated")));
    }

    // 1 kW·h/t is 3600 J/kg.
    public static Band Parameters<S>(PowerRow row, double widthM, double feedKgPerS, ref S log)
        where S : struct, ISteps => Watts(
            row.ConstantKilowatts * 1e3, row.KilowattsPerMeter * 1e3, widthM, row.KilowattHoursPerTonne * 3600, feedKgPerS,
                row.RangePercent / 100, ref log);

    /// <summary>P = a + b · w + c · F, then its range ± r.</summary>
    private static Band Watts<S>(double aW, double bWPerM, double widthM, double cJPerKg, double feedKgPerS, double range, ref S log)
        where S : struct, ISteps
    {
        double watts = aW + (bWPerM * widthM) + (cJPerKg * feedKgPerS);
        log.Add(LoadsSteps.PowerNeed, watts);
        var band = new Band(watts * (1 - range), watts, watts * (1 + range));
        log.Add(LoadsSteps.PowerNeedLow, band.Low);
        log.Add(LoadsSteps.PowerNeedHigh, band.High);
        return band;
    }
}
