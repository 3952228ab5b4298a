using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Loads;

/// <summary>One published or remembered figure of the power a kind of machine needs.</summary>
/// <remarks>
/// Two forms. Parameters: P = a + b · w + c · F, with a [kW], b [kW/m], c [kW·h/t], w working width [m], F feed rate [t/h],
/// and a range of ± r % about the mean. Printed: a power from low to high, with the width it was printed for when there is one.
/// </remarks>
internal sealed class PowerRow
{
    private PowerRow(string machine, string variant, MachineKind kind, PowerMeaning meaning, Basis basis)
    {
        Machine = machine;
        Variant = variant;
        Kind = kind;
        Meaning = meaning;
        Basis = basis;
    }

    /// <summary>The machine in plain words, e.g. "mower".</summary>
    public string Machine { get; }

    /// <summary>Its variant, e.g. "disk"; empty when there is only one.</summary>
    public string Variant { get; }

    /// <summary>The kind of machine; <see cref="MachineKind.Other"/> when there is no kind of its own.</summary>
    public MachineKind Kind { get; }

    /// <summary>What the figure stands for.</summary>
    public PowerMeaning Meaning { get; }

    /// <summary>Where it comes from.</summary>
    public Basis Basis { get; }

    /// <summary>True for a row of parameters a, b, c; false for a printed power.</summary>
    public bool HasParameters => RangePercent > 0;

    /// <summary>Idle power a in kW; 0 for a printed power.</summary>
    public double ConstantKilowatts { get; private set; }

    /// <summary>Power per working width b in kW/m; 0 for a printed power.</summary>
    public double KilowattsPerMeter { get; private set; }

    /// <summary>Specific energy c in kW·h/t; 0 for a printed power.</summary>
    public double KilowattHoursPerTonne { get; private set; }

    /// <summary>The range about the mean, ± %; 0 for a printed power.</summary>
    public double RangePercent { get; private set; }

    /// <summary>The printed power; null for parameters. Unbounded above when only a least power is printed.</summary>
    public PowerBand? Printed { get; private set; }

    /// <summary>The working width the power is printed for; null when none is.</summary>
    public Length? PrintedWidth => WidthM > 0 ? Length.FromMeters(WidthM) : null;

    /// <summary>True for a figure per unit width, false for a machine of the printed width.</summary>
    public bool IsPerWidth { get; private set; }

    /// <summary>True when the power follows from the working width.</summary>
    public bool NeedsWidth => KilowattsPerMeter > 0 || WidthM > 0;

    /// <summary>True when the power follows from the feed rate.</summary>
    public bool NeedsFeed => KilowattHoursPerTonne > 0;

    /// <summary>Codes of what the document adds to the figure, e.g. <see cref="LoadsFindings.PowerMoreInStraw"/>.</summary>
    public IReadOnlyList<string> Remarks { get; private set; } = [];

    internal double WidthM { get; private set; }

    /// <inheritdoc/>
    public override string ToString() => Variant.Length > 0 ? Machine + ", " + Variant : Machine;

    internal static PowerRow Parameters(
        string machine, string variant, MachineKind kind, double a, double b, double c, double rangePercent, Basis basis,
            params string[] remarks) =>
        new(machine, variant, kind, PowerMeaning.MachineDraws, basis)
        {
            ConstantKilowatts = a,
            KilowattsPerMeter = b,
            KilowattHoursPerTonne = c,
            RangePercent = rangePercent,
            Remarks = remarks,
        };

    // A high value of 0 stands for "at least".
    internal static PowerRow Range(
        string machine, string variant, MachineKind kind, PowerMeaning meaning, double lowKw, double highKw, double widthM, bool isPerWidth,
            Basis basis) =>
        new(machine, variant, kind, meaning, basis)
        {
            Printed = highKw > 0
                ? PowerBand.OfSi(new Band(lowKw * 1e3, (lowKw + highKw) / 2 * 1e3, highKw * 1e3), Interval(basis))
                : PowerBand.AtLeast(Power.FromKilowatts(lowKw), basis),
            WidthM = widthM,
            IsPerWidth = isPerWidth,
        };

    private static BandBasis Interval(Basis basis) => new(basis, basis, basis, BandEnd.Interval95, BandEnd.Interval95);
}
