using Driveline.Advice;
using Driveline.Cases;
using Driveline.Clutches;
using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.ShearBolts;
using FsCheck;
using FsCheck.Fluent;
using UnitsNet;

namespace Driveline.Tests.Cases;

/// <summary>Makes cases of every shape for the laws: each fact stated or not, each number anywhere in its range.</summary>
internal static class CaseGenerator
{
    private static readonly Basis Given = Basis.Given("the case");

    public static Gen<CaseFile> Case => Gen.Choose(int.MinValue, int.MaxValue).Select(seed => Make(new Random(seed)));

    public static CaseFile Make(Random r) => WithRootSpecified(Facts(r), r);

    // At the root the manual's bolt is for the only one.
    private static CaseFile WithRootSpecified(CaseFile file, Random r) => Bolts(file.Driveline) > 1 ? file : file.WithSpecified(SpecifiedFacts.Empty.WithShearBolt(ManualsBolt(r)));

    private static int Bolts(IEnumerable<DrivelineElement> list) => list.Sum(e => (e.ShearBolt is null ? 0 : e.Specified is null ? 1 : 2) + Bolts(e.Driveline));

    private static SpecifiedBoltFacts ManualsBolt(Random r) => SpecifiedBoltFacts.Empty
        .WithThread(Maybe(r, x => Pick(x, "M10", "1/2-13 UNC")))
        .WithHardness(Maybe(r, x => Pick(x, "HRC 28", "HV 220")))
        .WithPlaneThrough(Choice<PlaneThrough>(r));

    private static CaseFile Facts(Random r) => CaseFile.Empty
        .WithTitle(Maybe(r, Text))
        .WithNotes(Maybe(r, Text))
        .WithDate(Value(r, Date))
        .WithTractor(TractorFacts.Empty
            .WithPtoPower(Value(r, x => Power.FromWatts(Spread(x, 1, 1e6))))
            .WithEnginePower(Value(r, x => Power.FromKilowatts(Spread(x, 1, 1500))))
            .WithPtoType(Value(r, x => x.Next(1, 5)))
            .WithFlywheelInertia(Value(r, x => MassMomentOfInertia.FromKilogramSquareMeters(Spread(x, 0.01, 900))))
            .WithTorqueReserve(Value(r, x => Spread(x, 0.01, 1.9)))
            .WithEngineTorqueLine(r.Next(2) == 0 ? null : EngineTorqueLineFacts.Empty.WithTorque(Torque.FromNewtonMeters(Spread(r, 1, 1e4))).WithFall(Value(r, x => Spread(x, 0.1, 1e5))))
            .WithPtoSpeed(Value(r, x => RotationalSpeed.FromRevolutionsPerMinute(Spread(x, 1, 2999))))
            .WithStubDamagedAt(Maybe(r, Torques))
            .WithStubYieldStrength(Maybe(r, Stresses))
            .WithPtoClutch(PtoClutchFacts.Empty.WithKind(Choice<PtoClutchKind>(r)).WithCapacity(Maybe(r, Torques))))
        .WithImplement(ImplementFacts.Empty
            .WithKind(Choice<MachineKind>(r))
            .WithWidth(Value(r, x => Length.FromFeet(Spread(x, 1, 90))))
            .WithWorkSpeed(Value(r, x => Speed.FromMilesPerHour(Spread(x, 0.1, 30))))
            .WithMassFlow(Value(r, x => MassFlow.FromTonnesPerHour(Spread(x, 1, 900)))))
        .WithDriveline(Elements(r, 2))
        .WithStock(Maybe(r, x => Pick(x, "M10, 8.8", "3/8-16 UNC, SAE 5, 0.45; M10, 8.8")))
        .WithWork(WorkFacts.Empty
            .WithSteadyPeak(Maybe(r, Torques))
            .WithMeanPower(Maybe(r, x => PowerBand.Exactly(Power.FromMechanicalHorsepower(Spread(x, 1, 900)), Given)))
            .WithPeakFactor(Maybe(r, x => RatioBand.Between(1, Spread(x, 1, 4), 20, Given)))
            .WithPeaksPerHour(Value(r, x => Spread(x, 1e-3, 1e6)))
            .WithEngagement(EngagementFacts.Empty.WithManner(Choice<EngagementManner>(r)).WithPeak(Maybe(r, Torques))
                .WithRampTime(Maybe(r, x => TimeBand.Exactly(Duration.FromSeconds(Spread(x, 0.01, 19)), Given))).WithLoad(Maybe(r, Torques)))
            .WithPeaks(Choice<PeaksFrom>(r))
            .WithTripsInNormalWork(Value(r, x => x.Next(2) == 0)))
        .WithStrike(r.Next(2) == 0 ? null : StrikeFacts.Empty
            .WithKind(StrikeKind.Yielding)
            .WithWhat(Choice<StrikePlace>(r))
            .WithForce(Force.FromNewtons(Spread(r, 1, 9e5)))
            .WithRadius(Value(r, x => Length.FromInches(Spread(x, 1, 90))))
            .WithTime(Value(r, x => Duration.FromSeconds(Spread(x, 1e-3, 9)))))
        .WithComplaint(Complaint(r))
        .WithDeck(DeckFacts.Empty
            .WithFrontTip(Value(r, x => Length.FromInches(Spread(x, 1, 30))))
            .WithBladeSpan(Value(r, x => Length.FromFeet(Spread(x, 1, 15))))
            .WithManualFrontBelowRear(Value(r, x => Length.FromMillimeters(Spread(x, 0.1, 600) - 300))))
        .WithCosts(CostFacts.Empty.WithCurrency(Text(r))
            .WithHourOfWork(Maybe(r, Money))
            .WithOptions(Enumerable.Range(0, r.Next(3)).Select(_ => CostOptionFacts.Empty
                .WithName(Text(r))
                .WithKind(Choice<OptionKind>(r))
                .WithOutlay(Maybe(r, Money))
                .WithFailsToProtect(Maybe(r, x => RatioBand.Between(0, Spread(x, 0.001, 0.5), 1, Given)))
                .WithSlipCare(Choice<SlipCare>(r)))));

