using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Findings;
using Driveline.Quantities;
using Driveline.ShearBolts;

namespace Driveline.Cases.Questions;

/// <summary>
/// What the manual specifies for each device of a case: what its element says, else what the case says of the only one of its kind.
/// </summary>
internal static class CaseSpecified
{
    /// <summary>One for each device of the chain, in order from the tractor; null where nothing is stated.</summary>
    public static IReadOnlyList<ProtectiveDevice?> InOrder(CaseFile file, DrivelineChain chain, List<CaseError> errors) =>
        InOrder(file, chain, errors, null);

    /// <summary>The same, with what was specified for devices that were mapped before.</summary>
    public static IReadOnlyList<ProtectiveDevice?> InOrder(
        CaseFile file, DrivelineChain chain, List<CaseError> errors, SharedMapping? known)
    {
        IReadOnlyList<CaseObject> elements = CaseElements.All(file.Facts.Get(CaseFileMembers.Driveline));
        CaseObject? root = file.Facts.Get(CaseFileMembers.Specified);
        IReadOnlyList<ProtectiveDevice> devices = chain.Devices;
        if (root is null && !IsAnyStated(elements))
        {
            return [];
        }

        var specified = new ProtectiveDevice?[devices.Count];
        int device = 0;
        for (int k = 0; k < elements.Count && device < specified.Length; k++)
        {
            bool isClutch = IsClutch(elements[k]);
            if (!isClutch && elements[k][ElementMembers.ShearBolt] is null)
            {
                continue;
            }

            if (known is not null && known.TrySpecified(device, devices[device], out ProtectiveDevice? same))
            {
                specified[device] = same;
            }
            else
            {
                CaseObject? facts = elements[k].Get(ElementMembers.Specified)
                    ?? (root is not null && IsOnly(elements, isClutch) ? root : null);
                specified[device] = isClutch ? Clutch(facts, devices[device])
                    : Bolt(facts, devices[device], errors, known?.SpecifiedLike(device, devices[device]));
            }

            device++;
        }

        return specified;
    }

    private static bool IsAnyStated(IReadOnlyList<CaseObject> elements)
    {
        for (int k = 0; k < elements.Count; k++)
        {
            if (elements[k][ElementMembers.Specified] is not null)
            {
                return true;
            }
        }

        return false;
    }

    private static bool IsOnly(IReadOnlyList<CaseObject> elements, bool isClutch)
    {
        int count = 0;
        for (int k = 0; k < elements.Count; k++)
        {
            count += IsClutch(elements[k]) ? (isClutch ? 1 : 0) : !isClutch && elements[k][ElementMembers.ShearBolt] is not null ? 1 : 0;
        }

        return count == 1;
    }

    /// <summary>What the case says of the only device of a kind, when none of that kind is in its driveline.</summary>
    public static IEnumerable<Finding> NotListed(CaseFile file)
    {
        if (file.Facts.Get(CaseFileMembers.Specified) is not { } root)
        {
            yield break;
        }

        CaseObject[] elements = [.. CaseElements.All(file.Facts.Get(CaseFileMembers.Driveline))];
        if (root[SpecifiedMembers.ShearBolt] is not null && !elements.Any(e => e[ElementMembers.ShearBolt] is not null))
        {
            yield return Protection.NotListed.Bolt(root.PathOf(SpecifiedMembers.ShearBolt));
        }

        Member? clutch = root[SpecifiedMembers.SlipTorque] is not null ? SpecifiedMembers.SlipTorque
            : root[SpecifiedMembers.SpringLength] is not null ? SpecifiedMembers.SpringLength
            : null;
        if (clutch is not null && !elements.Any(IsClutch))
        {
            yield return Protection.NotListed.Clutch(root.PathOf(clutch));
        }
    }

    private static bool IsClutch(CaseObject element) => element[ElementMembers.SlipClutch] is not null
        || element[ElementMembers.CutOut] is not null;

    // In place of a fitted bolt that is the same one in another joint, the specified bolt is the same one too.
    private static ProtectiveDevice? Bolt(
        CaseObject? facts, ProtectiveDevice fitted, List<CaseError> errors, ShearBoltDevice? like)
    {
        if (facts?.Get(SpecifiedMembers.ShearBolt) is not { } named)
        {
            return null;
        }

        if (like is not null && fitted is ShearBoltDevice moved)
        {
            ShearBoltDevice? again = moved.Specified(like.BreakTorque.Joint.Bolt, out string? contradiction);
            if (contradiction is not null)
            {
                errors.Add(named.Contradiction(contradiction));
            }

            return again?.Numbered(like.PartNumber);
        }

        StatedBolt stated = BoltFacts.Stated(named, SpecifiedBoltMembers.Bolt);
        stated = named.Get(SpecifiedBoltMembers.PartNumber) is { } number ? stated.WithPartNumber(number) : stated;
        if (fitted is not ShearBoltDevice bolt)
        {
            return FittedBolt.Undated("specified bolt").With(stated).Device;
        }

        ShearBoltDevice? specified = bolt.Specified(stated, out string? problem);
        if (problem is not null)
        {
            errors.Add(named.Contradiction(problem));
        }

        return specified is not null ? specified.Numbered(stated.PartNumber)
            : problem is null && stated.PartNumber is not null ? FittedBolt.Undated("specified bolt").With(stated).Device
            : null;
    }

    private static StatedDevice? Clutch(CaseObject? facts, ProtectiveDevice fitted)
    {
        const string Name = "specified clutch";
        LengthBand? length = facts?.Get(SpecifiedMembers.SpringLength);
        return facts?.Get(SpecifiedMembers.SlipTorque) is { } torque
            ? length is null ? StatedDevice.Of(Name, fitted.Kind, fitted.AfterTrip, torque)
                : StatedDevice.Of(Name, fitted.Kind, fitted.AfterTrip, torque).WithSpringLength(length)
            : length is null ? null
            : StatedDevice.SetTo(Name, fitted.Kind, fitted.AfterTrip, length);
    }
}
