using Driveline.Quantities;

namespace Driveline.ShearBolts;

/// <summary>Ratio κ of ultimate shear to tensile strength for one kind of bolt and one kind of shear plane.</summary>
/// <remarks>
/// τ = κ · R_m. Each of low, expected and high goes with its own area, because the rules behind them do: a load is κ · R_m · A.
/// 0.577 (1/√3) is a ratio of yield strengths and appears nowhere here.
/// </remarks>
internal sealed class ShearRatio
{
    internal ShearRatio(RatioBand ratio, ShearArea expectedArea, ShearArea highArea)
    {
        Ratio = ratio;
        ExpectedArea = expectedArea;
        HighArea = highArea;
    }

    /// <summary>Low, expected and high κ, each with its basis.</summary>
    public RatioBand Ratio { get; }

    /// <summary>
    /// The area the low ratio holds for; through a thread the root for a ratio above the code's 0.5, which goes with the stress area.
    /// </summary>
    public ShearArea LowArea => ExpectedArea == ShearArea.Plain ? ShearArea.Plain
        : Ratio.SiBand.Low > 0.5 ? ShearArea.Root
        : ShearArea.Stress;

    /// <summary>The area the expected ratio holds for.</summary>
    public ShearArea ExpectedArea { get; }

    /// <summary>The area the high ratio holds for.</summary>
    public ShearArea HighArea { get; }
}