    // A fact stands, is answered "notKnown", or is left out.
    private static ComplaintFacts Complaint(Random r) => FactQuestion.All
        .Where(_ => r.Next(3) == 0)
        .Aggregate(
            ComplaintFacts.Empty.WithSymptom(Choice<Symptom>(r)).WithStrikePeak(Maybe(r, Torques)),
            (told, q) => q.Code == "hoursBetweenBreaks" && r.Next(2) == 0
                ? told.WithHoursBetweenBreaks(Spread(r, 0.01, 1e5))
                : told.With(Fact.Of(q.Code, Pick(r, [.. q.Answers, Fact.NotKnown]))));

    private static MoneyBand Money(Random r) => r.Next(2) == 0
        ? MoneyBand.Exactly(Spread(r, 0.1, 1e6), Given)
        : MoneyBand.Between(1, Spread(r, 1, 10), Spread(r, 10, 1e6), Given);

    private static List<DrivelineElement> Elements(Random r, int depth) =>
        Enumerable.Range(0, r.Next(4)).Select(_ => Element(r, depth)).ToList();

    private static DrivelineElement Element(Random r, int depth) => r.Next(depth > 0 ? 9 : 8) switch
    {
        0 => Limits(r, DrivelineElement.Named(ElementKind.Shaft, Text(r)).WithLength(Value(r, x => Length.FromInches(Spread(x, 1, 90)))).WithDamping(Value(r, x => Spread(x, 0.1, 1e5)))
            .WithStiffness(Maybe(r, x => StiffnessBand.Exactly(RotationalStiffness.FromNewtonMetersPerRadian(Spread(x, 10, 1e6)), Given)))),
        7 => Limits(r, DrivelineElement.Named(Pick(r, ElementKind.Shaft, ElementKind.Yoke, ElementKind.Part, ElementKind.OverrunClutch), Text(r))),
        1 => DrivelineElement.OfShearBolt(Bolt(r)).WithSpecified(r.Next(3) == 0 ? SpecifiedFacts.Empty.WithShearBolt(ManualsBolt(r)) : null),
        2 => Limits(r, DrivelineElement.Named(ElementKind.Gearbox, Text(r)).WithRatio(Value(r, x => Spread(x, 0.05, 20))).WithEfficiency(Value(r, x => Spread(x, 0.5, 1)))),
        3 => Limits(r, DrivelineElement.Named(ElementKind.UniversalJoint, Text(r)).WithAngle(Value(r, x => Angle.FromDegrees(Spread(x, 0.1, 89))))),
        4 => Limits(r, DrivelineElement.Named(Pick(r, ElementKind.Rotor, ElementKind.Flywheel), Text(r)).WithInertia(Value(r, x => MassMomentOfInertia.FromPoundSquareFeet(Spread(x, 0.1, 1e5))))),
        5 => DrivelineElement.OfSlipClutch(SlipClutch(r)).WithSpecified(r.Next(2) == 0 ? null : SpecifiedFacts.Empty.WithSlipTorque(Torques(r))),
        6 => DrivelineElement.OfCutOut(CutOut(r)),
        _ => DrivelineElement.OfBranch(Text(r), RatioBand.Exactly(Spread(r, 0.01, 0.2), Given), Elements(r, depth - 1)),
    };

