using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.ShearBolts;

namespace Driveline.Protection;

/// <summary>A plain bolt known by size and grade, as a manual names one, and what makes another more than it.</summary>
internal static class NamedBolt
{
    // Sizes and strengths of the inch and the metric system that stand for each other differ by less.
    private const double SameSize = 0.02;
    private const double SameStrength = 0.04;

    /// <summary>The graded plain bolt of a device; null when it is another device, or too little is told of it.</summary>
    public static ShearBolt? Of(ProtectiveDevice? device) => device is ShearBoltDevice
    {
        BreakTorque.Joint.Bolt: { Thread: not null, Grade: not null, NeedsNeck: false, NeckDiameter: null, IsSpecial: false } bolt
    }
        ? bolt
        : null;

    /// <summary>True when it is of a higher grade or thicker, and in neither less.</summary>
    public static bool IsMore(ShearBolt own, ShearBolt named) =>
        Size(own, named) > 1 - SameSize && Strength(own, named) > 1 - SameStrength && IsHigherOrThicker(own, named);

    /// <summary>True when it is of a higher grade or thicker, whatever it is otherwise.</summary>
    public static bool IsHigherOrThicker(ShearBolt own, ShearBolt named) =>
        Size(own, named) > 1 + SameSize || Strength(own, named) > 1 + SameStrength;

    /// <summary>Size and grade as people ask for them, e.g. "M10 ISO 8.8".</summary>
    public static string Words(ShearBolt bolt) => bolt.Thread!.Designation + " " + bolt.Grade!.Designation;

    private static double Size(ShearBolt own, ShearBolt named) => own.DiameterM / named.DiameterM;

    private static double Strength(ShearBolt own, ShearBolt named) => LeastTensilePa(own) / LeastTensilePa(named);

    private static double LeastTensilePa(ShearBolt bolt) =>
        bolt.Grade!.TryAt(bolt.Thread!, out GradeStrength? at) ? at!.Tensile.SiBand.Low : double.NaN;
}
