using Driveline.Cases.Members;
using Driveline.Chains;
using Driveline.Loads;
using Driveline.Torsion;
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

        StrikePlace place = facts.Get(StrikeMembers.What);
        return place == StrikePlace.Deck ? SimulatedStrike.Beside(at)
            : ObstacleOf(facts) is { } obstacle ? SimulatedStrike.By(at, place, obstacle)
            : null;
    }

    // What became of a pan mostly nobody knows; wedged, it stops dead.
    private static Obstacle? ObstacleOf(CaseObject facts)
    {
        Duration time = facts.Get(StrikeMembers.Time) ?? Duration.Zero;
        return facts.Get(StrikeMembers.Kind) switch
        {
            StrikeKind.Rigid => Obstacle.RigidStop(time),
            StrikeKind.Yielding => Yielding(time, facts),
            StrikeKind.Springy when facts.Get(StrikeMembers.Stiffness) is { } stiffness =>
                Obstacle.SpringDamper(time, stiffness, facts.Get(StrikeMembers.Damping) ?? 0),
            StrikeKind.SwingBack when facts.Get(StrikeMembers.Swing) is { } swing => SwingBack(time, facts, swing),
            StrikeKind.NotKnown when facts.Get(StrikeMembers.What) == StrikePlace.Pan => Obstacle.RigidStop(time),
            _ => null,
        };
    }

    private static Element? Struck(string? name, DrivelineChain chain)
    {
        if (name is not null)
        {
            return CasePlaces.OnlyNamed(chain, name);
        }

        Part? found = null;
        foreach (Part part in chain.Parts)
        {
            if (part.Kind == PartKind.Rotor)
            {
                if (found is not null)
                {
                    return null;
                }

                found = part;
            }
        }

        return found;
    }

    private static Obstacle? Yielding(Duration time, CaseObject facts)
    {
        double? radius = facts.Si(StrikeMembers.Radius);
        double? nm = facts.Si(StrikeMembers.Torque) ?? (facts.Si(StrikeMembers.Force) * radius);
        double? rad = facts.Si(StrikeMembers.Travel) ?? (facts.Si(StrikeMembers.Distance) / radius);
        if (nm is not { } yields || rad is not { } turned)
        {
            return null;
        }

        var stiffness = RotationalStiffness.FromNewtonMetersPerRadian(yields / turned);
        var torque = Torque.FromNewtonMeters(yields);
        return facts.Si(StrikeMembers.Thickness) / radius is { } through
            ? Obstacle.Yielding(time, stiffness, torque, Angle.FromRadians(through))
            : Obstacle.Yielding(time, stiffness, torque);
    }

    private static Obstacle? SwingBack(Duration time, CaseObject facts, Angle swing)
    {
        if (facts.Get(StrikeMembers.SwingTorque) is not { } resistance)
        {
            return null;
        }

        bool gives = facts.IsStated(StrikeMembers.Torque) || facts.IsStated(StrikeMembers.Force);
        return facts.Get(StrikeMembers.Passes) == true ? Obstacle.Passing(time, swing, resistance)
            : (gives ? Yielding(time, facts) : Obstacle.RigidStop(time))?.AfterSwingBack(swing, resistance);
    }
}
