using System.Diagnostics.CodeAnalysis;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Fasteners;

/// <summary>A screw thread with the areas its strength depends on. Immutable; equal when the designations are equal.</summary>
/// <remarks>
/// Four areas are in use and differ by up to a third, so each has its own name: <see cref="StressArea"/> (A_s, for tension),
/// <see cref="RootArea"/> (at the root of the external thread), <see cref="ShankArea"/> (nominal diameter) and the area of a
/// real body, from <see cref="BodyDiameter"/>.
/// </remarks>
public abstract class ScrewThread : IEquatable<ScrewThread>
{
    private protected ScrewThread(string designation, ThreadSeries series, double majorDiameterM, double pitchM, bool isSeriesAssumed)
    {
        Designation = designation;
        Series = series;
        MajorDiameterM = majorDiameterM;
        PitchM = pitchM;
        IsSeriesAssumed = isSeriesAssumed;
    }

    /// <summary>Designation, e.g. "1/2-13 UNC", "M10", "M10x1.25".</summary>
    public string Designation { get; }

    /// <summary>Series of the thread.</summary>
    internal ThreadSeries Series { get; }

    /// <summary>Inch or metric.</summary>
    internal abstract ThreadSystem System { get; }

    /// <summary>True when only the size was given and the coarse series was taken.</summary>
    public bool IsSeriesAssumed { get; }

    /// <summary>Nominal major diameter (d, D).</summary>
    public Length MajorDiameter => Length.FromMeters(MajorDiameterM);

    /// <summary>Pitch (P); 1/n for n threads per inch.</summary>
    public Length Pitch => Length.FromMeters(PitchM);

    /// <summary>
    /// Tensile stress area (A_s): as published, rounded, where a copy of the table was seen; else by formula, rounded as the standard
    /// rounds.
    /// </summary>
    /// <remarks>Inch: π/4·(D − 0.9743/n)². Metric: π/4·(d − 0.9382·P)², to three significant figures.</remarks>
    public Area StressArea => Area.FromSquareMeters(StressAreaM2);

    /// <summary>Tensile stress area by formula, not rounded.</summary>
    public Area FormulaStressArea => Area.FromSquareMeters(FormulaStressAreaM2);

    /// <summary>
    /// Area at the root of the external thread: π/4·(d − 1.22687·P)² metric (d_3); π/4·(D − 1.299038/n)² inch (minor-diameter section).
    /// </summary>
    public Area RootArea => Area.FromSquareMeters(RootAreaM2);

    /// <summary>Nominal shank area, π/4·d².</summary>
    public Area ShankArea => Area.FromSquareMeters(ShankAreaM2);

    /// <summary>Diameter at the root of the external thread, as <see cref="RootArea"/> has it.</summary>
    public Length MinorDiameter => Length.FromMeters(MinorDiameterM);

    /// <summary>The stress area as printed, with its unit and basis; null when none is held.</summary>
    public abstract Sourced? PublishedStressArea { get; }

    /// <summary>Basis of <see cref="StressArea"/>.</summary>
    public abstract Basis AreaBasis { get; }

    /// <summary>Basis of <see cref="RootArea"/>, which is always computed.</summary>
    public abstract Basis RootAreaBasis { get; }

    /// <summary>Unthreaded body of a hexagon cap screw or bolt of this size: minimum, middle, maximum; null when not tabulated.</summary>
    public LengthBand? BodyDiameter => BodyDiameterOf(BodyStyle.HexCapScrew);

    internal double MajorDiameterM { get; }

    internal double PitchM { get; }

    internal abstract double StressAreaM2 { get; }

    internal abstract double FormulaStressAreaM2 { get; }

    internal abstract double MinorDiameterM { get; }

    internal double RootAreaM2 => Math.PI / 4 * MinorDiameterM * MinorDiameterM;

    internal double ShankAreaM2 => Math.PI / 4 * MajorDiameterM * MajorDiameterM;

    /// <summary>The thread in a text, as people write it.</summary>
    /// <param name="text">E.g. "1/2-13 UNC", "1/2 in", "#10-24", "M10", "M10x1.25". A size alone means the coarse series.</param>
    /// <exception cref="ArgumentException">
    /// The text names no thread held here; the message lists what is accepted and the nearest size.
    /// </exception>
    public static ScrewThread Parse(string text) => TryParse(text, out ScrewThread? thread, out string? problem)
        ? thread!
        : throw new ArgumentException(problem, nameof(text));

    /// <summary>The thread in a text, or what is wrong with the text.</summary>
    /// <param name="text">See <see cref="Parse"/>; null is a problem, not an exception.</param>
    /// <param name="thread">The thread; null when there is a problem.</param>
    /// <param name="problem">What is wrong and what is accepted; null when there is a thread.</param>
    public static bool TryParse(string? text, [NotNullWhen(true)] out ScrewThread? thread, [NotNullWhen(false)] out string? problem) =>
        ThreadText.TryParse(text, out thread, out problem);

    /// <summary>Unthreaded body of a bolt of this size and style: minimum, middle, maximum; null when not tabulated.</summary>
    public LengthBand? BodyDiameterOf(BodyStyle style) => BodyDiameters.Of(this, style);

    /// <inheritdoc/>
    public bool Equals(ScrewThread? other) => other is not null && Designation == other.Designation;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as ScrewThread);

    /// <inheritdoc/>
    public override int GetHashCode() => StringComparer.Ordinal.GetHashCode(Designation);

    /// <summary>The designation.</summary>
    public override string ToString() => Designation;
}