    private static DrivelineElement Limits(Random r, DrivelineElement part)
    {
        DrivelineElement limited = part.WithDamagedAt(Maybe(r, Torques)).WithYieldStrength(Maybe(r, Stresses)).WithMaterial(Maybe(r, Text));
        limited = r.Next(2) == 0 ? limited : limited.WithOuterDiameter(Length.FromInches(Spread(r, 1, 10))).WithInnerDiameter(Value(r, x => Length.FromInches(Spread(x, 0.1, 0.9))));
        return r.Next(2) == 0 ? limited : limited.WithRatedTorque(Torque.FromPoundForceFeet(Spread(r, 1, 1e4))).WithOverloadFactor(RatioBand.Exactly(2, Given)).WithOverloadSource(Maybe(r, Text));
    }

    private static ShearBoltFacts Bolt(Random r) => ShearBoltFacts.Empty
        .WithName(Maybe(r, Text))
        .WithThread(Maybe(r, x => Pick(x, "1/2-13 UNC", "M10", "M10x1.25", "3/8 in")))
        .WithGrade(Maybe(r, x => Pick(x, "unmarked", "rod SAE 1018")))
        .WithHeadMarks(Maybe(r, Text))
        .WithLayout(Choice<JointLayout>(r))
        .WithShaftDiameter(Value(r, x => Length.FromInches(Spread(x, 0.25, 7))))
        .WithBolts(Value(r, x => x.Next(1, 25)))
        .WithPlaneThrough(Choice<PlaneThrough>(r))
        .WithHub(Choice<HubState>(r))
        .WithHubFriction(Maybe(r, Torques))
        .WithHoleFit(Choice<HoleFit>(r))
        .WithPermittedHole(Value(r, x => Length.FromMillimeters(Spread(x, 2, 99))))
        .WithStandOff(Value(r, x => Length.FromMillimeters(Spread(x, 0.01, 99))))
        .WithLastTrip(Value(r, x => new DateTime(1990, 1, 1).AddDays(x.Next(5000))));

