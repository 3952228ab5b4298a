namespace Driveline.ShearBolts;

/// <summary>One end of a shear plane's band: the area, ratio and tensile strength that belong together.</summary>
internal readonly struct PlaneEnd
{
    public PlaneEnd(double areaM2, double ratio, double tensilePa)
    {
        AreaM2 = areaM2;
        Ratio = ratio;
        TensilePa = tensilePa;
    }

    public double AreaM2 { get; }

    public double Ratio { get; }

    public double TensilePa { get; }

    public bool IsUnbounded => double.IsPositiveInfinity(TensilePa) || double.IsPositiveInfinity(AreaM2);

    public double DiameterM => Math.Sqrt(4 * AreaM2 / Math.PI);

    public double LoadN => IsUnbounded ? double.PositiveInfinity : AreaM2 * Ratio * TensilePa;
}
