using Driveline.Quantities;

namespace Driveline.Chains;

/// <summary>What lies between a position of a flattened chain and the PTO; see <see cref="ChainNode"/>. Immutable.</summary>
internal sealed class ChainPlace
{
    public ChainPlace(
        int parent, double ownRatio, Band ownEfficiency, bool efficiencyAssumed, double ratio, Band efficiency, Band share)
    {
        Parent = parent;
        OwnRatio = ownRatio;
        OwnEfficiency = ownEfficiency;
        EfficiencyAssumed = efficiencyAssumed;
        Ratio = ratio;
        Efficiency = efficiency;
        Share = share;
    }

    public int Parent { get; }

    public double OwnRatio { get; }

    public Band OwnEfficiency { get; }

    public bool EfficiencyAssumed { get; }

    public double Ratio { get; }

    public Band Efficiency { get; }

    public Band Share { get; }
}
