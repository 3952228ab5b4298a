using Driveline.Quantities;

namespace Driveline.ShearBolts;

/// <summary>Where the numbers of a joint come from, by the code of the step that takes them in.</summary>
internal static class JointBases
{
    public static IReadOnlyDictionary<string, BandBasis> Of(ShearBoltJoint joint)
    {
        ShearBolt bolt = joint.Bolt;
        BandBasis layout = BandBasis.Of(joint.Basis);
        var bases = new Dictionary<string, BandBasis>(StringComparer.Ordinal)
        {
            [ShearBoltSteps.Planes.Code] = layout,
            [ShearBoltSteps.Radius.Code] = layout,
        };
        if (bolt.FittedSpringPin is { } pin)
        {
            BandBasis load = BandBasis.Of(pin.PublishedLoad.Basis);
            bases[ShearBoltSteps.Tensile.Code] = load;
            bases[ShearBoltSteps.Area.Code] = load;
        }
        else
        {
            AddBolt(bolt, bases);
        }

        TorqueBand?[] drags = [joint.FlangeFriction, joint.HubFriction];
        foreach (TorqueBand drag in drags.OfType<TorqueBand>())
        {
            bases[ShearBoltSteps.Friction.Code] = bases.TryGetValue(ShearBoltSteps.Friction.Code, out BandBasis? other)
                ? BandBasis.Combine(other, drag.Basis) : drag.Basis;
        }

        return bases;
    }

    private static void AddBolt(ShearBolt bolt, Dictionary<string, BandBasis> bases)
    {
        if (bolt.Material.Tensile is { } tensile)
        {
            bases[ShearBoltSteps.Tensile.Code] = tensile.Basis;
        }

        bool isShank = bolt.NeedsNeck || bolt.PlaneThrough == PlaneThrough.Shank;
        bool isThread = !bolt.NeedsNeck && bolt.PlaneThrough == PlaneThrough.Thread;
        BandBasis shank = ShearRatios.Of(bolt.Material.ShearClass, PlaneThrough.Shank).Ratio.Basis;
        BandBasis thread = ShearRatios.Of(bolt.Material.ShearClass, PlaneThrough.Thread).Ratio.Basis;
        bases[ShearBoltSteps.Ratio.Code] = isShank ? shank : isThread ? thread : BandBasis.Combine(shank, thread);
        bases[ShearBoltSteps.Area.Code] = bolt.NeedsNeck ? PlaneAreas.Neck(bolt).AreaBasis
            : isShank ? PlaneAreas.Plain(bolt).AreaBasis
            : isThread ? PlaneAreas.Threaded(bolt).AreaBasis
            : BandBasis.Combine(PlaneAreas.Plain(bolt).AreaBasis, PlaneAreas.Threaded(bolt).AreaBasis);
    }
}
