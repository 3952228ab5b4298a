namespace Driveline.Loads;

/// <summary>Positions of a chain. Those of usual chains are bits of a word; the others stand in a list.</summary>
internal struct NodeSet
{
    private const int Bits = 64;

    private ulong near;
    private List<int>? far;

    public readonly bool Contains(int node) => node < Bits ? (near & (1UL << node)) != 0 : far?.Contains(node) == true;

    public void Add(int node)
    {
        if (node < Bits)
        {
            near |= 1UL << node;
        }
        else
        {
            (far ??= []).Add(node);
        }
    }

    public void Add(in NodeSet others)
    {
        near |= others.near;
        if (others.far is { } distant)
        {
            (far ??= []).AddRange(distant);
        }
    }
}
