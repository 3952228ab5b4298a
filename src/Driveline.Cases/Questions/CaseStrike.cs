using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Loads;
using UnitsNet;

namespace Driveline.Cases.Questions;

/// <summary>The strike of a case at an element of its chain.</summary>
/// <remarks>A force at a radius is a torque F · r; its way d is an angle d / r; the stiffness up to there is torque over angle.</remarks>
internal static class CaseStrike
{
    /// <summary>The strike; null when the case does not say what met what.</summary>
    public static SimulatedStrike? Of(CaseObject? facts, DrivelineChain chain)
    {
        if (facts is null || Struck(facts.Get(StrikeMembers.At), chain) is not { } at)
        {
            return null;
        }

        if (facts.Get(StrikeMembers.What) is StrikePlace.Pan or StrikePlace.Deck)
        {
            return SimulatedStrike.Beside(at, facts.Get(StrikeMembers.What));
        }

        SimulatedStrike? strike = facts.Get(StrikeMembers.Kind) switch
        {
            StrikeKind.Rigid => SimulatedStrike.Rigid(at, facts.Get(StrikeMembers.What)),
            StrikeKind.Yielding => Yielding(at, facts),
            StrikeKind.Springy when facts.Get(StrikeMembers.Stiffness) is { } stiffness =>
                SimulatedStrike.Springy(at, facts.Get(StrikeMembers.What), stiffness, facts.Get(StrikeMembers.Damping) ?? 0),
            StrikeKind.SwingBack when facts.Get(StrikeMembers.Swing) is { } swing => SwingBack(at, facts, swing),
            _ => null,
        };
        return facts.Get(StrikeMembers.Time) is { } time ? strike?.Starting(time) : strike;
    }

    private static Element? Struck(string? name, DrivelineChain chain)
    {
        Element[] named = name is null
            ? [.. chain.Parts.Where(p => p.Kind == PartKind.Rotor)]
            : [.. chain.Elements.Where(e => e.Name == name)];
        return named.Length == 1 ? named[0] : null;
    }

    private static SimulatedStrike? Yielding(Element at, CaseObject facts)
    {
        double? radius = facts.Get(StrikeMembers.Radius)?.Meters;
        double? nm = facts.Get(StrikeMembers.Torque) is { } torque ? Quantities.Si.NewtonMeters(torque)
            : facts.Get(StrikeMembers.Force) is { } force ? Quantities.Si.Newtons(force) * radius : null;
        double? rad = facts.Get(StrikeMembers.Travel) is { } travel ? Quantities.Si.Radians(travel)
            : facts.Get(StrikeMembers.Distance) is { } way ? Quantities.Si.Meters(way) / radius : null;
        return nm is { } yields && rad is { } turned
            ? SimulatedStrike.Yielding(at, facts.Get(StrikeMembers.What), RotationalStiffness.FromNewtonMetersPerRadian(yields / turned),
                Torque.FromNewtonMeters(yields))
            : null;
    }

    private static SimulatedStrike? SwingBack(Element at, CaseObject facts, Angle swing)
    {
        bool gives = facts.Get(StrikeMembers.Torque) is not null || facts.Get(StrikeMembers.Force) is not null;
        SimulatedStrike? after = gives ? Yielding(at, facts) : SimulatedStrike.Rigid(at, facts.Get(StrikeMembers.What));
        return facts.Get(StrikeMembers.SwingTorque) is { } resistance ? after?.AfterSwingBack(swing, resistance) : null;
    }
}
