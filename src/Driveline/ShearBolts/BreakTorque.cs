using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.ShearBolts;

/// <summary>Torque at which a shear-bolt joint lets go, once.</summary>
/// <remarks>
/// T = m · A · τ · r, with m shear planes that share the load [-], A area of a plane [m²], τ = κ R_m ultimate shear strength
/// [Pa], r radius of the planes [m]. Low: the weakest bolt; one bolt alone when holes are worn or their fit is not known; bent
/// by a stated gap. High: the strongest bolt, all bolts together, and the drag of hub and faces on top; unbounded when the hub
/// is seized, not known, stiff without a measurement, or was last tried more than 12 months ago. Friction never raises low or expected.
/// Source: equilibrium; each strength carries its own.
/// </remarks>
/// <example>1/2-13 UNC SAE 2 hexagon cap screw through the shank in a 1 1/4 in shaft, hub free: at least 1197 N·m.</example>
public sealed class BreakTorque
{
    private IReadOnlyList<Finding>? findings;

    private BreakTorque(ShearBoltJoint joint)
    {
        Joint = joint;
        Plane = ShearPlane.Of(joint.Bolt);
        NoSteps none = default;
        Band free = Predict(Joint.RadiusM, ref none);
        BandBasis basis = JointBasis();
        IfHubFree = TorqueBand.OfSi(free, basis);
        Torque = Dragging(free, WithFriction(basis, joint.HubFriction));
    }

    // At another radius nothing changes but the torque: neither the plane nor where a number comes from.
    private BreakTorque(BreakTorque other, double radiusM)
    {
        Joint = other.Joint.AtRadius(radiusM);
        Plane = other.Plane;
        NoSteps none = default;
        Band free = Predict(radiusM, ref none);
        IfHubFree = TorqueBand.OfSi(free, other.IfHubFree.Basis);
        Torque = Dragging(free, other.Torque.Basis);
    }

    /// <summary>The joint.</summary>
    public ShearBoltJoint Joint { get; }

    /// <summary>Break torque at the joint, with hub, friction and holes as they are told.</summary>
    public TorqueBand Torque { get; }

    /// <summary>Break torque if the hub turned freely; flange friction stays in.</summary>
    public TorqueBand IfHubFree { get; }

    /// <summary>True when the bolt itself is bounded on at least one side: a least torque above 0, or a greatest one.</summary>
    public bool IsKnown => IfHubFree.SiBand.Low > 0 || IfHubFree.IsBounded;

    /// <summary>What a caller must notice.</summary>
    public IReadOnlyList<Finding> Findings => findings ??= JointFindings.Of(Joint, Plane, IfHubFree);

    internal ShearPlane Plane { get; }

    /// <summary>Greatest drag of the hub, N·m; +∞ when nothing bounds it.</summary>
    internal double DragNm => HubDragNm();

    /// <summary>The break torque of a joint.</summary>
    public static BreakTorque Of(ShearBoltJoint joint) => new(Guard.NotNull(joint, nameof(joint)));

    /// <summary>Break torques of many joints at once, T = m · A · τ · r; allocates nothing.</summary>
    /// <param name="planes">Number of shear planes that share the load; 1 or more.</param>
    /// <param name="areaM2">Area of one plane, m².</param>
    /// <param name="tauPa">Ultimate shear strength, Pa.</param>
    /// <param name="radiusM">Radius of the planes, m.</param>
    /// <param name="torqueNm">Receives the torques, N·m; as long as the others.</param>
    /// <exception cref="ArgumentException">The spans differ in length.</exception>
    /// <exception cref="ArgumentOutOfRangeException">No plane.</exception>
    /// <example>2 planes, 50 mm², 300 MPa, 60 mm: 1800 N·m.</example>
    public static void NewtonMeters(
        int planes, ReadOnlySpan<double> areaM2, ReadOnlySpan<double> tauPa, ReadOnlySpan<double> radiusM, Span<double> torqueNm)
    {
        Guard.Within(planes, 1, int.MaxValue, "Shear planes", nameof(planes));
        if (areaM2.Length != torqueNm.Length || tauPa.Length != torqueNm.Length || radiusM.Length != torqueNm.Length)
        {
            throw new ArgumentException(
                "Areas, strengths, radii and torques must be equally many; got " + FormattableString.Invariant(
                    $"{areaM2.Length}, {tauPa.Length}, {radiusM.Length} and {torqueNm.Length}."),
                nameof(torqueNm));
        }

        int i = 0;
#if NET
        // The product of the kernel below, lane by lane: the same bits.
        var many = new System.Numerics.Vector<double>(planes);
        int lanes = System.Numerics.Vector<double>.Count;
        for (; i <= torqueNm.Length - lanes; i += lanes)
        {
            (many * new System.Numerics.Vector<double>(areaM2.Slice(i, lanes)) * new System.Numerics.Vector<double>(tauPa.Slice(i, lanes))
                * new System.Numerics.Vector<double>(radiusM.Slice(i, lanes))).CopyTo(torqueNm.Slice(i, lanes));
        }
#endif
        NoSteps none = default;
        for (; i < torqueNm.Length; i++)
        {
            torqueNm[i] = NewtonMeters(planes, areaM2[i], tauPa[i], radiusM[i], ref none);
        }
    }

