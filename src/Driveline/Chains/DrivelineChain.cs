using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Chains;

/// <summary>The driveline in order from the tractor, with branches by power share. Immutable and safe to share.</summary>
/// <remarks>
/// A torque is meant at its element's own input. Referred to the PTO, T_pto = T · i / (η · s), with i the speed at the element
/// over PTO speed [-], η the efficiency up to it [-] and s the share of the power that passes it in normal work [-].
/// An efficiency nobody stated is the band 0.90 to 1.00, expected 0.97 (common practice for a bevel gearbox in good order);
/// a comparison that would look safer through it is never a Yes. The share of a branch is a share of the power that enters
/// the list of elements in which it stands.
/// </remarks>
public sealed partial class DrivelineChain
{
    /// <summary>Efficiency band used where none is stated.</summary>
    internal static readonly Band UnstatedEfficiency = new(0.90, 0.97, 1.00);

    private static readonly Basis EfficiencyPractice = Basis.CommonPractice("bevel gearbox efficiency 0.90 to 1.00, expected 0.97");

    private IReadOnlyList<Element>? shown;
    private IReadOnlyList<ProtectiveDevice>? devices;
    private IReadOnlyList<Part>? parts;

    private readonly Element[] elements;

    private DrivelineChain(Element[] elements, ChainNode[] nodes)
    {
        this.elements = elements;
        Nodes = nodes;
    }

    /// <summary>The elements as given, in order from the tractor.</summary>
    public IReadOnlyList<Element> Elements => shown ??= Array.AsReadOnly(elements);

    /// <summary>Every protective device of the chain and its branches, in order from the tractor.</summary>
    public IReadOnlyList<ProtectiveDevice> Devices => devices ??= Array.AsReadOnly(DevicesOf(Nodes));

    /// <summary>Every part of the chain and its branches, those implied by a device included, in order from the tractor.</summary>
    public IReadOnlyList<Part> Parts => parts ??= [.. Nodes.Select(n => n.Part).OfType<Part>()];

    internal ChainNode[] Nodes { get; }

    /// <summary>A chain of at least one element.</summary>
    /// <exception cref="ArgumentException">No element, or the power shares of the branches leave nothing for what follows.</exception>
    public static DrivelineChain Of(params Element[] elements)
    {
        Guard.NotNull(elements, nameof(elements));
        if (elements.Length == 0)
        {
            throw new ArgumentException("A driveline needs at least one element; got none.", nameof(elements));
        }

        var nodes = new ChainNode[Room(elements)];
        int count = 0;
        Append(nodes, ref count, elements, -1, 1, Band.Exactly(1), Band.Exactly(1));
        if (count < nodes.Length)
        {
            Array.Resize(ref nodes, count);
        }

        return new DrivelineChain((Element[])elements.Clone(), nodes);
    }

    /// <summary>A torque at an element, referred to the PTO: T_pto = T · i / (η · s).</summary>
    /// <returns>
    /// The PTO torque of normal work at which the element carries this torque; null when a speed ratio before it is not known.
    /// </returns>
    /// <exception cref="ArgumentException">The element is not in the chain.</exception>
    public TorqueBand? ReferToPto(Element element, TorqueBand torque)
    {
        Guard.NotNull(torque, nameof(torque));
        ChainNode node = Nodes[IndexOf(element)];
        return double.IsNaN(node.Ratio) ? null : TorqueBand.OfSi(node.ToPto(torque.SiBand), ReferralBasis(torque.Basis, node));
    }

    internal int IndexOf(Element element)
    {
        for (int k = 0; k < Nodes.Length; k++)
        {
            if (ReferenceEquals(Nodes[k].Element, element))
            {
                return k;
            }
        }

        throw new ArgumentException("'" + element.Name + "' is not an element of this chain.", nameof(element));
    }

    internal BandBasis ReferralBasis(BandBasis basis, ChainNode node)
    {
        for (int k = node.Parent; k >= 0; k = Nodes[k].Parent)
        {
            if (Nodes[k].EfficiencyAssumed)
            {
                return basis.With(EfficiencyPractice);
            }
        }

        return basis;
    }

