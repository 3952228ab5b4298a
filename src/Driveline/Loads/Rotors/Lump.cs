namespace Driveline.Loads;

/// <summary>What turns as one between two places of the line that twist or slip; its inertia at the PTO.</summary>
internal sealed class Lump
{
    /// <summary>Inertia, kg·m²; +∞ when held at its speed.</summary>
    public double InertiaKgM2 { get; set; }

    /// <summary>The part of that inertia that is half of a shaft's own: it stands for what is spread along the shaft.</summary>
    public double OfShaftsKgM2 { get; private set; }

    /// <summary>Name of what lies here, for messages.</summary>
    public string Name { get; set; } = string.Empty;

    /// <summary>Positions of the chain whose input torque is that of what lies before: no inertia of the lump comes first.</summary>
    public List<int> AtInput { get; } = [];

    /// <summary>Positions of the chain with inertia of the lump before and behind them, halves of shafts not counted.</summary>
    public List<int> Between { get; } = [];

    public bool IsStruck { get; set; }

    public bool TakesLoad { get; set; }

    public bool IsShaftsOnly => InertiaKgM2 > 0 && InertiaKgM2 <= OfShaftsKgM2;

    private List<int> Next => InertiaKgM2 > OfShaftsKgM2 ? Between : AtInput;

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
        Next.Add(node);
        InertiaKgM2 += inertiaKgM2;
        Name = Name.Length == 0 ? name : Name;
    }

    /// <summary>Joins the next lump to this one, the link between them being rigid.</summary>
    public void Join(Lump next, IEnumerable<int> link)
    {
        List<int> list = Next;
        list.AddRange(link);
        list.AddRange(next.AtInput);
        Between.AddRange(next.Between);
        InertiaKgM2 += next.InertiaKgM2;
        OfShaftsKgM2 += next.OfShaftsKgM2;
        Name = Name.Length == 0 ? next.Name : Name;
        IsStruck |= next.IsStruck;
        TakesLoad |= next.TakesLoad;
    }
}
