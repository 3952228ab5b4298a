namespace Driveline.Loads;

/// <summary>What turns as one between two places of the line that twist or slip; its inertia at the PTO.</summary>
internal sealed class Lump
{
    private NodeSet atInput;
    private NodeSet between;

    /// <summary>Inertia, kg·m²; +∞ when held at its speed.</summary>
    public double InertiaKgM2 { get; set; }

    /// <summary>The part of that inertia that is half of a shaft's own: it stands for what is spread along the shaft.</summary>
    public double OfShaftsKgM2 { get; private set; }

    /// <summary>Name of what lies here, for messages.</summary>
    public string Name { get; set; } = string.Empty;

    public bool IsStruck { get; set; }

    public bool TakesLoad { get; set; }

    private bool HasInertia => InertiaKgM2 > OfShaftsKgM2;

    public bool IsShaftsOnly => InertiaKgM2 > 0 && InertiaKgM2 <= OfShaftsKgM2;

    /// <summary>
    /// True for a position of the chain whose input torque is that of what lies before: no inertia of the lump comes first.
    /// </summary>
    public bool IsAtInput(int node) => atInput.Contains(node);

    /// <summary>True for a position with inertia of the lump before and behind it, halves of shafts not counted.</summary>
    public bool IsBetween(int node) => between.Contains(node);

    /// <summary>What of the line a massless lump passes on, when the links on both of its sides become one.</summary>
    public void PassOn(ref NodeSet nodes) => nodes.Add(in atInput);

    /// <summary>Puts half of a shaft here.</summary>
    public void AddShaft(double inertiaKgM2)
    {
        InertiaKgM2 += inertiaKgM2;
        OfShaftsKgM2 += inertiaKgM2;
    }

    /// <summary>Gives what shafts have here to another lump.</summary>
    public void MoveTo(Lump other)
    {
        other.AddShaft(OfShaftsKgM2);
        InertiaKgM2 = 0;
        OfShaftsKgM2 = 0;
    }

    /// <summary>Puts a rigid element here.</summary>
    public void Add(int node, double inertiaKgM2, string name)
    {
        if (HasInertia)
        {
            between.Add(node);
        }
        else
        {
            atInput.Add(node);
        }

        InertiaKgM2 += inertiaKgM2;
        Name = Name.Length == 0 ? name : Name;
    }

    /// <summary>Joins the next lump to this one, the link between them being rigid.</summary>
    public void Join(Lump next, LineLink link)
    {
        if (HasInertia)
        {
            between.Add(in link.Nodes);
            between.Add(in next.atInput);
        }
        else
        {
            atInput.Add(in link.Nodes);
            atInput.Add(in next.atInput);
        }

        between.Add(in next.between);
        InertiaKgM2 += next.InertiaKgM2;
        OfShaftsKgM2 += next.OfShaftsKgM2;
        Name = Name.Length == 0 ? next.Name : Name;
        IsStruck |= next.IsStruck;
        TakesLoad |= next.TakesLoad;
    }
}