    // Every element, the parts that a device implies, and what remains behind the last branch of a list.
    private static int Room(IReadOnlyList<Element> elements)
    {
        int room = 0;
        for (int k = 0; k < elements.Count; k++)
        {
            room += 1 + (elements[k] is ProtectiveDevice device ? device.ImpliedParts.Count : 0)
                + (elements[k] is Branch branch ? Room(branch.Elements) + (k == elements.Count - 1 ? 1 : 0) : 0);
        }

        return room;
    }

    private static void Append(
        ChainNode[] nodes, ref int count, IReadOnlyList<Element> elements, int parent, double ratio, Band efficiency, Band entering)
    {
        Band share = entering;
        Band taken = Band.Exactly(0);
        for (int k = 0; k < elements.Count; k++)
        {
            Element element = elements[k] ?? throw new ArgumentException("An element of a driveline is missing (null).", nameof(elements));
            if (element is ProtectiveDevice device)
            {
                foreach (Part implied in device.ImpliedParts)
                {
                    nodes[count] = new ChainNode(implied, new ChainPlace(parent, 1, Band.Exactly(1), false, ratio, efficiency, share));
                    parent = count++;
                }
            }

            double ownRatio = 1;
            Band ownEfficiency = Band.Exactly(1);
            bool assumed = false;
            if (element is Part { Kind: PartKind.Gearbox } gearbox)
            {
                ownRatio = gearbox.Ratio ?? double.NaN;
                assumed = gearbox.Efficiency is null;
                ownEfficiency = gearbox.Efficiency is { } stated ? Band.Exactly(stated) : UnstatedEfficiency;
            }

            nodes[count] = new ChainNode(
                element, new ChainPlace(parent, ownRatio, ownEfficiency, assumed, ratio, efficiency, share));
            parent = count++;
            ratio *= ownRatio;
            efficiency = efficiency.Times(ownEfficiency);
            if (element is Branch branch)
            {
                Band branchShare = branch.PowerShare.SiBand;
                taken += branchShare;
                bool isLast = k == elements.Count - 1;
                if (ShareProblem(branch, taken, isLast) is { } problem)
                {
                    throw new ArgumentException(problem, nameof(elements));
                }

                Append(nodes, ref count, branch.Elements, parent, ratio, efficiency, entering.Times(branchShare));
                share = entering.Times(Rest(taken));
                if (isLast && taken.Expected < 1 - 1e-9)
                {
                    nodes[count++] = new ChainNode(
                        null, new ChainPlace(parent, 1, Band.Exactly(1), false, ratio, efficiency, share));
                }
            }
        }
    }

    private static ProtectiveDevice[] DevicesOf(ChainNode[] nodes)
    {
        int count = 0;
        for (int k = 0; k < nodes.Length; k++)
        {
            count += nodes[k].Device is null ? 0 : 1;
        }

        var devices = new ProtectiveDevice[count];
        int at = 0;
        for (int k = 0; k < nodes.Length; k++)
        {
            if (nodes[k].Device is { } device)
            {
                devices[at++] = device;
            }
        }

        return devices;
    }

    /// <summary>Why the power shares of the branches of one list do not add up; null when they do.</summary>
    /// <param name="elements">The elements of the list.</param>
    /// <param name="index">The branch at which they exceed what there is.</param>
    internal static string? ShareProblem(IReadOnlyList<Element> elements, out int index)
    {
        Band taken = Band.Exactly(0);
        for (index = 0; index < elements.Count; index++)
        {
            if (elements[index] is not Branch branch)
            {
                continue;
            }

            taken += branch.PowerShare.SiBand;
            if (ShareProblem(branch, taken, index == elements.Count - 1) is { } problem)
            {
                return problem;
            }
        }

        return null;
    }

    private static string? ShareProblem(Branch branch, Band taken, bool isLast) => taken.Expected > 1 + 1e-9
        || (!isLast && taken.Expected > 1 - 1e-9)
        ? FormattableString.Invariant($"The power shares of the branches up to '{branch.Name}' add up to {taken.Expected:G4}")
            + "; they must leave something for what follows, and never exceed 1."
        : null;

    private static Band Rest(Band taken)
    {
        double low = Math.Max(0, 1 - taken.High);
        double expected = Math.Max(low, 1 - taken.Expected);
        return new Band(low, expected, Math.Max(expected, 1 - taken.Low));
    }
}
