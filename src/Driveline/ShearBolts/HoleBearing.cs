using System.Diagnostics.CodeAnalysis;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.ShearBolts;

/// <summary>Torque at which the holes of the yoke begin to oval under the bolt.</summary>
/// <remarks>
/// T = m · 1.5 · d · t · f_y · r, with m planes that carry, d bolt diameter, t wall of the yoke, f_y its yield strength, r radius of
/// the planes. EN 1993-1-8:2005, Table 3.10, bearing of plate and pin, safety factor taken off. When several bolts sit in worn
/// holes, the low end counts one bolt. Needs the yoke (<see cref="ShearBoltJoint.WithYoke"/>).
/// In the shaft a through bolt bears most at the surface and not at all at the axis: T = d · D² · 1.5 · f_y / 6 with D the shaft
/// diameter and f_y the shaft's yield strength, from the peak pressure p = 6 T / (d D²) of a cross pin.
/// </remarks>
internal sealed class HoleBearing
{
    private static readonly Basis Clause =
        Basis.Published("EN 1993-1-8", "2005", "Table 3.10, bearing of plate and pin").ReadVia("a public extract of the page");

    private static readonly Basis CrossPin =
        Basis.Published("teaching pages on machine elements", "2023", "cross pin under torque: pressure by the section modulus d D² / 6")
            .ReadVia("the page itself");

    private HoleBearing(ShearBoltJoint joint, StressBand yield)
    {
        Joint = joint;
        double all = joint.Bolts * joint.PlanesPerBolt;
        double one = joint.IsTight ? all : joint.PlanesPerBolt;
        Band stress = yield.SiBand;
        Torque = TorqueBand.OfSi(
            new Band(At(joint, one, stress.Low), At(joint, (one + all) / 2, stress.Expected), At(joint, all, stress.High)),
            yield.Basis.With(Clause).With(joint.Basis));
        if (joint.Layout == JointLayout.ThroughShaft && joint.ShaftYield is { } shaft)
        {
            InShaft = TorqueBand.OfSi(
                shaft.SiBand.Times(1.5 * joint.Bolt.DiameterM * 4 * joint.RadiusM * joint.RadiusM / 6),
                shaft.Basis.With(CrossPin).With(joint.Basis));
        }
    }

    /// <summary>The joint.</summary>
    public ShearBoltJoint Joint { get; }

    /// <summary>Torque at which the holes of the yoke begin to oval.</summary>
    public TorqueBand Torque { get; }

    /// <summary>
    /// Torque at which the hole of the shaft begins to oval; null unless a bolt crosses a shaft whose yield strength is told.
    /// </summary>
    public TorqueBand? InShaft { get; }

    internal double FirstOvalNm => Math.Min(Torque.SiBand.Low, InShaft?.SiBand.Low ?? double.PositiveInfinity);

    /// <summary>The bearing of a joint whose yoke is told.</summary>
    /// <exception cref="ArgumentException">Thickness and strength of the yoke are not told.</exception>
    public static HoleBearing Of(ShearBoltJoint joint) => TryOf(joint, out HoleBearing? bearing)
        ? bearing!
        : throw new ArgumentException("The joint's yoke must be told, with its thickness and yield strength; got neither.", nameof(joint));

    /// <summary>The bearing of a joint; false when its yoke is not told.</summary>
    public static bool TryOf(ShearBoltJoint joint, [NotNullWhen(true)] out HoleBearing? bearing)
    {
        bearing = Guard.NotNull(joint, nameof(joint)).YokeYield is { } yield ? new HoleBearing(joint, yield) : null;
        return bearing is not null;
    }

    internal static double NewtonMeters<S>(double planes, double diameterM, double thicknessM, double yieldPa, double radiusM, ref S log)
        where S : struct, ISteps
    {
        double nm = planes * 1.5 * diameterM * thicknessM * yieldPa * radiusM;
        log.Add(ShearBoltSteps.HoleYield, nm);
        return nm;
    }

    private static double At(ShearBoltJoint joint, double planes, double yieldPa)
    {
        NoSteps none = default;
        return NewtonMeters(planes, joint.Bolt.DiameterM, joint.YokeThicknessM, yieldPa, joint.RadiusM, ref none);
    }
}
