namespace Driveline.Torsion;

/// <summary>A bound on how fast the state can change, 1/s.</summary>
/// <remarks>
/// Gershgorin's bound on the mass-normalised stiffness gives ω², on the damping a decay rate; their sum bounds the norm of
/// the system matrix in energy terms. Damped springs that come to rest add their k/c.
/// </remarks>
internal static class RateBound
{
    public static double Of(Mechanism m, RunState x, Plan plan)
    {
        double stiffest = 0;
        double dampest = 0;
        double relaxing = 0;
        for (int i = 0; i < m.Rotors; i++)
        {
            double own = Math.Sqrt(plan.Bodies.Inverse[plan.Bodies.Body[i]]);
            double k = 0;
            double c = 0;
            for (int other = 0; other < m.Rotors; other++)
            {
                c += plan.Bodies.Body[other] == plan.Bodies.Body[i] ? plan.Viscous[other] * own * own : 0;
            }

            for (int l = 0; l < m.Links; l++)
            {
                if (x.Links[l] != LinkState.Locked || !m.IsElastic(l))
                {
                    continue;
                }

                bool from = plan.Bodies.Body[m.From[l]] == plan.Bodies.Body[i];
                bool to = m.To[l] >= 0 && plan.Bodies.Body[m.To[l]] == plan.Bodies.Body[i];
                if (from || to)
                {
                    int far = from ? m.To[l] : m.From[l];
                    double there = far < 0 ? 0 : Math.Sqrt(plan.Bodies.Inverse[plan.Bodies.Body[far]]);
                    double gain = from && m.JointCosine[l] < 1 ? 1 / m.JointCosine[l] : 1;
                    k += m.Stiffness[l] * own * (own + there) * gain * gain;
                    c += m.Damping[l] * own * (own + there) * gain * gain;
                }
            }

            stiffest = Math.Max(stiffest, k);
            dampest = Math.Max(dampest, c);
        }

        for (int l = 0; l < m.Links; l++)
        {
            if (x.Relaxing[l])
            {
                relaxing = Math.Max(relaxing, m.Stiffness[l] / m.Damping[l]);
            }
        }

        return Math.Max(Math.Sqrt(stiffest) + dampest, relaxing);
    }
}
