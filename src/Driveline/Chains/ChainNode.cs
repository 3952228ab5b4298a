using Driveline.Quantities;

namespace Driveline.Chains;

/// <summary>One position of a flattened chain, with what lies between it and the PTO. Parents come before children. Immutable.</summary>
internal sealed class ChainNode
{
    private readonly ChainPlace place;

    public ChainNode(Element? element, ChainPlace place)
    {
        Element = element;
        Part = element as Part;
        Device = element as ProtectiveDevice;
        this.place = place;
    }

    /// <summary>The element; null for the unlisted rest of the machine behind a branch.</summary>
    public Element? Element { get; }

    /// <summary>Index of the position before it; -1 at the PTO.</summary>
    public int Parent => place.Parent;

    /// <summary>Output speed over input speed of the element itself; NaN when not known.</summary>
    public double OwnRatio => place.OwnRatio;

    /// <summary>Efficiency of the element itself.</summary>
    public Band OwnEfficiency => place.OwnEfficiency;

    /// <summary>True when the element's efficiency is a practice band, not a stated fact.</summary>
    public bool EfficiencyAssumed => place.EfficiencyAssumed;

    /// <summary>Speed at the element's input over PTO speed; NaN when not known.</summary>
    public double Ratio => place.Ratio;

    /// <summary>Efficiency from the PTO to the element's input.</summary>
    public Band Efficiency => place.Efficiency;

    /// <summary>Share of the PTO power that passes the element in normal work.</summary>
    public Band Share => place.Share;

    public Part? Part { get; }

    public ProtectiveDevice? Device { get; }

    /// <summary>True when torque passes it as it is: neither ratio nor loss.</summary>
    public bool IsThrough => OwnRatio == 1 && OwnEfficiency.Low == 1 && OwnEfficiency.High == 1;

    /// <summary>The same position with another element of the same ratio and efficiency.</summary>
    public ChainNode With(Element element) => new(element, place);

    /// <summary>T_pto = T · i / (η · share): the PTO torque of normal work at which the element carries T.</summary>
    public Band ToPto(Band torque) => double.IsNaN(Ratio)
        ? new Band(0, double.PositiveInfinity, double.PositiveInfinity)
        : torque.Times(Ratio).Over(Efficiency.Times(Share));

    /// <summary>T = T_pto · η · share / i: the torque at the element when the PTO carries T_pto in normal work.</summary>
    public Band FromPto(Band torque) => double.IsNaN(Ratio)
        ? new Band(0, double.PositiveInfinity, double.PositiveInfinity)
        : torque.Times(Efficiency.Times(Share)).Times(1 / Ratio);
}