    // Everything the reader takes: days before every date of a case, measures that do not contradict each other.
    private static SlipClutchFacts SlipClutch(Random r)
    {
        SlipClutchFacts clutch = SlipClutchFacts.Empty
            .WithName(Maybe(r, Text))
            .WithOuterDiameter(Value(r, x => Length.FromMillimeters(Spread(x, 110, 300))))
            .WithInnerDiameter(Value(r, x => Length.FromMillimeters(Spread(x, 20, 100))))
            .WithFaces(Value(r, x => x.Next(1, 41)))
            .WithFacing(Maybe(r, x => Pick(x, "FE", "moulded organic lining", "Sintered metal")))
            .WithSprings(ClutchSpringsFacts.Empty.WithCoil(CoilSpringsFacts.Empty
                .WithCount(Value(r, x => x.Next(1, 49)))
                .WithRate(Value(r, x => ForcePerLength.FromPoundsForcePerInch(Spread(x, 10, 5000))))
                .WithFreeLength(Value(r, x => Length.FromMillimeters(Spread(x, 41, 90))))
                .WithSolidLength(Value(r, x => Length.FromMillimeters(Spread(x, 5, 40))))
                .WithEnds(Choice<CoilEnds>(r))))
            .WithSpringLength(Maybe(r, x => LengthBand.Exactly(Length.FromInches(Spread(x, 0.5, 4)), Given)))
            .WithThreadPitch(Value(r, x => Length.FromMillimeters(Spread(x, 0.5, 3))))
            .WithWear(Maybe(r, x => LengthBand.Exactly(Length.FromMillimeters(Spread(x, 0.1, 9)), Given)))
            .WithSurface(Choice<SurfaceState>(r))
            .WithRunIn(Choice<RunInState>(r))
            .WithLastStorage(Value(r, x => new DateTime(1990, 1, 1).AddDays(x.Next(5000))))
            .WithStoredMonths(Value(r, x => Spread(x, 0.1, 1200)))
            .WithClimate(Choice<StorageClimate>(r))
            .WithPlateThickness(Value(r, x => Length.FromMillimeters(Spread(x, 1, 20))))
            .WithSlipsPerHour(Value(r, x => Spread(x, 0.1, 100)))
            .WithSlipTime(Value(r, x => Duration.FromSeconds(Spread(x, 0.1, 100))));
        return r.Next(2) == 0 ? clutch : clutch
            .WithLastSlipTest(new DateTime(1990, 1, 1).AddDays(r.Next(5000)))
            .WithSlipTestResult(Choice<SlipTestOutcome>(r))
            .WithLeverForce(Force.FromPoundsForce(Spread(r, 1, 900)))
            .WithLeverArm(Length.FromFeet(Spread(r, 1, 20)));
    }

    private static CutOutFacts CutOut(Random r) => CutOutFacts.Empty
        .WithName(Maybe(r, Text))
        .WithKind(Choice<CutOutKind>(r))
        .WithTrip(Maybe(r, Torques))
        .WithAfterTrip(Maybe(r, x => RatioBand.Between(0, 0.5, 1, Given)))
        .WithReengagesBelow(Value(r, x => RotationalSpeed.FromRevolutionsPerMinute(Spread(x, 1, 2999))))
        .WithLastTrip(Value(r, x => new DateTime(1990, 1, 1).AddDays(x.Next(5000))));

    private static TorqueBand Torques(Random r)
    {
        double low = Spread(r, 1, 1e5);
        return r.Next(3) switch
        {
            0 => TorqueBand.Exactly(Torque.FromPoundForceFeet(low), Given),
            1 => TorqueBand.AtLeast(Torque.FromNewtonMeters(low), Given),
            _ => TorqueBand.Between(Torque.FromNewtonMeters(low), Torque.FromNewtonMeters(low * 1.1), Torque.FromNewtonMeters(low * Spread(r, 1.2, 3)), Given),
        };
    }

    private static StressBand Stresses(Random r) => StressBand.Exactly(Pressure.FromKilopoundsForcePerSquareInch(Spread(r, 2, 400)), Given);

    private static DateTime Date(Random r) => new DateTime(2010, 1, 1).AddDays(r.Next(10000));

    private static string Text(Random r) => Pick(r, "front", "“quoted” \"name\"", "half \\ slash", "tab\tand line\n", "größe ½ 日本 🚜", "<b>&'", " x ");

    private static double Spread(Random r, double low, double high) => low * Math.Pow(high / low, r.NextDouble());

    private static T? Maybe<T>(Random r, Func<Random, T> make)
        where T : class => r.Next(2) == 0 ? null : make(r);

    private static T? Value<T>(Random r, Func<Random, T> make)
        where T : struct => r.Next(2) == 0 ? null : make(r);

    private static T Pick<T>(Random r, params T[] items) => items[r.Next(items.Length)];

    private static T Choice<T>(Random r)
        where T : struct, Enum => Pick(r, Enum.GetValues<T>());
}
