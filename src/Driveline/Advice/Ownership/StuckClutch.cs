using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>How likely a slip clutch is to be stuck when it is needed, by habit and climate.</summary>
/// <remarks>
/// That facings rust to their plates when nobody slips them, above all in moist storage, is common practice and printed in manuals
/// (run-in after 10 to 30 days, or yearly); how many do in a year is nowhere counted: the shares are from memory and wide.
/// A clutch that is slipped every year starts each year free, p = a; one that is not stays stuck: p_k = 1 − (1 − a)^k after k years.
/// </remarks>
internal static class StuckClutch
{
    private static readonly Basis Guess = Basis.FromMemory(
        "share of slip clutches that stick within a year, by habit and climate; a wide guess");

    /// <summary>Share of clutches that stick within one year.</summary>
    public static RatioBand WithinAYear(SlipCare care, StorageClimate climate)
    {
        (double Low, double Expected, double High) moist = care switch
        {
            SlipCare.EveryYear => (0.01, 0.03, 0.10),
            SlipCare.Sometimes => (0.04, 0.12, 0.30),
            _ => (0.10, 0.25, 0.50),
        };
        double factor = climate == StorageClimate.Dry ? 0.4 : 1;
        return RatioBand.Between(moist.Low * factor, moist.Expected * factor, moist.High * factor, Guess);
    }

    /// <summary>
    /// Share of clutches that are stuck when needed in a year of ownership: p_k = 1 − (1 − a)^k, or a when slipped every year.
    /// </summary>
    /// <param name="care">The owner's habit.</param>
    /// <param name="climate">Where the machine stands.</param>
    /// <param name="year">Year of ownership, 1 to 100.</param>
    /// <example>Never slipped, moist, third year: 1 − 0.75³ = 0.578 expected.</example>
    public static RatioBand InYear(SlipCare care, StorageClimate climate, int year)
    {
        Guard.Within(year, 1, 100, "Year of ownership", nameof(year));
        RatioBand a = WithinAYear(care, climate);
        return RatioBand.OfSi(
            new Band(Stuck(care, a.SiBand.Low, year), Stuck(care, a.SiBand.Expected, year), Stuck(care, a.SiBand.High, year)), a.Basis);
    }

    private static double Stuck(SlipCare care, double yearly, int year) =>
        care == SlipCare.EveryYear ? yearly : 1 - Math.Pow(1 - yearly, year);
}
