namespace Driveline.Torsion;

/// <summary>Refers the builder's parts to the first rotor's speed and checks that they hang together.</summary>
internal static class MechanismOf
{
    private const int MostOnStack = 64;

    public static Mechanism Parts(TorsionModelBuilder parts)
    {
        int rotors = parts.Rotors.Count;
        if (rotors < 2)
        {
            throw new InvalidOperationException(
                FormattableString.Invariant($"A torsional model must have at least 2 rotors; got {rotors}."));
        }

        int torques = 0;
        for (int k = 0; k < parts.Loads.Count; k++)
        {
            torques += parts.Loads[k].IsViscous ? 0 : 1;
        }

        var m = new Mechanism(rotors, parts.Links.Count, torques);
        for (int l = 0; l < parts.Links.Count; l++)
        {
            m.From[l] = parts.Links[l].From;
            m.To[l] = parts.Links[l].To;
        }

        Ratios(parts, m);
        int held = 0;
        for (int i = 0; i < rotors; i++)
        {
            double r = m.RotorRatio[i];
            m.Inertia[i] = parts.Rotors[i].Inertia * r * r;
            m.InverseInertia[i] = 1 / m.Inertia[i];
            held += m.IsHeld(i) ? 1 : 0;
        }

        if (held == rotors)
        {
            throw new InvalidOperationException("At least one rotor must be free to move; all are held at their speeds.");
        }

        for (int l = 0; l < parts.Links.Count; l++)
        {
            Link(parts, m, l);
        }

        Loads(parts, m);
        return m;
    }

    // Walks the tree from the first rotor; a link met twice closes a ring, a rotor never met is detached.
    private static void Ratios(TorsionModelBuilder parts, Mechanism m)
    {
        bool isSmall = m.Links < MostOnStack;
        Span<int> walk = isSmall ? stackalloc int[m.Links + 1] : new int[m.Links + 1];
        Span<bool> used = isSmall ? stackalloc bool[m.Links] : new bool[m.Links];
        used.Clear();
        m.RotorRatio[0] = 1;
        walk[0] = 0;
        int met = 1;
        for (int at = 0; at < met; at++)
        {
            int i = walk[at];
            for (int l = 0; l < m.Links; l++)
            {
                if (used[l] || m.To[l] == Mechanism.Ground || (m.From[l] != i && m.To[l] != i))
                {
                    continue;
                }

                used[l] = true;
                int other = m.From[l] == i ? m.To[l] : m.From[l];
                if (m.RotorRatio[other] != 0)
                {
                    throw new InvalidOperationException(
                        "Shafts and couplings must form a tree; \"" + parts.Links[l].Name + "\" closes a ring.");
                }

                double ratio = parts.Links[l].Shaft?.Ratio ?? 1;
                m.RotorRatio[other] = m.From[l] == i ? m.RotorRatio[i] * ratio : m.RotorRatio[i] / ratio;
                walk[met++] = other;
            }
        }

        int lost = Array.IndexOf(m.RotorRatio, 0);
        if (lost >= 0)
        {
            throw new InvalidOperationException(
                "Every rotor must be joined to the others by shafts or couplings; \"" + parts.Rotors[lost].Name + "\" is detached.");
        }
    }

    private static void Link(TorsionModelBuilder parts, Mechanism m, int l)
    {
        LinkPart part = parts.Links[l];
        double r = m.RotorRatio[part.From];
        m.LinkRatio[l] = r;
        m.Start[l] = -1;
        m.RampTime[l] = -1;
        m.JointCosine[l] = 1;
        m.EndSlip[l] = double.PositiveInfinity;
        m.Stiffness[l] = double.PositiveInfinity;
        m.Breakaway[l] = m.ReverseBreakaway[l] = double.PositiveInfinity;
        if (part.Shaft is { } shaft)
        {
            m.Stiffness[l] = shaft.StiffnessNmPerRad * r * r;
            m.Damping[l] = shaft.DampingNmsPerRad * r * r;
            m.HasGap[l] = shaft.BacklashRad > 0;
            m.Backlash[l] = shaft.BacklashRad / r;
            m.JointCosine[l] = shaft.JointCosine;
            m.JointPhase[l] = shaft.JointPhaseRad;
            m.HasJoints |= shaft.JointCosine < 1;
        }
        else if (part.To >= 0 && m.IsHeld(part.From) && m.IsHeld(part.To))
        {
            throw new InvalidOperationException(
                "Two rotors held at their speeds must not be coupled directly; \"" + part.Name + "\" does.");
        }

        part.Coupling?.WriteTo(m, l, r);
        part.Obstacle?.WriteTo(m, l, r);
    }

    private static void Loads(TorsionModelBuilder parts, Mechanism m)
    {
        int k = 0;
        foreach (LoadPart load in parts.Loads)
        {
            double r = m.RotorRatio[load.Rotor];
            if (load.IsViscous)
            {
                m.Viscous[load.Rotor] += load.Coefficient * r * r;
                continue;
            }

            m.TorqueRotor[k] = load.Rotor;
            m.Torque[k] = load.Torque * r;
            m.TorqueStart[k] = load.Start;
            m.TorqueRamp[k++] = load.Rise;
        }

        if (parts.Drive is { } drive)
        {
            double r = m.RotorRatio[parts.DriveRotor];
            m.DriveRotor = parts.DriveRotor;
            m.DriveSlope = drive.SlopeNms * r * r;
            m.DriveAtRest = (drive.TorqueNm + (drive.SlopeNms * drive.SpeedRadPerS)) * r;
            m.DriveMost = drive.MostNm * r;
            m.DriveLeast = drive.LeastNm * r;
        }
    }
}
