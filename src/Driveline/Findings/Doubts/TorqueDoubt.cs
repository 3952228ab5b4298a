using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Findings;

/// <summary>One source of the doubt about a torque: how much of the width of the torque's band it makes.</summary>
/// <remarks>
/// The band runs from the lowest torque at which a device acts to the highest. It is a product, so the widths multiply: all
/// <see cref="Times"/> together give high over low of the torque, and all shares together 1. What has no end is listed first: until it is
/// known, nothing else gives the torque an end. Immutable.
/// </remarks>
public sealed class TorqueDoubt
{
    private TorqueDoubt(string code, double times, Basis? basis, string? settledBy, double share)
    {
        Code = code;
        HighOverLow = times;
        Basis = basis;
        SettledBy = settledBy;
        ShareOfWidth = share;
    }

    /// <summary>Stable code, such as "doubt.grade".</summary>
    public string Code { get; }

    /// <summary>How many times wider it makes the band, high over low [-]; above 1; null when it leaves an end of the band open.</summary>
    public double? Times => IsOpen ? null : HighOverLow;

    /// <summary>
    /// Its share of what is bounded: ln of its own high over low, over the sum of all bounded ones [-]; null when it leaves an end open.
    /// </summary>
    public double? Share => IsOpen ? null : ShareOfWidth;

    /// <summary>True when it leaves the low or the high end of the torque open.</summary>
    public bool IsOpen => double.IsPositiveInfinity(HighOverLow);

    /// <summary>The weaker basis of the numbers at its two ends; null when it is a fact that nobody told.</summary>
    public Basis? Basis { get; }

    /// <summary>The measurement that would narrow it, a code of <see cref="Measurements"/>; null when none is named.</summary>
    public string? SettledBy { get; }

    internal double HighOverLow { get; }

    private double ShareOfWidth { get; }

    /// <inheritdoc/>
    public override string ToString() =>
        Code + (IsOpen ? ": open" : FormattableString.Invariant($": {HighOverLow:G4} times, {ShareOfWidth:P0}"));

    /// <summary>A source whose share is not known yet.</summary>
    internal static TorqueDoubt Of(string code, double times, BandBasis? basis, string? settledBy) => new(
        code, times, basis is null ? null : Provenance.Basis.Weakest(basis.Low, basis.High), settledBy, 0);

    /// <summary>The sources that widen the band at all, with their shares, the widest first.</summary>
    internal static IReadOnlyList<TorqueDoubt> Ranked(IEnumerable<TorqueDoubt> sources)
    {
        TorqueDoubt[] wide = [.. sources.Where(d => d.HighOverLow > 1 + 1e-9).OrderByDescending(d => d.HighOverLow)];
        double whole = wide.Where(d => !d.IsOpen).Sum(d => Math.Log(d.HighOverLow));
        return Array.ConvertAll(
            wide, d => new TorqueDoubt(d.Code, d.HighOverLow, d.Basis, d.SettledBy, d.IsOpen ? 0 : Math.Log(d.HighOverLow) / whole));
    }
}
