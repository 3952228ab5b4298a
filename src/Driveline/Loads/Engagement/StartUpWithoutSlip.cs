using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Loads;

/// <summary>One maker's statement of what starting without a slip clutch puts on the line: about ten times the load with it.</summary>
/// <remarks>An order of magnitude for a twin-disc spreader; shown beside a computed peak, never in its place.</remarks>
internal static class StartUpWithoutSlip
{
    /// <summary>Load without slip over load with it.</summary>
    public static Sourced Factor { get; } =
        new(10, "1", Basis.Published(
            "operator manual, twin-disc fertilizer spreader", "undated", "friction clutch: slip cuts the start load to about one tenth"));

    /// <summary>The load that statement implies for a slip torque, both ends an interval.</summary>
    /// <example>180 to 220 N·m: 1800 to 2200 N·m.</example>
    public static TorqueBand Of(TorqueBand slipTorque)
    {
        Guard.NotNull(slipTorque, nameof(slipTorque));
        var statement = new BandBasis(Factor.Basis, Factor.Basis, Factor.Basis, BandEnd.Interval95, BandEnd.Interval95);
        return TorqueBand.OfSi(slipTorque.SiBand.Times(Factor.Value), BandBasis.Combine(slipTorque.Basis, statement));
    }
}
