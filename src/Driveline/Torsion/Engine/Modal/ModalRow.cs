namespace Driveline.Torsion;

/// <summary>Numbers of the rows of a modal system: what of the motion each tells.</summary>
internal static class ModalRow
{
    public static int Count(Mechanism m) => (2 * m.Rotors) + (4 * m.Links);

    public static int Speed(int rotor) => rotor;

    /// <summary>Torque that a held rotor gives.</summary>
    public static int Net(Mechanism m, int rotor) => m.Rotors + rotor;

    public static int Torque(Mechanism m, int link) => (2 * m.Rotors) + link;

    public static int SlipRate(Mechanism m, int link) => (2 * m.Rotors) + m.Links + link;

    public static int TwistRate(Mechanism m, int link) => (2 * m.Rotors) + (2 * m.Links) + link;

    public static int Twist(Mechanism m, int link) => (2 * m.Rotors) + (3 * m.Links) + link;

    /// <summary>Reads all rows from a series of degree 0: what one state alone, or the inputs alone, make of them.</summary>
    public static void Read(Mechanism m, StepSeries series, Span<double> rows)
    {
        for (int i = 0; i < m.Rotors; i++)
        {
            rows[Speed(i)] = series.Speed[i * StepSeries.Stride];
            rows[Net(m, i)] = series.Net[i * StepSeries.Stride];
        }

        for (int l = 0; l < m.Links; l++)
        {
            int at = l * StepSeries.Stride;
            rows[Torque(m, l)] = series.Torque[at];
            rows[SlipRate(m, l)] = series.SlipRate[at];
            rows[TwistRate(m, l)] = series.Closing[at] - series.SlipRate[at];
            rows[Twist(m, l)] = series.Twist[at];
        }
    }
}