    /// <summary>The lines of the calculation: the low end, then the expected value, then the high end, as far as each is known.</summary>
    /// <remarks>
    /// The low end closes with the bent bolt when a gap is told; the high end with the faces' and the hub's drag when they are measured.
    /// </remarks>
    public IReadOnlyList<CalculationLine> Sheet()
    {
        var steps = StepList.New();
        Band free = Predict(Joint.RadiusM, ref steps);
        AddFriction(free.High, HubDragNm(), ref steps);
        return steps.Lines;
    }

    /// <summary>Where the numbers that the sheet begins with come from, by the code of their step.</summary>
    public IReadOnlyDictionary<string, BandBasis> SheetBases() => JointBases.Of(Joint);

    /// <summary>Where the width of the band comes from, the widest source first; worked out anew at each call.</summary>
    public IReadOnlyList<TorqueDoubt> Doubts() => JointDoubts.Of(this);

    /// <inheritdoc/>
    public override string ToString() => Torque.ToString();

    /// <summary>The break torque of the same joint at another radius of its planes.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The joint has no such radius.</exception>
    internal BreakTorque AtRadius(double radiusM) => new(this, radiusM);

    /// <summary>The torque of the same joint at another radius of its planes, N·m.</summary>
    internal Band AtRadiusNm(double radiusM)
    {
        NoSteps none = default;
        Band free = Predict(radiusM, ref none);
        return new Band(free.Low, free.Expected, free.High + HubDragNm());
    }

    internal static double NewtonMeters<S>(double planes, double areaM2, double tauPa, double radiusM, ref S log)
        where S : struct, ISteps
    {
        log.Add(ShearBoltSteps.Planes, planes);
        log.Add(ShearBoltSteps.Area, areaM2);
        log.Add(ShearBoltSteps.Radius, radiusM);
        double nm = planes * areaM2 * tauPa * radiusM;
        log.Add(ShearBoltSteps.Torque, nm);
        return nm;
    }

    private static BandBasis WithFriction(BandBasis basis, TorqueBand? friction) => friction is null
        ? basis
        : new BandBasis(
            basis.Low,
            basis.Expected,
            Basis.Weakest(basis.High, friction.Basis.High),
            basis.LowEnd,
            basis.HighEnd < friction.Basis.HighEnd ? basis.HighEnd : friction.Basis.HighEnd);

    private static double AddFriction<S>(double nm, double frictionNm, ref S log)
        where S : struct, ISteps
    {
        double sum = nm + frictionNm;
        if (frictionNm > 0 && !double.IsPositiveInfinity(sum))
        {
            log.Add(ShearBoltSteps.Friction, frictionNm);
            log.Add(ShearBoltSteps.Dragging, sum);
        }

        return sum;
    }

    private TorqueBand Dragging(Band free, BandBasis basis)
    {
        double dragNm = HubDragNm();
        return dragNm == 0 && ReferenceEquals(basis, IfHubFree.Basis) ? IfHubFree
            : TorqueBand.OfSi(new Band(free.Low, free.Expected, free.High + dragNm), basis);
    }

    private double HubDragNm()
    {
        double measured = Joint.HubFriction?.SiBand.High ?? double.PositiveInfinity;
        return Joint.IsHubSeenTooLongAgo ? double.PositiveInfinity : Joint.Hub switch
        {
            HubState.Seized => double.PositiveInfinity,
            HubState.Free => Joint.HubFriction?.SiBand.High ?? 0,
            _ => measured,
        };
    }

    private BandBasis JointBasis()
    {
        BandBasis basis = WithFriction(Plane.Load.Basis.With(Joint.Basis), Joint.FlangeFriction);
        return Joint.Bolts > 1 && !Joint.IsTight
            ? BandBasis.Combine(basis, new BandBasis(
                Joint.Basis,
                Basis.FromMemory("bolts in worn holes: midway between one bolt and all"),
                Joint.Basis,
                BandEnd.Limit,
                BandEnd.Limit))
            : basis;
    }

    private Band Predict<S>(double radiusM, ref S log)
        where S : struct, ISteps
    {
        double all = Joint.Bolts * Joint.PlanesPerBolt;
        double one = Joint.IsTight ? all : Joint.PlanesPerBolt;
        log.Begin(SheetEnd.Lowest);
        double low = End(one, Plane.Low, radiusM, ref log);
        if (Joint.StandOffM > 0)
        {
            low *= StandOff.Factor(
                Joint.StandOffM, Plane.Low.DiameterM, Plane.Low.Ratio, ShearRatios.YieldToTensile(Joint.Bolt.Material.ShearClass), ref log);
            log.Add(ShearBoltSteps.Bent, low);
        }

        log.Begin(SheetEnd.MostLikely);
        double expected = End((one + all) / 2, Plane.Expected, radiusM, ref log);
        log.Begin(SheetEnd.Highest);
        double high = AddFriction(End(all, Plane.High, radiusM, ref log), Joint.FlangeFriction?.SiBand.High ?? 0, ref log);
        return new Band(low, expected, high);
    }

    private static double End<S>(double planes, PlaneEnd end, double radiusM, ref S log)
        where S : struct, ISteps => end.IsUnbounded
        ? double.PositiveInfinity
        : NewtonMeters(planes, end.AreaM2, ShearPlane.ShearStrengthPa(end.Ratio, end.TensilePa, ref log), radiusM, ref log);
}
