using Driveline.Quantities;

namespace Driveline.Chains;

/// <content>The driveline with another element in it.</content>
public sealed partial class DrivelineChain
{
    /// <summary>The same chain with one element in the place of another; branches are searched too.</summary>
    /// <exception cref="ArgumentException">The old element is not in the chain.</exception>
    internal DrivelineChain With(Element old, Element replacement)
    {
        Guard.NotNull(old, nameof(old));
        Guard.NotNull(replacement, nameof(replacement));
        if (IsAlike(old, replacement) && TryPlace(old, out int place))
        {
            var swapped = new Element[elements.Length];
            Array.Copy(elements, swapped, swapped.Length);
            swapped[place] = replacement;
            return new DrivelineChain(swapped, Swapped(old, replacement));
        }

        bool found = false;
        Element[] replaced = Replace(elements, old, replacement, ref found);
        return found ? Of(replaced) : throw new ArgumentException("'" + old.Name + "' is not an element of this chain.", nameof(old));
    }

    /// <summary>The same chain with other elements in the places of some; those that stay are the very same objects.</summary>
    /// <param name="changed">As many as there are elements; they are kept.</param>
    internal DrivelineChain With(Element[] changed)
    {
        DrivelineChain made = this;
        bool isInPlace = true;
        int count = 0;
        for (int k = 0; k < changed.Length; k++)
        {
            if (!ReferenceEquals(changed[k], elements[k]))
            {
                count++;
                isInPlace = isInPlace && IsAlike(elements[k], changed[k]) && TryPlace(elements[k], out _);
            }
        }

        if (count == 0)
        {
            return this;
        }

        if (isInPlace)
        {
            var nodes = (ChainNode[])Nodes.Clone();
            for (int k = 0; k < changed.Length; k++)
            {
                if (!ReferenceEquals(changed[k], elements[k]))
                {
                    Swap(nodes, elements[k], changed[k]);
                }
            }

            return new DrivelineChain(changed, nodes);
        }

        for (int k = 0; k < changed.Length; k++)
        {
            made = ReferenceEquals(changed[k], elements[k]) ? made : made.With(elements[k], changed[k]);
        }

        return made;
    }

    /// <summary>True when the positions of both chains come of elements in the same way: as many, and devices with as many parts.</summary>
    internal bool IsLaidLike(DrivelineChain other)
    {
        bool isLike = Nodes.Length == other.Nodes.Length;
        for (int k = 0; k < Nodes.Length && isLike; k++)
        {
            isLike = (Nodes[k].Element is null) == (other.Nodes[k].Element is null)
                && Nodes[k].Device?.ImpliedParts.Count == other.Nodes[k].Device?.ImpliedParts.Count;
        }

        return isLike;
    }

    // The one place of an element in a chain without branches: a branch is made anew, and the nodes must hold the new one.
    private bool TryPlace(Element old, out int place)
    {
        place = -1;
        for (int k = 0; k < elements.Length; k++)
        {
            if (elements[k] is Branch)
            {
                return false;
            }

            if (ReferenceEquals(elements[k], old))
            {
                if (place >= 0)
                {
                    return false;
                }

                place = k;
            }
        }

        return place >= 0;
    }

    // What lies behind an element feels its ratio and its efficiency, and where it stands the parts it implies.
    private static bool IsAlike(Element old, Element replacement) => (old, replacement) switch
    {
        (ProtectiveDevice before, ProtectiveDevice after) => before.ImpliedParts.Count == after.ImpliedParts.Count,
        (Part { Kind: PartKind.Gearbox } before, Part { Kind: PartKind.Gearbox } after) =>
            Nullable.Equals(before.Ratio, after.Ratio) && Nullable.Equals(before.Efficiency, after.Efficiency),
        (Part before, Part after) => before.Kind != PartKind.Gearbox && after.Kind != PartKind.Gearbox,
        _ => false,
    };

    private ChainNode[] Swapped(Element old, Element replacement)
    {
        var swapped = (ChainNode[])Nodes.Clone();
        Swap(swapped, old, replacement);
        return swapped;
    }

    private static void Swap(ChainNode[] swapped, Element old, Element replacement)
    {
        IReadOnlyList<Part> implied = (replacement as ProtectiveDevice)?.ImpliedParts ?? [];
        for (int k = 0; k < swapped.Length; k++)
        {
            if (!ReferenceEquals(swapped[k].Element, old))
            {
                continue;
            }

            swapped[k] = swapped[k].With(replacement);
            for (int j = 0; j < implied.Count; j++)
            {
                swapped[k - implied.Count + j] = swapped[k - implied.Count + j].With(implied[j]);
            }
        }
    }

    private static Element[] Replace(IReadOnlyList<Element> elements, Element old, Element replacement, ref bool found)
    {
        var replaced = new Element[elements.Count];
        for (int k = 0; k < replaced.Length; k++)
        {
            replaced[k] = elements[k];
            if (ReferenceEquals(elements[k], old))
            {
                replaced[k] = replacement;
                found = true;
            }
            else if (elements[k] is Branch branch)
            {
                replaced[k] = Branch.Of(branch.Name, branch.PowerShare, Replace(branch.Elements, old, replacement, ref found));
            }
        }

        return replaced;
    }
}
