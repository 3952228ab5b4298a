namespace Driveline.Torsion;

/// <summary>The model as arrays in SI, referred to the first rotor's speed: the form the arithmetic works on.</summary>
/// <remarks>
/// A part that turns r times as fast as the first rotor has referred inertia J·r², stiffness k·r², damping c·r², torque T·r
/// and angle θ/r. Gears lose nothing. A link runs from a rotor to a rotor, or to the ground (To = −1).
/// </remarks>
internal sealed class Mechanism
{
    public const int Ground = -1;

    public Mechanism(int rotors, int links, int torques)
    {
        Rotors = rotors;
        Links = links;
        Inertia = new double[rotors];
        InverseInertia = new double[rotors];
        RotorRatio = new double[rotors];
        Viscous = new double[rotors];
        From = new int[links];
        To = new int[links];
        LinkRatio = new double[links];
        Stiffness = new double[links];
        Damping = new double[links];
        Breakaway = new double[links];
        Running = new double[links];
        ReverseBreakaway = new double[links];
        ReverseRunning = new double[links];
        Residual = new double[links];
        BreaksOnce = new bool[links];
        HasGap = new bool[links];
        Backlash = new double[links];
        Start = new double[links];
        RampStart = new double[links];
        RampTime = new double[links];
        SwingAngle = new double[links];
        SwingTorque = new double[links];
        EndSlip = new double[links];
        JointCosine = new double[links];
        JointPhase = new double[links];
        TorqueRotor = torques == 0 ? [] : new int[torques];
        Torque = torques == 0 ? [] : new double[torques];
        TorqueStart = torques == 0 ? [] : new double[torques];
        TorqueRamp = torques == 0 ? [] : new double[torques];
        DriveRotor = -1;
    }

    public int Rotors { get; }

    public int Links { get; }

    /// <summary>Inertia, kg·m²; +∞ for a rotor held at its speed.</summary>
    public double[] Inertia { get; }

    public double[] InverseInertia { get; }

    public double[] RotorRatio { get; }

    /// <summary>Viscous load to the ground, N·m·s/rad.</summary>
    public double[] Viscous { get; }

    public int[] From { get; }

    public int[] To { get; }

    public double[] LinkRatio { get; }

    /// <summary>N·m/rad; +∞ for a rigid link.</summary>
    public double[] Stiffness { get; }

    public double[] Damping { get; }

    /// <summary>Torque at which it slips forward, N·m; +∞ when it cannot.</summary>
    public double[] Breakaway { get; }

    public double[] Running { get; }

    public double[] ReverseBreakaway { get; }

    public double[] ReverseRunning { get; }

    /// <summary>Torque it still carries after it broke.</summary>
    public double[] Residual { get; }

    public bool[] BreaksOnce { get; }

    /// <summary>True when it opens like faces that part, and closes only where they meet again.</summary>
    public bool[] HasGap { get; }

    /// <summary>Play between the two faces, rad; +∞ when there is one face only.</summary>
    public double[] Backlash { get; }

    public double[] Start { get; }

    public double[] RampStart { get; }

    /// <summary>Time in which the capacity rises from nothing; −1 when it is there from the start.</summary>
    public double[] RampTime { get; }

    public double[] SwingAngle { get; }

    public double[] SwingTorque { get; }

    /// <summary>Slip at which a yielding obstacle is gone, rad; +∞ when it has no end.</summary>
    public double[] EndSlip { get; }

    /// <summary>Cosine of the joint angle at the link's driving end; 1 without a joint.</summary>
    public double[] JointCosine { get; }

    public double[] JointPhase { get; }

    public int[] TorqueRotor { get; }

    public double[] Torque { get; }

    public double[] TorqueStart { get; }

    public double[] TorqueRamp { get; }

    /// <summary>The driven rotor; −1 without a drive.</summary>
    public int DriveRotor { get; set; }

    /// <summary>Drive torque at standstill of its line, T0 + K·ω0, N·m.</summary>
    public double DriveAtRest { get; set; }

    /// <summary>Slope K, N·m·s/rad.</summary>
    public double DriveSlope { get; set; }

    public double DriveMost { get; set; } = double.PositiveInfinity;

    public double DriveLeast { get; set; } = double.NegativeInfinity;

    public bool HasJoints { get; set; }

    /// <summary>The same mechanism with figures of its own.</summary>
    public Mechanism Copy()
    {
        var copy = new Mechanism(Rotors, Links, Torque.Length)
        {
            DriveRotor = DriveRotor,
            DriveAtRest = DriveAtRest,
            DriveSlope = DriveSlope,
            DriveMost = DriveMost,
            DriveLeast = DriveLeast,
            HasJoints = HasJoints,
        };
        double[][] from = Numbers();
        double[][] into = copy.Numbers();
        for (int n = 0; n < from.Length; n++)
        {
            from[n].CopyTo(into[n], 0);
        }

        From.CopyTo(copy.From, 0);
        To.CopyTo(copy.To, 0);
        BreaksOnce.CopyTo(copy.BreaksOnce, 0);
        HasGap.CopyTo(copy.HasGap, 0);
        TorqueRotor.CopyTo(copy.TorqueRotor, 0);
        return copy;
    }

    private double[][] Numbers() =>
    [
        Inertia, InverseInertia, RotorRatio, Viscous, LinkRatio, Stiffness, Damping, Breakaway, Running, ReverseBreakaway, ReverseRunning,
        Residual, Backlash, Start, RampStart, RampTime, SwingAngle, SwingTorque, EndSlip, JointCosine, JointPhase, Torque, TorqueStart,
        TorqueRamp,
    ];

    public bool IsElastic(int link) => !double.IsPositiveInfinity(Stiffness[link]);

    public bool IsHeld(int rotor) => double.IsPositiveInfinity(Inertia[rotor]);
}
