using Driveline.Fasteners;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace Driveline.Tests.ShearBolts;

public class BreakTorqueLaws
{
    private static readonly string[] Sizes =
        ["1/4-20 UNC", "3/8-16 UNC", "1/2-13 UNC", "3/4-10 UNC", "1/2-20 UNF", "M6", "M8", "M10", "M12", "M16", "M20", "M10x1.25"];

    private static readonly PlaneThrough[] Planes = [PlaneThrough.NotKnown, PlaneThrough.Shank, PlaneThrough.Thread];

    // Within a ladder each grade is stronger than the one before it.
    private static readonly BoltGrade[][] Ladders =
    [
        [SaeJ429.Grade1, SaeJ429.Grade2, SaeJ429.Grade5, SaeJ429.Grade8],
        [Iso898.Class4_6, Iso898.Class5_6, Iso898.Class8_8, Iso898.Class10_9, Iso898.Class12_9],
        [Iso898.Class4_8, Iso898.Class5_8, Iso898.Class6_8, Iso898.Class8_8],
    ];

    [Law]
    public Property Torque_InRadius_IsLinear() => Prop.ForAll(Joints(), Factor(), (joint, factor) =>
    {
        Band once = BreakTorque.Of(joint).IfHubFree.SiBand;
        ShearBoltJoint wide = ShearBoltJoint.BoltCircle(joint.Bolt, Length.FromMeters(2 * joint.Radius.Meters * factor), joint.Bolts)
            .WithHoleFit(joint.HoleFit);
        return Near(once.Times(factor), BreakTorque.Of(wide).IfHubFree.SiBand);
    });

    [Law]
    public Property Torque_DoubleShear_IsTwiceSingle() => Prop.ForAll(Joints(), joint =>
        Near(BreakTorque.Of(joint).IfHubFree.SiBand.Times(2), BreakTorque.Of(joint.WithPlanes(2)).IfHubFree.SiBand));

    [Law]
    public Property Kernel_InEachFactor_IsLinear() => Prop.ForAll(Factor(), Factor(), (a, b) =>
    {
        NoSteps none = default;
        double once = BreakTorque.NewtonMeters(2, 5e-5, 3e8, 0.06, ref none);
        return Near(once * a * b, BreakTorque.NewtonMeters(2, 5e-5 * a, 3e8 * b, 0.06, ref none));
    });

    [Law]
    public Property Torque_InchesOrMillimeters_IsTheSame() => Prop.ForAll(Joints(), joint =>
    {
        double inches = 2 * joint.Radius.Meters / 0.0254;
        ShearBoltJoint inch = ShearBoltJoint.BoltCircle(joint.Bolt, Length.FromInches(inches), joint.Bolts).WithHoleFit(joint.HoleFit);
        ShearBoltJoint metric = ShearBoltJoint.BoltCircle(joint.Bolt, Length.FromMillimeters(inches * 25.4), joint.Bolts)
            .WithHoleFit(joint.HoleFit);
        return Near(BreakTorque.Of(inch).IfHubFree.SiBand, BreakTorque.Of(metric).IfHubFree.SiBand);
    });

    [Law]
    public Property Torque_Band_IsOrderedAndKeepsABasis() => Prop.ForAll(Joints(), joint =>
    {
        BreakTorque trip = BreakTorque.Of(joint);
        Band band = trip.Torque.SiBand;
        return band.Low <= band.Expected && band.Expected <= band.High && trip.Torque.Low.NewtonMeters > 0
            && trip.Torque.WeakestBasis.Kind is BasisKind.FromMemory or BasisKind.CommonPractice;
    });

    [Law]
    public Property Torque_StrongerGrade_NeverLowersAnEnd() => Prop.ForAll(
        Gen.Elements(Ladders).SelectMany(l => Gen.Choose(0, l.Length - 2).Select(i => (Weak: l[i], Strong: l[i + 1]))).ToArbitrary(),
        Gen.Elements(Sizes).ToArbitrary(),
        Gen.Elements(Planes).ToArbitrary(),
        (pair, size, plane) =>
        {
            ScrewThread thread = ScrewThread.Parse(size);
            if (!pair.Weak.TryAt(thread, out _) || !pair.Strong.TryAt(thread, out _))
            {
                return true;
            }

            Band weak = ShearPlane.Of(ShearBolt.Of(thread, pair.Weak).With(plane)).Load.SiBand;
            Band strong = ShearPlane.Of(ShearBolt.Of(thread, pair.Strong).With(plane)).Load.SiBand;
            return strong.Low >= weak.Low && strong.Expected >= weak.Expected && strong.High >= weak.High;
        });

