namespace Driveline.Protection;

/// <summary>A share of the specimens and the probability that one load reaches them.</summary>
internal readonly struct StrengthNode
{
    public StrengthNode(double weight, double reached)
    {
        Weight = weight;
        Reached = reached;
    }

    public double Weight { get; }

    public double Reached { get; }
}
