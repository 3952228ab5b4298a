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

    private const double SameDiameterM = 1e-6;

    /// <summary>The graded plain bolt of a device; null when it is another device, or too little is told of it.</summary>
    public static ShearBolt? Of(ProtectiveDevice? device) => device is ShearBoltDevice
    {
        BreakTorque.Joint.Bolt: { Thread: not null, Grade: not null, NeedsNeck: false, NeckDiameter: null, IsSpecial: false } bolt
    }
        ? bolt
        : null;

    /// <summary>The same, or a plain pin, rod or spring pin whose material is told.</summary>
    public static ShearBolt? OrPinOf(ProtectiveDevice? device) => Of(device) ?? (device is ShearBoltDevice
    {
        BreakTorque.Joint.Bolt: { Thread: null, NeedsNeck: false, NeckDiameter: null, IsSpecial: false } pin
    } && (pin.FittedSpringPin is not null || pin.Material.IsIdentified)
        ? pin
        : null);

    /// <summary>True when both are of one size and one known material, wherever they are cut.</summary>
    public static bool IsSame(ShearBolt own, ShearBolt named) =>
        Equals(own.Thread, named.Thread) && Equals(own.Grade, named.Grade) && Equals(own.FittedSpringPin, named.FittedSpringPin)
        && (own.Thread is not null || Math.Abs(own.DiameterM - named.DiameterM) < SameDiameterM)
        && (own.Grade is not null || own.FittedSpringPin is not null
            || (own.Material.IsIdentified && own.Material.Equals(named.Material)));

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
