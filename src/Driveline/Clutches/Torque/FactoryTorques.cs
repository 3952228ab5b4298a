using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Clutches;

/// <summary>
/// Slip torques printed in machine documents: what clutches of such machines are set to, never a setting for another machine.
/// </summary>
internal static class FactoryTorques
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<FactoryTorque> All { get; } =
    [
        Row("conveyor drive, stationary", "friction torque limiter", 135.6, 135.6, "dryer operator manual", double.NaN),
        Row("rotary rake, 3.5 to 4.6 m", "friction overload coupling", 550, 550, "rotary swather operator manuals 1 and 2", double.NaN),
        Row("small square baler, joint size 3", "friction slip clutch", 540, 680, "square baler operator manual", 41.4e-3),
        Row("small square baler, joint size 4", "friction slip clutch", 680, 820, "square baler operator manual", 39.9e-3),
        Row("round baler pickup", "ratchet slip clutch", 260, 340, "round baler operator manual", double.NaN),
        Row("fertilizer spreader, twin disc", "friction clutch", 180, 220, "fertilizer spreader operator manual", double.NaN),
    ];

    private static FactoryTorque Row(string machine, string device, double lowNm, double highNm, string manual, double springLengthM)
    {
        Basis basis = Basis.Published(manual + " (maker withheld)", "undated copy", "slip torque");
        var nm = new Band(lowNm, (lowNm + highNm) / 2, highNm);
        return new FactoryTorque(machine, device, TorqueBand.OfSi(nm, BandBasis.Of(basis)), springLengthM);
    }
}
