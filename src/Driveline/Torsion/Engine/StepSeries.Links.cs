namespace Driveline.Torsion;

/// <content>Terms of the links: springs, play, joints.</content>
internal sealed partial class StepSeries
{
    // Without joints only springs and inertias feed on one another; the other links follow from them afterwards.
    private void Straight(Mechanism m, Plan plan, double h)
    {
        double[] w = Speed;
        double[] e = Twist;
        double[] torque = Torque;
        double[] closing = Closing;
        double[] net = residue;
        double[] inverse = plan.Inverse;
        RigidBodies bodies = plan.Bodies;
        bool hasHanging = bodies.HasHanging;
        double[] viscous = plan.Viscous;
        Spring[] springs = plan.Springs;
        int count = plan.SpringCount;
        int rotors = m.Rotors;
        for (int j = 0; j <= Degree; j++)
        {
            double gain = h / (j + 1);
            for (int i = 0, at = j; i < rotors; i++, at += Stride)
            {
                net[i] = (j == 0 ? plan.Input[i] : j == 1 ? plan.InputRate[i] * h : 0) - (viscous[i] * w[at]);
            }

            for (int n = 0; n < count; n++)
            {
                ref readonly Spring spring = ref springs[n];
                int at = spring.At + j;
                double d = w[spring.FromAt + j];
                if (spring.To >= 0)
                {
                    d -= w[spring.ToAt + j];
                }

                double t = (spring.Stiffness * e[at]) + (spring.Damping * d);
                closing[at] = d;
                torque[at] = t;
                e[at + 1] = gain * d;
                net[spring.From] -= t;
                if (spring.To >= 0)
                {
                    net[spring.To] += t;
                }
            }

            if (hasHanging)
            {
                bodies.Torques(m, residue, Torque, j);
                for (int i = 0, at = j; i < rotors; i++, at += Stride)
                {
                    Net[at] = -net[i];
                    w[at + 1] = gain * bodies.Acceleration(i);
                }

                continue;
            }

            for (int i = 0, at = j; i < rotors; i++, at += Stride)
            {
                Net[at] = -net[i];
                w[at + 1] = gain * net[i] * inverse[i];
            }
        }

        for (int i = 0; i < rotors; i++)
        {
            int first = i * Stride;
            for (int j = 0; j <= Degree; j++)
            {
                Angle[first + j + 1] = h / (j + 1) * w[first + j];
            }
        }
    }

    private void Other(Mechanism m, RunState x, Plan plan, int l, double h)
    {
        bool locked = x.Links[l] == LinkState.Locked;
        int to = m.To[l];
        int first = l * Stride;
        for (int j = 0; j <= Degree; j++)
        {
            int at = first + j;
            double gain = h / (j + 1);
            double closing = Speed[(m.From[l] * Stride) + j] - (to >= 0 ? Speed[(to * Stride) + j] : 0);
            double slip = 0;
            if (x.Links[l] == LinkState.Absent)
            {
                closing = 0;
                Torque[at] = 0;
            }
            else if (locked)
            {
                if (!plan.Bodies.HasHanging)
                {
                    Torque[at] = -plan.Bodies.GroundShare(l) * Net[(m.From[l] * Stride) + j];
                }
                else if (to == Mechanism.Ground && plan.Bodies.GroundShare(l) == 0)
                {
                    Torque[at] = 0;
                }
            }
            else
            {
                double torque = j == 0 ? plan.Carried[l] : j == 1 ? plan.CarriedRate[l] * h : 0;
                Torque[at] = torque;
                slip = closing - Unwind(m, x, l, j, at, torque, h, gain, plan);
            }

            Closing[at] = closing;
            SlipRate[at] = slip;
            Slip[at + 1] = gain * slip;
        }
    }

    private void Link(Mechanism m, RunState x, Plan plan, int l, int j, double h, double gain)
    {
        int at = (l * Stride) + j;
        int to = m.To[l];
        double closing = m.JointCosine[l] < 1
            ? joints.Speed(m, l, j, Speed, Angle) - (to >= 0 ? Speed[(to * Stride) + j] : 0)
            : Speed[(m.From[l] * Stride) + j] - (to >= 0 ? Speed[(to * Stride) + j] : 0);
        Closing[at] = closing;
        double torque = 0;
        double slip = 0;
        switch (x.Links[l])
        {
            case LinkState.Absent:
                Closing[at] = 0;
                Twist[at + 1] = 0;
                break;
            case LinkState.Locked:
                if (m.IsElastic(l))
                {
                    torque = (m.Stiffness[l] * Twist[at]) + (m.Damping[l] * closing);
                    Twist[at + 1] = gain * closing;
                }

                break;
            default:
                torque = j == 0 ? plan.Carried[l] : j == 1 ? plan.CarriedRate[l] * h : 0;
                slip = closing - Unwind(m, x, l, j, at, torque, h, gain, plan);
                break;
        }

        Torque[at] = torque;
        SlipRate[at] = slip;
        Slip[at + 1] = gain * slip;
        if (m.JointCosine[l] < 1)
        {
            transferred[at] = joints.Torque(l, j, Torque);
        }
    }

    // Twist rate of a slipping link's spring: none, that of a torque that rises linearly, or the damped return to it.
    private double Unwind(Mechanism m, RunState x, int l, int j, int at, double torque, double h, double gain, Plan plan)
    {
        if (!m.IsElastic(l))
        {
            return 0;
        }

        if (x.Relaxing[l])
        {
            double rate = (torque - (m.Stiffness[l] * Twist[at])) / m.Damping[l];
            Twist[at + 1] = gain * rate;
            return rate;
        }

        if (j > 0)
        {
            return 0;
        }

        double steady = plan.CarriedRate[l] / m.Stiffness[l];
        Twist[at + 1] = h * steady;
        return steady;
    }
}
