namespace Driveline.Torsion;

/// <summary>What the present states of the links make of the model: torques laid down, capacities, bodies, fastest rate.</summary>
internal sealed partial class Plan
{
    private readonly double[] keptInput;
    private readonly double[] keptCarried;
    private readonly double[] keptCarriedRate;

    public Plan(int rotors, int links)
    {
        Forward = new double[links];
        ForwardRate = new double[links];
        Reverse = new double[links];
        ReverseRate = new double[links];
        Carried = new double[links];
        CarriedRate = new double[links];
        Constant = new double[rotors];
        Ramp = new double[rotors];
        Viscous = new double[rotors];
        Springs = new Spring[links];
        Inverse = new double[rotors];
        Others = new int[links];
        Input = new double[rotors];
        InputRate = new double[rotors];
        keptInput = new double[rotors];
        keptCarried = new double[links];
        keptCarriedRate = new double[links];
        Bodies = new RigidBodies(rotors, links);
    }

    /// <summary>Rotors that move as one, and the torques between them.</summary>
    public RigidBodies Bodies { get; }

    /// <summary>Capacity forward at the start of the step, N·m, and its rate, N·m/s.</summary>
    public double[] Forward { get; }

    public double[] ForwardRate { get; }

    public double[] Reverse { get; }

    public double[] ReverseRate { get; }

    /// <summary>Signed torque of a slipping link, and its rate.</summary>
    public double[] Carried { get; }

    public double[] CarriedRate { get; }

    /// <summary>What the drive gives apart from its slope, N·m.</summary>
    public double DriveConstant { get; private set; }

    /// <summary>Constant torque on each rotor at the start of the step, and its rate.</summary>
    public double[] Constant { get; }

    public double[] Ramp { get; }

    public double[] Viscous { get; }

    /// <summary>Links that carry torque through their springs, and all other links.</summary>
    public Spring[] Springs { get; }

    public int SpringCount { get; private set; }

    public int[] Others { get; }

    public int OtherCount { get; private set; }

    /// <summary>Torque on each rotor that does not depend on the motion, slipping links included, and its rate.</summary>
    public double[] Input { get; }

    public double[] InputRate { get; }

    /// <summary>1/J of each rotor; 0 for one that is held or at rest. For use when no rotors are joined rigidly.</summary>
    public double[] Inverse { get; }

    public bool HasRamps { get; private set; }

    /// <summary>A bound on how fast the state can change, 1/s: what limits the step.</summary>
    public double Rate { get; private set; }

    public void Build(Mechanism m, RunState x)
    {
        Bodies.Find(m, x);
        Loads(m, x);
        Bodies.Rest(m, x);
        Rate = RateBound.Of(m, x, this);
        SpringCount = 0;
        OtherCount = 0;
        for (int l = 0; l < m.Links; l++)
        {
            if (x.Links[l] == LinkState.Locked && m.IsElastic(l))
            {
                Springs[SpringCount++] = Lay(m, l);
            }
            else
            {
                Others[OtherCount++] = l;
            }
        }

        for (int i = 0; i < m.Rotors; i++)
        {
            Inverse[i] = Bodies.IsAtRest(i) ? 0 : m.InverseInertia[i];
        }

        AtTime(m, x);
    }

    /// <summary>Sets what changes with time within ramps; the step must not cross a ramp's end.</summary>
    public void AtTime(Mechanism m, RunState x)
    {
        HasRamps = false;
        for (int l = 0; l < m.Links; l++)
        {
            double scale = 1;
            double rate = 0;
            if (m.RampTime[l] >= 0 && !x.Broken[l])
            {
                Scale(x.Time, m.RampStart[l], m.RampTime[l], out scale, out rate);
                HasRamps |= x.Time < m.RampStart[l] + m.RampTime[l];
            }

            Capacities(m, x, l, scale, rate);
        }

        for (int i = 0; i < m.Rotors; i++)
        {
            Constant[i] = 0;
            Ramp[i] = 0;
        }

        if (m.DriveRotor >= 0)
        {
            DriveConstant = x.DriveLimit == 0 ? m.DriveAtRest : x.DriveLimit > 0 ? m.DriveMost : m.DriveLeast;
            Constant[m.DriveRotor] = DriveConstant;
        }

        for (int k = 0; k < m.Torque.Length; k++)
        {
            Scale(x.Time, m.TorqueStart[k], m.TorqueRamp[k], out double scale, out double rate);
            Constant[m.TorqueRotor[k]] += scale * m.Torque[k];
            Ramp[m.TorqueRotor[k]] += rate * m.Torque[k];
            HasRamps |= x.Time < m.TorqueStart[k] + m.TorqueRamp[k];
        }

        Inputs(m);
    }

    /// <summary>Takes the inputs away until they are shown again: for the response to a state alone.</summary>
    public void HideInputs()
    {
        Array.Copy(Input, keptInput, Input.Length);
        Array.Copy(Carried, keptCarried, Carried.Length);
        Array.Copy(CarriedRate, keptCarriedRate, CarriedRate.Length);
        Array.Clear(Input, 0, Input.Length);
        Array.Clear(Carried, 0, Carried.Length);
        Array.Clear(CarriedRate, 0, CarriedRate.Length);
    }

    /// <summary>Puts the rates of hidden inputs in their place.</summary>
    public void ShowInputRates()
    {
        Array.Copy(InputRate, Input, Input.Length);
        Array.Copy(keptCarriedRate, Carried, Carried.Length);
    }

    public void ShowInputs()
    {
        Array.Copy(keptInput, Input, Input.Length);
        Array.Copy(keptCarried, Carried, Carried.Length);
        Array.Copy(keptCarriedRate, CarriedRate, CarriedRate.Length);
    }

    private static Spring Lay(Mechanism m, int l) => new()
    {
        Link = l,
        From = m.From[l],
        To = m.To[l],
        At = l * StepSeries.Stride,
        FromAt = m.From[l] * StepSeries.Stride,
        ToAt = m.To[l] * StepSeries.Stride,
        Stiffness = m.Stiffness[l],
        Damping = m.Damping[l],
    };
}
