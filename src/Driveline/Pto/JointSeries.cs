using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Text.RegularExpressions;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Pto;

/// <summary>A trade series of PTO universal joints, known by its cross: diameter of the caps and length over them.</summary>
/// <remarks>
/// Rated torques at 540 and 1000 min⁻¹ from two trade lists (a maker's page in N·m, a trade article in hp), the lower of both; they
/// differ by
/// up to 4 %. Common practice, since neither is a standard. A rating is for long life, and no torque at which the joint breaks: the
/// lists' own maximum is 1.5 to 1.9 times as high, and what it means is not printed.
/// </remarks>
/// <example>27 × 74.6 mm is series 4: 460 N·m at 540 min⁻¹, 380 N·m at 1000 min⁻¹.</example>
internal sealed class JointSeries
{
    // A caliper over rusty caps tells no better; the nearest two crosses of one cap differ by 4.6 mm in length.
    private const double SameM = 0.6e-3;

    private const double Near540 = 600 * 2 * Math.PI / 60;

    private static readonly Regex Cross = new(
        @"^\s*(\d+(?:[.,]\d+)?)\s*(?:mm)?\s*[x×*]\s*(\d+(?:[.,]\d+)?)\s*(?:mm)?\s*$",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private static readonly Regex Named = new(@"^\s*(?:series\s*)?([1-8])\s*$", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    private JointSeries(int number, double capMm, double lengthMm, double at540, double at1000)
    {
        Number = number;
        CapDiameter = Length.FromMillimeters(capMm);
        CrossLength = Length.FromMillimeters(lengthMm);
        RatedAt540 = Torque.FromNewtonMeters(at540);
        RatedAt1000 = Torque.FromNewtonMeters(at1000);
    }

    /// <summary>Every series held here, smallest first.</summary>
    public static IReadOnlyList<JointSeries> All { get; } = Array.AsReadOnly(
    [
        new JointSeries(1, 22, 54, 210, 170),
        new JointSeries(2, 23.8, 61.3, 270, 220),
        new JointSeries(3, 27, 70, 390, 330),
        new JointSeries(4, 27, 74.6, 460, 380),
        new JointSeries(5, 30.2, 80, 620, 512),
        new JointSeries(6, 30.2, 92, 817, 697),
        new JointSeries(7, 30.2, 106.5, 970, 811),
        new JointSeries(8, 35, 106.5, 1200, 1032),
    ]);

    /// <summary>Where the ratings come from.</summary>
    public static Basis Basis { get; } = Basis.CommonPractice("ratings of trade joint series by cross, two trade lists");

    /// <summary>Number of the series, 1 to 8.</summary>
    public int Number { get; }

    /// <summary>Diameter of the bearing caps.</summary>
    public Length CapDiameter { get; }

    /// <summary>Length of the cross over its caps.</summary>
    public Length CrossLength { get; }

    /// <summary>Rated torque at 540 min⁻¹.</summary>
    public Torque RatedAt540 { get; }

    /// <summary>Rated torque at 1000 min⁻¹.</summary>
    public Torque RatedAt1000 { get; }

    /// <summary>The series of a cross as measured, to 0.6 mm; null when none has it.</summary>
    public static JointSeries? OfCross(Length capDiameter, Length crossLength) => All.FirstOrDefault(s =>
        Math.Abs(Si.Meters(s.CapDiameter) - Si.Meters(capDiameter)) <= SameM
        && Math.Abs(Si.Meters(s.CrossLength) - Si.Meters(crossLength)) <= SameM);

    /// <summary>Reads a cross in millimetres, e.g. "27 x 74.6", or a series, e.g. "4" or "series 4".</summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out JointSeries? series, [NotNullWhen(false)] out string? problem)
    {
        string given = text ?? string.Empty;
        Match cross = Cross.Match(given);
        Match named = Named.Match(given);
        series = cross.Success ? OfCross(Millimetres(cross.Groups[1].Value), Millimetres(cross.Groups[2].Value))
            : named.Success ? All[named.Groups[1].Value[0] - '1']
            : null;
        problem = series is not null ? null
            : "No joint has a cross \"" + given + "\"; held are " + string.Join(", ", All) + ", cap by length in mm.";
        return series is not null;
    }

    /// <summary>The rated torque at a PTO speed: that at 540 min⁻¹ up to 600 min⁻¹, else the lower one at 1000 min⁻¹.</summary>
    /// <param name="speed">Speed of the PTO; null when not known.</param>
    public Torque RatedTorque(RotationalSpeed? speed) =>
        speed is { } known && Si.RadiansPerSecond(known) <= Near540 ? RatedAt540 : RatedAt1000;

    /// <inheritdoc/>
    public override string ToString() =>
        FormattableString.Invariant($"{Si.Meters(CapDiameter) * 1000:0.#} x {Si.Meters(CrossLength) * 1000:0.#} (series {Number})");

    private static Length Millimetres(string text) =>
        Length.FromMillimeters(double.Parse(text.Replace(',', '.'), NumberStyles.Float, CultureInfo.InvariantCulture));
}
