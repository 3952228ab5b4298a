using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>How often the protection acted in so many hours of work, as somebody counted. Immutable.</summary>
/// <remarks>
/// Breaks count as a Poisson process: what they tell is an upper 95 % bound of their rate, Gamma(k + 1) over the hours (Garwood,
/// Biometrika 28, 1936). It speaks of quiet only: a device that never acted may as well be one that cannot.
/// </remarks>
public sealed class BreakHistory
{
    /// <summary>Most breaks that can be stated.</summary>
    public const int MostBreaks = 1000;

    private BreakHistory(double hours, int breaks, int? breaksAtEngagement, HistoryStart from, bool? isChanged)
    {
        Hours = hours;
        Breaks = breaks;
        BreaksAtEngagement = breaksAtEngagement;
        From = from;
        IsChanged = isChanged;
    }

    /// <summary>Hours of work, above 0.</summary>
    public double Hours { get; }

    /// <summary>
    /// How often the protection acted in them; those while the PTO was engaged are left out when <see cref="BreaksAtEngagement"/>
    /// counts them.
    /// </summary>
    public int Breaks { get; }

    /// <summary>
    /// How often it acted while the PTO was engaged; null when they were not counted apart, and <see cref="Breaks"/> holds them all.
    /// </summary>
    public int? BreaksAtEngagement { get; }

    /// <summary>What opened the window.</summary>
    public HistoryStart From { get; }

    /// <summary>True when bolt, setting, machine, tractor or work have changed since; null when nobody says.</summary>
    public bool? IsChanged { get; }

    /// <summary>Upper 95 % bound of the breaks in an hour of work, 1/h.</summary>
    public double BreaksPerHourAtMost => PoissonRate.MostMean(Breaks) / Hours;

    /// <summary>Lower 95 % bound of the breaks in an hour of work, 1/h.</summary>
    public double BreaksPerHourAtLeast => PoissonRate.LeastMean(Breaks) / Hours;

    /// <summary>
    /// Upper 95 % bound of the breaks at engagement in an hour of work, 1/h; that of all breaks when they were not counted apart.
    /// </summary>
    public double EngagementBreaksPerHourAtMost => PoissonRate.MostMean(BreaksAtEngagement ?? Breaks) / Hours;

    /// <summary>A history of which it is not known yet what opened it and whether anything has changed.</summary>
    /// <param name="hours">Hours of work, above 0 to 1 000 000.</param>
    /// <param name="breaks">How often the protection acted in them, 0 to 1000.</param>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static BreakHistory Of(double hours, int breaks) => new(
        Guard.Within(hours, double.Epsilon, 1e6, "Hours of work", "h", nameof(hours)),
        Guard.Within(breaks, 0, MostBreaks, "Breaks", nameof(breaks)), null,
        HistoryStart.NotKnown, null);

    /// <summary>The same history with the breaks while the PTO was engaged counted apart, 0 to 1000.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The count is out of range.</exception>
    public BreakHistory WithBreaksAtEngagement(int? breaks) =>
        new(
        Hours, Breaks, breaks is { } counted ? Guard.Within(counted, 0, MostBreaks, "Breaks at engagement", nameof(breaks)) : null, From,
        IsChanged);

    /// <summary>The same history with what opened its window.</summary>
    public BreakHistory WithFrom(HistoryStart from) => new(Hours, Breaks, BreaksAtEngagement, from, IsChanged);

    /// <summary>
    /// The same history with a statement whether bolt, setting, machine, tractor or work have changed since; null for none.
    /// </summary>
    public BreakHistory WithChanged(bool? isChanged) => new(Hours, Breaks, BreaksAtEngagement, From, isChanged);

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Breaks} breaks in {Hours} h");
}
