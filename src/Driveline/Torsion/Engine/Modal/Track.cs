namespace Driveline.Torsion;

/// <summary>A quantity watched over a stretch: what it may not pass upward and downward, and whether its largest values are kept.</summary>
internal struct Track
{
    public int Row;
    public int Link;

    /// <summary>True for a slip, the integral of its row, from <see cref="Travelled"/>.</summary>
    public bool IsTravel;
    public double Travelled;

    public bool KeepsTorque;
    public bool KeepsTwist;

    /// <summary>True when its largest values are kept.</summary>
    public readonly bool Keeps => KeepsTorque || KeepsTwist;

    /// <summary>Bound upward at the start of the stretch and its rate.</summary>
    public double Up;
    public double UpRate;
    public Crossing UpMeans;

    /// <summary>Bound on the negative.</summary>
    public double Down;
    public double DownRate;
    public Crossing DownMeans;

    /// <summary>What rounding is measured by.</summary>
    public double Scale;
}
