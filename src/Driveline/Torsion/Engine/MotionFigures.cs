namespace Driveline.Torsion;

/// <summary>The figures of a mechanism that its motion between events depends on, copied, to know it again by.</summary>
internal sealed class MotionFigures
{
    private double[] inertia = [];
    private double[] viscous = [];
    private double[] stiffness = [];
    private double[] damping = [];

    // Links that hold a rotor to the ground share its torque by their breakaway torques.
    private double[] holds = [];
    private int[] from = [];
    private int[] to = [];
    private double slope;
    private double least;
    private double most;
    private int driven;
    private bool hasJoints;

    public void Take(Mechanism m)
    {
        if (inertia.Length != m.Rotors || stiffness.Length != m.Links)
        {
            inertia = new double[m.Rotors];
            viscous = new double[m.Rotors];
            stiffness = new double[m.Links];
            damping = new double[m.Links];
            holds = new double[m.Links];
            from = new int[m.Links];
            to = new int[m.Links];
        }

        Array.Copy(m.Inertia, inertia, inertia.Length);
        Array.Copy(m.Viscous, viscous, viscous.Length);
        Array.Copy(m.Stiffness, stiffness, stiffness.Length);
        Array.Copy(m.Damping, damping, damping.Length);
        Array.Copy(m.From, from, from.Length);
        Array.Copy(m.To, to, to.Length);
        for (int l = 0; l < holds.Length; l++)
        {
            holds[l] = Hold(m, l);
        }

        slope = m.DriveSlope;
        least = m.DriveLeast;
        most = m.DriveMost;
        driven = m.DriveRotor;
        hasJoints = m.HasJoints;
    }

    /// <summary>True when two mechanisms in the same states of their links move alike.</summary>
    public bool AreOf(Mechanism m)
    {
        bool same = inertia.Length == m.Rotors && stiffness.Length == m.Links
            && driven == m.DriveRotor && hasJoints == m.HasJoints && slope == m.DriveSlope && least == m.DriveLeast && most == m.DriveMost
            && stiffness.AsSpan().SequenceEqual(m.Stiffness) && inertia.AsSpan().SequenceEqual(m.Inertia)
            && damping.AsSpan().SequenceEqual(m.Damping) && viscous.AsSpan().SequenceEqual(m.Viscous)
            && from.AsSpan().SequenceEqual(m.From) && to.AsSpan().SequenceEqual(m.To);
        for (int l = 0; l < holds.Length && same; l++)
        {
            same = holds[l] == Hold(m, l);
        }

        return same;
    }

    private static double Hold(Mechanism m, int l) => m.To[l] == Mechanism.Ground && !m.IsElastic(l) ? m.Breakaway[l] : 0;
}
