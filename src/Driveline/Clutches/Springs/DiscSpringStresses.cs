using UnitsNet;

namespace Driveline.Clutches;

/// <summary>Stresses in a disc spring by EN 16984; compression is negative.</summary>
/// <remarks>
/// σOM = -4E/(1-ν²) · t²/(K1·De²) · K4 · (s/t) · 3/π. The four edge stresses use K2 and K3 of the same standard;
/// their formulas are from memory of it.
/// </remarks>
internal sealed class DiscSpringStresses
{
    internal DiscSpringStresses(double omPa, double onePa, double twoPa, double threePa, double fourPa)
    {
        Middle = Pressure.FromPascals(omPa);
        UpperInner = Pressure.FromPascals(onePa);
        LowerInner = Pressure.FromPascals(twoPa);
        LowerOuter = Pressure.FromPascals(threePa);
        UpperOuter = Pressure.FromPascals(fourPa);
    }

    /// <summary>σOM, at the middle of the upper face; decides setting.</summary>
    public Pressure Middle { get; }

    /// <summary>σI, at the upper inner edge.</summary>
    public Pressure UpperInner { get; }

    /// <summary>σII, at the lower inner edge; decides fatigue.</summary>
    public Pressure LowerInner { get; }

    /// <summary>σIII, at the lower outer edge; decides fatigue.</summary>
    public Pressure LowerOuter { get; }

    /// <summary>σIV, at the upper outer edge.</summary>
    public Pressure UpperOuter { get; }
}
