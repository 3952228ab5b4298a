namespace Driveline.Torsion;

/// <content>What acts from outside at a time: loads, torques, and what couplings may carry.</content>
internal sealed partial class Plan
{
    private void Inputs(Mechanism m)
    {
        for (int i = 0; i < m.Rotors; i++)
        {
            Input[i] = Constant[i];
            InputRate[i] = Ramp[i];
        }

        for (int l = 0; l < m.Links; l++)
        {
            Input[m.From[l]] -= Carried[l];
            InputRate[m.From[l]] -= CarriedRate[l];
            if (m.To[l] >= 0)
            {
                Input[m.To[l]] += Carried[l];
                InputRate[m.To[l]] += CarriedRate[l];
            }
        }
    }

    /// <summary>Share and rate of a ramp that begins at start and takes a time.</summary>
    public static void Scale(double time, double start, double duration, out double scale, out double rate)
    {
        bool on = time >= start;
        bool rising = on && time < start + duration;
        rate = rising ? 1 / duration : 0;
        scale = !on ? 0 : rising ? (time - start) / duration : 1;
    }

    private void Capacities(Mechanism m, RunState x, int l, double scale, double rate)
    {
        double forward = m.Breakaway[l];
        double reverse = m.ReverseBreakaway[l];
        double running = m.Running[l];
        double reverseRunning = m.ReverseRunning[l];
        if (x.Broken[l])
        {
            forward = reverse = running = reverseRunning = m.Residual[l];
        }
        else if (m.SwingAngle[l] > 0 && !x.SwungBack[l])
        {
            forward = running = m.SwingTorque[l];
        }

        if (m.HasGap[l])
        {
            forward = x.Side[l] < 0 ? 0 : forward;
            reverse = x.Side[l] < 0 ? reverse : 0;
        }

        Forward[l] = Times(forward, scale);
        ForwardRate[l] = rate == 0 ? 0 : rate * forward;
        Reverse[l] = Times(reverse, scale);
        ReverseRate[l] = rate == 0 ? 0 : rate * reverse;
        double sign = x.Links[l] == LinkState.SlipForward ? running : x.Links[l] == LinkState.SlipBackward ? -reverseRunning : 0;
        Carried[l] = sign * scale;
        CarriedRate[l] = sign * rate;
    }

    private static double Times(double capacity, double scale) => scale == 1 ? capacity : scale * capacity;

    private void Loads(Mechanism m, RunState x)
    {
        for (int i = 0; i < m.Rotors; i++)
        {
            Viscous[i] = m.Viscous[i];
        }

        if (m.DriveRotor >= 0 && x.DriveLimit == 0)
        {
            Viscous[m.DriveRotor] += m.DriveSlope;
        }
    }
}
