namespace Driveline.Torsion;

/// <summary>Angles, slips, work and heat of a whole stretch.</summary>
internal static class ModalEnergies
{
    public static void Add(
        Mechanism m, RunState x, Plan plan, ModalIntegrals integrals, ModalMotion motion, ModalStep whole, EnergyMeter energy)
    {
        integrals.Begin(motion, whole);
        for (int i = 0; i < m.Rotors; i++)
        {
            double turned = integrals.Integral(ModalRow.Speed(i));
            x.Angle[i] += turned;
            Rotor(m, x, plan, integrals, energy, i, turned);
        }

        for (int l = 0; l < m.Links; l++)
        {
            Link(m, x, plan, integrals, whole.Length, energy, l);
        }

        for (int k = 0; k < m.Torque.Length; k++)
        {
            Plan.Scale(x.Time, m.TorqueStart[k], m.TorqueRamp[k], out double scale, out double rate);
            int row = ModalRow.Speed(m.TorqueRotor[k]);
            energy.Torque[k] += scale == 0 ? 0 : m.Torque[k] * scale * integrals.Integral(row);
            energy.Torque[k] += rate == 0 ? 0 : m.Torque[k] * rate * integrals.Moment(row);
        }
    }

    private static void Rotor(
        Mechanism m, RunState x, Plan plan, ModalIntegrals integrals, EnergyMeter energy, int i, double turned)
    {
        bool driven = i == m.DriveRotor;
        bool onLine = driven && x.DriveLimit == 0;
        double square = m.Viscous[i] > 0 || (onLine && m.DriveSlope != 0) ? integrals.Square(ModalRow.Speed(i)) : 0;
        energy.SpeedSquare[i] += square;
        if (driven)
        {
            energy.AddDrive((plan.DriveConstant * turned) - (onLine ? m.DriveSlope * square : 0));
        }

        if (m.IsHeld(i))
        {
            energy.Held[i] += x.Speed[i] * integrals.Integral(ModalRow.Net(m, i));
        }
    }

    private static void Link(
        Mechanism m, RunState x, Plan plan, ModalIntegrals integrals, double length, EnergyMeter energy, int l)
    {
        LinkState state = x.Links[l];
        if (state == LinkState.Absent)
        {
            return;
        }

        double carried = plan.Carried[l];
        double rate = plan.CarriedRate[l];
        if (m.Damping[l] > 0 && (state == LinkState.Locked || x.Relaxing[l] || rate != 0))
        {
            energy.Damper[l] += m.Damping[l] * integrals.Square(ModalRow.TwistRate(m, l));
        }

        if (state == LinkState.Locked)
        {
            return;
        }

        int slip = ModalRow.SlipRate(m, l);
        double slipped = integrals.Integral(slip);
        x.Slip[l] += slipped;
        energy.Slip[l] += (carried == 0 ? 0 : carried * slipped) + (rate == 0 ? 0 : rate * integrals.Moment(slip));
        x.Twist[l] += m.IsElastic(l) && !x.Relaxing[l] ? rate / m.Stiffness[l] * length : 0;
    }
}
