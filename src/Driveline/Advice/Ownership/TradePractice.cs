using Driveline.Provenance;

namespace Driveline.Advice;

/// <summary>Facts of the trade that the advice rests on. Common practice: widely said, no document we can name.</summary>
internal static class TradePractice
{
    /// <summary>Lower end of the engine speed at which the PTO is usually engaged. Some PTO clutches snap in whatever one does.</summary>
    public static readonly Sourced EngageFrom = new(
        1200, "min⁻¹", Basis.CommonPractice("engage slowly at a low engine speed, 1200 to 1600 usual"));

    /// <summary>Upper end of the engine speed at which the PTO is usually engaged.</summary>
    public static readonly Sourced EngageTo = new(
        1600, "min⁻¹", Basis.CommonPractice("engage slowly at a low engine speed, 1200 to 1600 usual"));

    /// <summary>What a clutch-protected machine costs more than a bolt-protected one, at least.</summary>
    public static readonly Sourced ClutchPremiumFrom = new(
        500, "USD", Basis.CommonPractice("a clutch-protected machine costs some 500 to 600 USD more"));

    /// <summary>What a clutch-protected machine costs more than a bolt-protected one, at most.</summary>
    public static readonly Sourced ClutchPremiumTo = new(
        600, "USD", Basis.CommonPractice("a clutch-protected machine costs some 500 to 600 USD more"));

    /// <summary>How often a slip clutch wants loosening, slipping and resetting, above all in moist climates.</summary>
    public static readonly Sourced SlipsPerYear = new(
        1, "1/year", Basis.CommonPractice("loosen, slip and reset every year, above all in moist climates"));

    /// <summary>Every row.</summary>
    public static IReadOnlyList<Sourced> All { get; } = [EngageFrom, EngageTo, ClutchPremiumFrom, ClutchPremiumTo, SlipsPerYear];
}
