namespace Driveline.Torsion;

/// <summary>Where the run stands: motion, and what each link is doing.</summary>
internal sealed class RunState
{
    public RunState(int rotors, int links)
    {
        Speed = new double[rotors];
        Angle = new double[rotors];
        Twist = new double[links];
        Slip = new double[links];
        Links = new LinkState[links];
        Relaxing = new bool[links];
        Broken = new bool[links];
        SwungBack = new bool[links];
        Face = new double[links];
        Side = new int[links];
    }

    public double Time { get; set; }

    /// <summary>Referred speeds, rad/s.</summary>
    public double[] Speed { get; }

    public double[] Angle { get; }

    /// <summary>Elastic twist of each link, rad.</summary>
    public double[] Twist { get; }

    /// <summary>Slip of each link since the start, rad.</summary>
    public double[] Slip { get; }

    public LinkState[] Links { get; }

    /// <summary>A slipping link whose damped spring has not come to rest in its new torque.</summary>
    public bool[] Relaxing { get; }

    public bool[] Broken { get; }

    public bool[] SwungBack { get; }

    /// <summary>Slip at which the forward faces of a gap meet.</summary>
    public double[] Face { get; }

    /// <summary>Which face a gap link is locked at: +1 forward, −1 reverse.</summary>
    public int[] Side { get; }

    /// <summary>0 on its line, +1 at its largest torque, −1 at its least.</summary>
    public int DriveLimit { get; set; }
}
