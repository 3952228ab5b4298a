using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.ShearBolts;

namespace Driveline.Cases.Members;

/// <summary>A shear bolt as a case states it: fitted, or named by the manual.</summary>
internal static class BoltFacts
{
    private const string UsualName = "shear bolt";

    // Whatever Undated asks of the bolt itself.
    private static readonly HashSet<Member> OfBolt =
    [
        ShearBoltMembers.Name, ShearBoltMembers.Thread, ShearBoltMembers.Grade, ShearBoltMembers.Hardness, ShearBoltMembers.PinDiameter,
        ShearBoltMembers.SpringPin, ShearBoltMembers.PlaneThrough, ShearBoltMembers.NeckDiameter, ShearBoltMembers.HeadMarks,
        ShearBoltMembers.BoltLength, ShearBoltMembers.ThreadLength, ShearBoltMembers.ShankDiameter, ShearBoltMembers.PartNumber,
        ShearBoltMembers.BodyStyle,
    ];

    public static string NameOf(CaseObject facts) => facts.Get(ShearBoltMembers.Name) ?? UsualName;

    /// <summary>The fitted bolt in its joint.</summary>
    public static FittedBolt Fitted(CaseObject facts, DateTime? day)
    {
        FittedBolt undated = facts.Made(Undated);
        return day is { } today ? undated.On(today) : undated;
    }

    /// <summary>True for a fact of the joint, which tells nothing of the bolt itself.</summary>
    public static bool IsOfJoint(Member fact) => !OfBolt.Contains(fact);

    /// <summary>Takes what is told of the bolt from other facts, which differ in facts of the joint alone.</summary>
    public static void ShareBolt(CaseObject facts, CaseObject from)
    {
        facts.Make(InJoint(facts, from.Made(Undated).Stated));
    }

    private static FittedBolt Undated(CaseObject facts)
    {
        StatedBolt stated = Stated(facts, ShearBoltMembers.Bolt);
        stated = facts.Get(ShearBoltMembers.HeadMarks) is { } marks ? stated.With(marks) : stated;
        stated = facts.Get(ShearBoltMembers.BoltLength) is { } length ? stated.WithBoltLength(length) : stated;
        stated = facts.Get(ShearBoltMembers.ThreadLength) is { } thread ? stated.WithThreadLength(thread) : stated;
        stated = facts.Get(ShearBoltMembers.ShankDiameter) is { } shank ? stated.WithShankDiameter(shank) : stated;
        stated = facts.Get(ShearBoltMembers.PartNumber) is { } number ? stated.WithPartNumber(number) : stated;
        stated = facts.IsStated(ShearBoltMembers.BodyStyle) ? stated.With(facts.Get(ShearBoltMembers.BodyStyle)) : stated;
        return InJoint(facts, stated);
    }

    private static FittedBolt InJoint(CaseObject facts, StatedBolt stated)
    {
        FittedBolt bolt = FittedBolt.Open(NameOf(facts)).At(facts.Place).With(stated)
            .WithLayout(facts.Get(ShearBoltMembers.Layout))
            .WithHub(facts.Get(ShearBoltMembers.Hub))
            .WithHoleFit(facts.Get(ShearBoltMembers.HoleFit));
        bolt = facts.Get(ShearBoltMembers.ShaftDiameter) is { } shaft ? bolt.WithShaftDiameter(shaft) : bolt;
        bolt = facts.Get(ShearBoltMembers.Radius) is { } radius ? bolt.WithRadius(radius) : bolt;
        bolt = facts.Get(ShearBoltMembers.BoltCircleDiameter) is { } circle ? bolt.WithBoltCircleDiameter(circle) : bolt;
        bolt = facts.Get(ShearBoltMembers.Bolts) is { } bolts ? bolt.WithBolts(bolts) : bolt;
        bolt = facts.Get(ShearBoltMembers.Planes) is { } planes ? bolt.WithPlanes(planes) : bolt;
        bolt = facts.Get(ShearBoltMembers.HubSeen) is { } seen ? bolt.WithHubSeen(seen) : bolt;
        bolt = facts.Get(ShearBoltMembers.LastTrip) is { } trip ? bolt.WithLastTrip(trip) : bolt;
        bolt = facts.Get(ShearBoltMembers.HubFriction) is { } friction ? bolt.WithHubFriction(friction) : bolt;
        bolt = facts.Get(ShearBoltMembers.HubDiameter) is { } hub ? bolt.WithHubDiameter(hub) : bolt;
        bolt = facts.Get(ShearBoltMembers.HoleDiameter) is { } hole ? bolt.WithHoleDiameter(hole) : bolt;
        bolt = facts.Get(ShearBoltMembers.GripLength) is { } grip ? bolt.WithGripLength(grip) : bolt;
        bolt = facts.Get(ShearBoltMembers.StandOff) is { } gap ? bolt.WithStandOff(gap) : bolt;
        bolt = facts.Get(ShearBoltMembers.YokeThickness) is { } wall ? bolt.WithYokeThickness(wall) : bolt;
        bolt = facts.Get(ShearBoltMembers.YokeYieldStrength) is { } yield ? bolt.WithYokeYield(yield) : bolt;
        bolt = facts.Get(ShearBoltMembers.YokeTensileStrength) is { } tensile ? bolt.WithYokeTensile(tensile) : bolt;
        bolt = facts.Get(ShearBoltMembers.YokeEdge) is { } edge ? bolt.WithYokeEdge(edge) : bolt;
        bolt = facts.Get(ShearBoltMembers.ShaftYieldStrength) is { } shaftYield ? bolt.WithShaftYield(shaftYield) : bolt;
        return bolt.Closed();
    }

    /// <summary>The bolt itself, by the rows that say which it is.</summary>
    public static StatedBolt Stated(CaseObject facts, BoltRows rows)
    {
        StatedBolt bolt = facts.Get(rows.SpringPin) is { } spring ? StatedBolt.OfSpringPin(spring)
            : facts.Get(rows.PinDiameter) is { } pin ? StatedBolt.OfPin(pin)
            : facts.Get(rows.Thread) is { } thread ? StatedBolt.OfThread(thread)
            : StatedBolt.NotKnown;
        bolt = bolt.Open().With(facts.Get(rows.Grade) ?? MaterialName.NotKnown).With(facts.Get(rows.PlaneThrough));
        bolt = facts.Get(rows.Hardness) is { } hardness ? bolt.With(hardness) : bolt;
        bolt = facts.Get(rows.NeckDiameter) is { } neck ? bolt.WithNeckDiameter(neck) : bolt;
        return bolt.Closed();
    }
}
