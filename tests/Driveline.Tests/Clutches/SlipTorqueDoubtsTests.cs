using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Tests.Clutches;

public class SlipTorqueDoubtsTests
{
    private static readonly LengthBand Length45 = LengthBand.Between(
        Length.FromMillimeters(44.5), Length.FromMillimeters(45), Length.FromMillimeters(45.5), BandBasis.Of(Build.Stated));

    private static readonly LengthBand Worn = LengthBand.Between(
        Length.Zero, Length.FromMillimeters(0.5), Length.FromMillimeters(1), BandBasis.Of(Build.Stated));

    // Springs of 160 N/mm, 50 mm free, set to 44.5 to 45.5 mm: 5.5 to 4.5 mm of deflection, 5.5/4.5 = 1.2222. The first slip 1.2 times.
    [Fact]
    public void Doubts_SpringLengthAndBreakaway_AreTheirRatios()
    {
        SlipTorque torque = SlipTorque.Of(Build.NineSprings().WithSpringLength(Length45), Build.Trusted(RunInState.RunIn));
        Assert.Equal([DoubtCodes.SpringLength, DoubtCodes.Breakaway], torque.Doubts().Select(d => d.Code));
        Assert.Equal(1.2222, torque.Doubts()[0].Times!.Value, 4);
        Assert.Equal(1.2, torque.Doubts()[1].Times!.Value, 9);
    }

    [Fact]
    public void Doubts_OfAClutch_MultiplyToHighOverLow()
    {
        SlipTorque torque = SlipTorque.Of(Lined(), Build.Trusted(RunInState.NotKnown).WithWear(Worn));
        IReadOnlyList<TorqueDoubt> doubts = torque.Doubts();
        Close.Relative(
            torque.Breakaway.SiBand.High / torque.Running.SiBand.Low,
            doubts.Aggregate(1.0, (all, d) => all * d.Times!.Value),
            1e-12,
            "all sources together");
        Assert.Equal(1, doubts.Sum(d => d.Share!.Value), 12);
        Assert.All(
            [DoubtCodes.Friction, DoubtCodes.SpringLength, DoubtCodes.Wear, DoubtCodes.RunIn],
            code => Assert.Contains(doubts, d => d.Code == code));
    }

    // The second method: one source alone put to its expected value. Length and wear act on the same springs: the share of each lies
    // between what it narrows when it is known first and when it is known last.
    [Fact]
    public void Doubt_ItsSourceKnown_NarrowsTheBandByItsTimes()
    {
        ClutchCondition condition = Build.Trusted(RunInState.NotKnown).WithWear(Worn);
        ClutchCondition unworn = condition.WithWear(LengthBand.Exactly(Length.FromMillimeters(0.5), Build.Stated));
        DiscClutch set = Lined().WithSpringLength(LengthBand.Exactly(Length.FromMillimeters(45), Build.Stated));
        IReadOnlyList<TorqueDoubt> doubts = SlipTorque.Of(Lined(), condition).Doubts();
        double whole = Width(Lined(), condition);
        Close.Relative(whole / Width(Lined(), condition.WithRunIn(RunInState.RunIn)), Times(DoubtCodes.RunIn), 1e-9, "run in");
        Assert.InRange(
            Times(DoubtCodes.SpringLength),
            Math.Min(whole / Width(set, condition), Width(Lined(), unworn) / Width(set, unworn)) - 1e-9,
            Math.Max(whole / Width(set, condition), Width(Lined(), unworn) / Width(set, unworn)) + 1e-9);
        Assert.InRange(
            Times(DoubtCodes.Wear),
            Math.Min(whole / Width(Lined(), unworn), Width(set, condition) / Width(set, unworn)) - 1e-9,
            Math.Max(whole / Width(Lined(), unworn), Width(set, condition) / Width(set, unworn)) + 1e-9);

        double Times(string code) => doubts.Single(d => d.Code == code).Times!.Value;
    }

    [Fact]
    public void Doubts_NotSlippedSinceStorage_LeaveTheBreakawayOpenFirst()
    {
        TorqueDoubt first = SlipTorque.Of(Lined(), Build.Clean(RunInState.RunIn)).Doubts()[0];
        Assert.Equal((DoubtCodes.Breakaway, true, Measurements.SlipTest), (first.Code, first.IsOpen, first.SettledBy));
    }

    [Fact]
    public void Doubts_SpringsThatMayBeSolid_LeaveTheForceOpen() => Assert.Contains(
        SlipTorque.Of(
            Lined().WithSpringLength(LengthBand.Between(
                Length.FromMillimeters(39.9), Length.FromMillimeters(41), Length.FromMillimeters(42), BandBasis.Of(Build.Stated))),
            Build.Trusted(RunInState.RunIn)).Doubts(),
        d => d is { Code: DoubtCodes.SpringLength, IsOpen: true });

    [Fact]
    public void Doubts_LeverReading_AreItsErrorAndTheFirstSlip()
    {
        ClutchCondition read = Build.Clean(RunInState.RunIn).WithSlipTest(
            SlipTest.Lever(Build.Today, Force.FromNewtons(500), Length.FromMeters(1)));
        SlipTorque torque = SlipTorque.OfMeasured(read);
        Assert.Contains(torque.Doubts(), d => d.Code == DoubtCodes.Reading);
        Assert.DoesNotContain(torque.Doubts(), d => d.Code == DoubtCodes.Friction);
    }

    private static DiscClutch Lined() => DiscClutch.Of(
            Length.FromMillimeters(250), Length.FromMillimeters(175), 2, Facings.MouldedLining, Build.NinePack())
        .WithSpringLength(Length45);

    private static double Width(DiscClutch clutch, ClutchCondition condition) =>
        SlipTorque.Of(clutch, condition) is var torque ? torque.Breakaway.SiBand.High / torque.Running.SiBand.Low : 0;
}
