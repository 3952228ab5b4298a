using Driveline.Torsion;

namespace Driveline.Loads;

/// <summary>What twists, slips or breaks between two lumps of the line; all at the PTO.</summary>
internal sealed class LineLink
{
    private NodeSet nodes;

    /// <summary>Twist over torque, rad/(N·m): compliances in series add. 0 is rigid.</summary>
    public double Compliance { get; private set; }

    /// <summary>Damping over stiffness, s: the least of those in series, so that swings are not damped away too soon.</summary>
    public double RelaxationS { get; private set; } = double.PositiveInfinity;

    public Coupling? Coupling { get; private set; }

    /// <summary>Name of the coupling, else of the first element, for messages and results.</summary>
    public string Name { get; private set; } = string.Empty;

    /// <summary>Positions of the chain that carry this link's torque.</summary>
    public ref readonly NodeSet Nodes => ref nodes;

    public bool IsRigid => Compliance == 0 && Coupling is null;

    /// <summary>c = τ · k; 0 for a rigid link.</summary>
    public double DampingNms => Compliance > 0 ? RelaxationS / Compliance : 0;

    public static LineLink Of(string name, Coupling coupling) => new() { Coupling = coupling, Name = name };

    /// <summary>A link that twists; an infinite stiffness is rigid.</summary>
    public static LineLink Of(string name, double stiffnessNmPerRad, double dampingNms) => new()
    {
        Compliance = 1 / stiffnessNmPerRad,
        RelaxationS = double.IsPositiveInfinity(stiffnessNmPerRad) ? double.PositiveInfinity : dampingNms / stiffnessNmPerRad,
        Name = name,
    };

    public static LineLink Rigid(string name) => new() { Name = name };

    public LineLink Carrying(int node)
    {
        nodes.Add(node);
        return this;
    }

    /// <summary>This link and the next with nothing but massless elements between them; null when both have a coupling.</summary>
    public LineLink? InSeries(LineLink next, Lump between)
    {
        if (Coupling is not null && next.Coupling is not null)
        {
            return null;
        }

        var joined = new LineLink
        {
            Compliance = Compliance + next.Compliance,
            RelaxationS = Math.Min(RelaxationS, next.RelaxationS),
            Coupling = Coupling ?? next.Coupling,
            Name = Coupling is not null || (next.Coupling is null && Compliance > 0) ? Name : next.Name,
        };
        joined.nodes.Add(in nodes);
        between.PassOn(ref joined.nodes);
        joined.nodes.Add(in next.nodes);
        return joined;
    }
}