    [Theory]
    [InlineData("4.6", 0.6, 400)]
    [InlineData("5.6", 0.6, 500)]
    [InlineData("8.8", 0.6, 800)]
    [InlineData("4.8", 0.5, 400)]
    [InlineData("5.8", 0.5, 500)]
    [InlineData("6.8", 0.5, 600)]
    [InlineData("10.9", 0.5, 1000)]
    public void Thread_EverySize_LowIsAtMostTheCodesReadingAndExpectedAtLeast(string grade, double alpha, double nominalMpa)
    {
        foreach (string size in new[] { "M6", "M8", "M8x1", "M10", "M10x1.25", "M12", "M12x1.25", "M14", "M16", "M16x1.5", "M20", "M20x1.5",
            "M24" })
        {
            ScrewThread thread = ScrewThread.Parse(size);
            if (!BoltGrade.Parse(grade).TryAt(thread, out _))
            {
                continue;
            }

            double code = alpha * nominalMpa * 1e6 * thread.StressAreaM2;
            Band load = ShearPlane.Of(ShearBolt.Of(thread, BoltGrade.Parse(grade)).With(PlaneThrough.Thread)).Load.SiBand;
            Assert.True(load.Low <= code * (1 + 1e-9), $"{size} {grade}: low {load.Low:F0} N above the code's {code:F0} N");
            Assert.True(load.Expected >= code, $"{size} {grade}: expected {load.Expected:F0} N below the code's {code:F0} N");
        }
    }

    [Law]
    public Property Thread_AtEachEnd_NeverTakesMoreThanTheShank() => Prop.ForAll(
        Gen.Elements(Ladders.SelectMany(l => l).ToArray()).ToArbitrary(),
        Gen.Elements(Sizes).ToArbitrary(),
        Gen.Elements(BodyStyle.NotKnown, BodyStyle.HexCapScrew, BodyStyle.SquareNeckBolt).ToArbitrary(),
        (grade, size, body) =>
        {
            ScrewThread thread = ScrewThread.Parse(size);
            if (!grade.TryAt(thread, out _))
            {
                return true;
            }

            ShearBolt bolt = ShearBolt.Of(thread, grade).WithBody(body);
            Band cut = ShearPlane.Of(bolt.With(PlaneThrough.Thread)).Load.SiBand;
            Band plain = ShearPlane.Of(bolt.With(PlaneThrough.Shank)).Load.SiBand;
            return cut.Low <= plain.Low && cut.Expected <= plain.Expected && cut.High <= plain.High;
        });

    [Law]
    public Property Torque_WornHoles_NeverRaiseLow() => Prop.ForAll(Joints(), joint =>
        BreakTorque.Of(joint.WithHoleFit(HoleFit.Worn)).Torque.SiBand.Low <= BreakTorque.Of(
            joint.WithHoleFit(HoleFit.Tight)).Torque.SiBand.Low);

    [Law]
    public Property Torque_HubAndFriction_NeverChangeLow() => Prop.ForAll(Joints(), Factor(), (joint, nm) =>
    {
        var drag = TorqueBand.Exactly(Torque.FromNewtonMeters(nm), Basis.Given("measured"));
        Band plain = BreakTorque.Of(joint.WithHub(HubState.Free)).Torque.SiBand;
        return new[] { HubState.NotKnown, HubState.Seized, HubState.Stiff, HubState.Free }.All(hub =>
        {
            Band dragging = BreakTorque.Of(joint.WithHub(hub).WithHubFriction(drag).WithFlangeFriction(drag)).Torque.SiBand;
            return dragging.Low == plain.Low && dragging.Expected == plain.Expected && dragging.High >= plain.High;
        });
    });

    [Law]
    public Property Torque_MoreStandOff_NeverRaisesLow() => Prop.ForAll(Joints(), Factor(), Factor(), (joint, gap, more) =>
    {
        Band near = BreakTorque.Of(joint.WithStandOff(Length.FromMillimeters(gap))).Torque.SiBand;
        Band far = BreakTorque.Of(joint.WithStandOff(Length.FromMillimeters(gap + more))).Torque.SiBand;
        return far.Low <= near.Low && near.Low <= BreakTorque.Of(joint).Torque.SiBand.Low && far.High == near.High;
    });

