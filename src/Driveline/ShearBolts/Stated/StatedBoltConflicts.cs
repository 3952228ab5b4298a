using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.ShearBolts;

/// <summary>What must hold between the facts told of a bolt.</summary>
internal static class StatedBoltConflicts
{
    public static IEnumerable<FactConflict> Of(StatedBolt bolt)
    {
        string body = bolt.PinDiameter is null ? BoltFact.Thread : BoltFact.PinDiameter;
        bool isPin = bolt.PinDiameter is not null;
        if (bolt.SpringPin is null && bolt.NeckDiameter is { } neck && Si.Meters(neck) > bolt.DiameterM * (1 + 1e-9))
        {
            yield return new FactConflict(
                BoltFact.NeckDiameter, body,
                "The neck " + FactConflict.Shown(Si.Meters(neck)) + " must not be thicker than the " + (isPin ? "pin " : "bolt ")
                    + FactConflict.Shown(bolt.DiameterM) + ".");
        }

        if (bolt.Thread is { } thread && bolt.Material.ProblemAt(thread) is { } problem)
        {
            yield return new FactConflict(BoltFact.Grade, BoltFact.Thread, problem);
        }

        if (isPin && bolt.Hardness is null && bolt.Material.Grade is { } ofBolts)
        {
            yield return new FactConflict(
                BoltFact.Grade, BoltFact.PinDiameter,
                "A pin without thread has no bolt grade: state its measured hardness or a rod material; got grade \""
                    + ofBolts.Designation + "\".");
        }

        if ((isPin || bolt.Thread is not null) && bolt.Hardness is { } hardness && !hardness.TryToTensile(out _))
        {
            yield return new FactConflict(BoltFact.Hardness, body, HardnessTables.OffTheTablesText(hardness));
        }

        if (isPin && bolt.PlaneThrough == PlaneThrough.Thread)
        {
            yield return new FactConflict(
                BoltFact.PlaneThrough, BoltFact.PinDiameter,
                "A pin's shear plane must be shank, neck, step or taper: it has no thread.");
        }

        if (bolt.ThreadLength is { } threaded && bolt.BoltLength is { } whole && Si.Meters(threaded) > Si.Meters(whole) * (1 + 1e-9))
        {
            yield return new FactConflict(
                BoltFact.ThreadLength, BoltFact.BoltLength,
                "The thread " + FactConflict.Shown(Si.Meters(threaded)) + " must not be longer than the bolt "
                    + FactConflict.Shown(Si.Meters(whole)) + ".");
        }

        if (bolt.ShankDiameter is { } shank && bolt.Thread is { } nominal
            && !(Si.Meters(shank) >= ShearBolt.LeastShank * nominal.MajorDiameterM
                && Si.Meters(shank) <= ShearBolt.MostShank * nominal.MajorDiameterM))
        {
            yield return new FactConflict(
                BoltFact.ShankDiameter, BoltFact.Thread,
                "A shank of " + FactConflict.Shown(Si.Meters(shank)) + " does not belong to a thread of "
                    + FactConflict.Shown(nominal.MajorDiameterM) + ": it is 0.8 to 1.06 times as thick.");
        }

        if (bolt.BoltLength is { } length && bolt.Thread is { } size && bolt.Material.Grade is { } grade && grade.TryAt(size, out _)
            && !grade.TryAt(size, length, out _))
        {
            yield return new FactConflict(
                BoltFact.BoltLength, BoltFact.Grade,
                grade.Designation + " is not held at " + size + " in that length; leave the length out when it is not sure.");
        }
    }
}
