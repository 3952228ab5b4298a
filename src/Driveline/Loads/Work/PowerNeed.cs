using System.Diagnostics.CodeAnalysis;
using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>The rotary power a machine needs in work, with its range, its basis and what to notice.</summary>
/// <remarks>
/// Parameters: P = a + b · w + c · F, low and high ± r % about it; the range spreads over designs, adjustments and crops, it
/// is no limit. Printed powers: per unit width times the working width, where a width is printed. A printed tractor size is
/// not what the machine draws; a finding says so. Mean torque then follows by <see cref="WorkPeak.MeanTorque"/>.
/// Source of the form: ASABE D497, remembered.
/// </remarks>
internal sealed class PowerNeed
{
    private readonly double widthM;
    private readonly double feedKgPerS;

    internal PowerNeed(PowerRow? row, double widthM, double feedKgPerS, PowerBand power, IReadOnlyList<Finding> findings)
    {
        Row = row;
        this.widthM = widthM;
        this.feedKgPerS = feedKgPerS;
        Power = power;
        Findings = findings;
    }

    /// <summary>The row it was computed from; null for a stated power, or for several rows of a kind.</summary>
    public PowerRow? Row { get; }

    /// <summary>Mean power at the machine's input: low, expected and high.</summary>
    public PowerBand Power { get; }

    /// <summary>What a caller must notice.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>A power the caller states: a measurement, or the machine's papers.</summary>
    public static PowerNeed Stated(PowerBand power) => new(null, 0, 0, Guard.NotNull(power, nameof(power)), []);

    /// <summary>The need by a row that follows from neither width nor feed rate.</summary>
    /// <exception cref="ArgumentException">The row needs a width or a feed rate.</exception>
    public static PowerNeed Of(PowerRow row) => Of(Guard.NotNull(row, nameof(row)), 0, 0);

    /// <summary>The need by a row that follows from the working width.</summary>
    /// <param name="row">A row of <see cref="ImplementPower"/>.</param>
    /// <param name="width">Working width w; above 0.</param>
    /// <exception cref="ArgumentException">The row needs a feed rate, or does not take a width.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The width is zero, negative or not finite.</exception>
    /// <example>Disk mower, 2.8 m: 14.0 kW, from 9.8 to 18.2 kW.</example>
    public static PowerNeed Of(PowerRow row, Length width) => Of(Guard.NotNull(row, nameof(row)), Meters(width), 0);

    /// <summary>The need by a row that follows from the feed rate.</summary>
    /// <param name="row">A row of <see cref="ImplementPower"/>.</param>
    /// <param name="feed">Feed rate F; above 0.</param>
    /// <exception cref="ArgumentException">The row needs a width, or does not take a feed rate.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The feed rate is zero, negative or not finite.</exception>
    /// <example>Round baler with variable chamber, 15 t/h: 20.5 kW, from 10.25 to 30.75 kW.</example>
    public static PowerNeed Of(PowerRow row, MassFlow feed) => Of(
        Guard.NotNull(row, nameof(row)), 0, Guard.Positive(Si.KilogramsPerSecond(feed), "Feed rate", "kg/s", nameof(feed)));

    /// <summary>
    /// The need of a kind of machine by every row held that follows from its width: from the lowest to the highest of them.
    /// </summary>
    /// <param name="kind">The kind of machine.</param>
    /// <param name="width">Working width w; above 0.</param>
    /// <exception cref="ArgumentException">No row of the kind follows from a width; state the power instead.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The width is zero, negative or not finite.</exception>
    public static PowerNeed Of(MachineKind kind, Length width) => TryOf(kind, width, out PowerNeed? need)
        ? need!
        : throw new ArgumentException(
            "No power per width is held for " + kind + "; state the power. Held for: "
            + string.Join(
                ", ", ImplementPower.All.Where(r => r.NeedsWidth).Select(r => r.Kind).Where(k => k != MachineKind.Other).Distinct()) + ".",
            nameof(kind));

    /// <summary>The need of a kind of machine by width; false when no row of the kind follows from a width.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The width is zero, negative or not finite.</exception>
    public static bool TryOf(MachineKind kind, Length width, [NotNullWhen(true)] out PowerNeed? need) => TryOf(kind, width, null, out need);

    /// <summary>
    /// The need of a kind of machine by every row that follows from what is known of it; false when there is none.
    /// </summary>
    /// <param name="kind">The kind of machine.</param>
    /// <param name="width">Working width w; null when not known.</param>
    /// <param name="feed">Feed rate F; null when not known.</param>
    /// <param name="need">From the lowest to the highest of the rows.</param>
    /// <exception cref="ArgumentOutOfRangeException">The width or the feed rate is zero, negative or not finite.</exception>
    public static bool TryOf(MachineKind kind, Length? width, MassFlow? feed, [NotNullWhen(true)] out PowerNeed? need)
    {
        double meters = width is { } w ? Meters(w) : 0;
        double kgPerS = feed is { } f ? Guard.Positive(Si.KilogramsPerSecond(f), "Feed rate", "kg/s", nameof(feed)) : 0;
        need = PowerNeedOfKind.Of(kind, meters, kgPerS);
        return need is not null;
    }

    /// <summary>The same need times a factor, e.g. 1.2 for straw.</summary>
    public PowerNeed WithFactor(RatioBand factor)
    {
        Guard.NotNull(factor, nameof(factor));
        PowerBand scaled = PowerBand.OfSi(Power.SiBand.Times(factor.SiBand), BandBasis.Combine(Power.Basis, factor.Basis));
        return new PowerNeed(Row, widthM, feedKgPerS, scaled, Findings);
    }

    /// <summary>The lines of the calculation; empty when nothing was computed from parameters.</summary>
    public IReadOnlyList<CalculationLine> Sheet()
    {
        var steps = StepList.New();
        if (Row is { HasParameters: true } row)
        {
            PowerNeedOfRow.Parameters(row, widthM, feedKgPerS, ref steps);
        }

        return steps.Lines;
    }

    private static double Meters(Length width) => Guard.Positive(Si.Meters(width), "Working width", "m", nameof(width));

    internal static PowerNeed Of(PowerRow row, double widthM, double feedKgPerS)
    {
        if (row.NeedsWidth != widthM > 0 || row.NeedsFeed != feedKgPerS > 0)
        {
            throw new ArgumentException(
                "The power of '" + row + "' follows from "
                    + (row.NeedsWidth ? "its working width" : row.NeedsFeed ? "its feed rate" : "neither width nor feed rate")
                + "; got " + (widthM > 0 ? "a width" : feedKgPerS > 0 ? "a feed rate" : "neither") + ".",
                nameof(row));
        }

        var findings = new List<Finding>();
        PowerBand power = row.HasParameters ? PowerNeedOfRow.ByParameters(row, widthM, feedKgPerS)
            : PowerNeedOfRow.ByPrint(row, widthM, findings);
        if (row.Meaning != PowerMeaning.MachineDraws)
        {
            findings.Add(Finding.Of(LoadsFindings.PowerIsTractorSize, Severity.Warning).With("machine", row.ToString()));
        }

        if (row.Basis.Kind == BasisKind.FromMemory)
        {
            findings.Add(Finding.Of(LoadsFindings.PowerFromMemory, Severity.Warning).With("machine", row.ToString()));
        }

        findings.AddRange(row.Remarks.Select(code => Finding.Of(code, Severity.Note)));
        return new PowerNeed(row, widthM, feedKgPerS, power, findings.AsReadOnly());
    }
}
