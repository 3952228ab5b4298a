using Driveline.Chains;
using Driveline.Loads;
using UnitsNet;

namespace Driveline.Cases.Questions;

/// <summary>The strike of a case at an element of its chain.</summary>
/// <remarks>A force at a radius is a torque F · r; its way d is an angle d / r; the stiffness up to there is torque over angle.</remarks>
internal static class CaseStrike
{
    /// <summary>The strike; null when the case does not say what met what.</summary>
    public static SimulatedStrike? Of(StrikeFacts? facts, DrivelineChain chain)
    {
        if (facts is null || Struck(facts.At, chain) is not { } at)
        {
            return null;
        }

        if (facts.What is StrikePlace.Pan or StrikePlace.Deck)
        {
            return SimulatedStrike.Beside(at, facts.What);
        }

        SimulatedStrike? strike = facts.Kind switch
        {
            StrikeKind.Rigid => SimulatedStrike.Rigid(at, facts.What),
            StrikeKind.Yielding => Yielding(at, facts),
            StrikeKind.Springy when facts.Stiffness is { } stiffness => SimulatedStrike.Springy(at, facts.What, stiffness, facts.Damping ?? 0),
            StrikeKind.SwingBack when facts.Swing is { } swing => SwingBack(at, facts, swing),
            _ => null,
        };
        return facts.Time is { } time ? strike?.Starting(time) : strike;
    }

    private static Element? Struck(string? name, DrivelineChain chain)
    {
        Element[] named = name is null
            ? [.. chain.Parts.Where(p => p.Kind == PartKind.Rotor)]
            : [.. chain.Elements.Where(e => e.Name == name)];
        return named.Length == 1 ? named[0] : null;
    }

    private static SimulatedStrike? Yielding(Element at, StrikeFacts facts)
    {
        double? radius = facts.Radius?.Meters;
        double? nm = facts.Torque is { } torque ? Quantities.Si.NewtonMeters(torque) : facts.Force is { } force ? Quantities.Si.Newtons(force) * radius : null;
        double? rad = facts.Travel is { } travel ? Quantities.Si.Radians(travel) : facts.Distance is { } way ? Quantities.Si.Meters(way) / radius : null;
        return nm is { } yields && rad is { } turned
            ? SimulatedStrike.Yielding(at, facts.What, RotationalStiffness.FromNewtonMetersPerRadian(yields / turned), Torque.FromNewtonMeters(yields))
            : null;
    }

    private static SimulatedStrike? SwingBack(Element at, StrikeFacts facts, Angle swing)
    {
        bool gives = facts.Torque is not null || facts.Force is not null;
        SimulatedStrike? after = gives ? Yielding(at, facts) : SimulatedStrike.Rigid(at, facts.What);
        return facts.SwingTorque is { } resistance ? after?.AfterSwingBack(swing, resistance) : null;
    }
}