    [Law]
    public Property Torque_FactRemoved_NeverNarrows() => Prop.ForAll(
        Joints(),
        Gen.Elements(HubState.Seized, HubState.Stiff, HubState.Free).ToArbitrary(),
        Gen.Elements(HoleFit.Worn, HoleFit.Tight).ToArbitrary(),
        (joint, hub, fit) =>
        {
            ShearBolt bolt = joint.Bolt.PlaneThrough == PlaneThrough.NotKnown ? joint.Bolt.With(PlaneThrough.Thread) : joint.Bolt;
            ShearBoltJoint told = joint.With(bolt.WithBody(BodyStyle.HexCapScrew)).WithHub(hub).WithHoleFit(fit);
            Band band = BreakTorque.Of(told).Torque.SiBand;
            return new[]
            {
                told.WithHub(HubState.NotKnown),
                told.WithHoleFit(HoleFit.NotKnown),
                told.With(told.Bolt.With(PlaneThrough.NotKnown)),
                told.With(told.Bolt.WithBody(BodyStyle.NotKnown)),
                told.With(told.Bolt.WithMaterial(FastenerMaterial.NotKnown)),
                told.With(told.Bolt.With(PlaneThrough.Neck)),
            }.All(less =>
            {
                Band wider = BreakTorque.Of(less).Torque.SiBand;
                return wider.Low <= band.Low * (1 + 1e-12) && wider.High >= band.High * (1 - 1e-12);
            });
        });

    [Law]
    public Property Size_ThenBreak_GivesTheTorqueBack() => Prop.ForAll(Factor(), Gen.Choose(1, 4).ToArbitrary(), (scale, planes) =>
    {
        double nm = 500 * scale, tau = 3e8, radius = 0.05;
        double d = ShearPinSize.Diameter(Torque.FromNewtonMeters(nm), planes, Length.FromMeters(radius), Pressure.FromPascals(tau)).Meters;
        NoSteps none = default;
        return Near(nm, BreakTorque.NewtonMeters(planes, Math.PI / 4 * d * d, tau, radius, ref none))
            && BreakTorque.NewtonMeters(planes, Math.PI / 4 * d * d * 0.98, tau, radius, ref none) < nm;
    });

    [Law]
    public Property Fatigue_LargerPeak_NeverLastsLonger() => Prop.ForAll(Joints(), Factor(), Factor(), (joint, peak, more) =>
    {
        BoltFatigue small = BoltFatigue.LowerBoundLife(joint, Torque.FromNewtonMeters(peak * 10), 10);
        BoltFatigue large = BoltFatigue.LowerBoundLife(joint, Torque.FromNewtonMeters((peak + more) * 10), 10);
        return (large.Cycles ?? 0) <= (small.Cycles ?? 0);
    });

    private static bool Near(Band a, Band b) => Near(a.Low, b.Low) && Near(a.Expected, b.Expected) && Near(a.High, b.High);

    private static bool Near(double a, double b) => a.Equals(b) || Math.Abs(a - b) <= 1e-9 * Math.Abs(a);

    private static Arbitrary<double> Factor() => Gen.Choose(0, 1_000_000).Select(i => 0.1 * Math.Pow(100, i / 1e6)).ToArbitrary();

    private static Arbitrary<ShearBoltJoint> Joints() =>
        (from ladder in Gen.Elements(Ladders)
         from grade in Gen.Elements(ladder)
         from size in Gen.Elements(Sizes.Where(s => grade.TryAt(ScrewThread.Parse(s), out _)).ToArray())
         from plane in Gen.Elements(Planes)
         from bolts in Gen.Choose(1, 6)
         from fit in Gen.Elements(HoleFit.NotKnown, HoleFit.Worn, HoleFit.Tight)
         from mm in Gen.Choose(30, 400)
         select ShearBoltJoint.BoltCircle(ShearBolt.Of(ScrewThread.Parse(size), grade).With(plane), Length.FromMillimeters(mm), bolts)
             .WithHoleFit(fit))
        .ToArbitrary();
}
