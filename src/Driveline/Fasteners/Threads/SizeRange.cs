using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Fasteners;

/// <summary>The nominal sizes a row of a standard's table covers.</summary>
internal sealed class SizeRange
{
    private readonly double aboveOrAtM;
    private readonly double upToM;

    private SizeRange(ThreadSystem system, double aboveOrAtM, bool includesMinimum, double upToM, string text)
    {
        System = system;
        this.aboveOrAtM = aboveOrAtM;
        IncludesMinimum = includesMinimum;
        this.upToM = upToM;
        Text = text;
    }

    /// <summary>Inch or metric.</summary>
    public ThreadSystem System { get; }

    /// <summary>Smallest nominal diameter.</summary>
    public Length Minimum => Length.FromMeters(aboveOrAtM);

    /// <summary>True when the smallest diameter itself is covered, false when only sizes over it are.</summary>
    public bool IncludesMinimum { get; }

    /// <summary>Largest nominal diameter, always covered.</summary>
    public Length Maximum => Length.FromMeters(upToM);

    /// <summary>The range in words, e.g. "1/4 to 3/4 in", "over 3/4 to 1-1/2 in".</summary>
    public string Text { get; }

    /// <summary>True when the thread's system and nominal diameter are covered.</summary>
    public bool Covers(ScrewThread thread)
    {
        Guard.NotNull(thread, nameof(thread));
        // Nominal sizes are exact; the slack only absorbs the rounding of unit conversion.
        const double SlackM = 1e-9;
        double d = thread.MajorDiameterM;
        return thread.System == System
            && (IncludesMinimum ? d >= aboveOrAtM - SlackM : d > aboveOrAtM + SlackM)
            && d <= upToM + SlackM;
    }

    /// <inheritdoc/>
    public override string ToString() => Text;

    internal static SizeRange Inches(double from, double to, string text) =>
        new(ThreadSystem.Inch, from * Si.Inch, true, to * Si.Inch, text);

    internal static SizeRange InchesOver(double over, double to, string text) =>
        new(ThreadSystem.Inch, over * Si.Inch, false, to * Si.Inch, text);

    internal static SizeRange Millimeters(double from, double to, string text) =>
        new(ThreadSystem.Metric, from / 1000, true, to / 1000, text);

    internal static SizeRange MillimetersOver(double over, double to, string text) =>
        new(ThreadSystem.Metric, over / 1000, false, to / 1000, text);
}
