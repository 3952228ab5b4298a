using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>What somebody tells of a slip test, as far as he knows: it judges what kind of test that was.</summary>
/// <remarks>
/// A reading is the torque of a slip only when the test is told to have slipped; when it did not, it is what the clutch withstood, with
/// nothing on it for the error of a scale, because it never was the torque of a slip. A torque goes before a force on a lever.
/// </remarks>
internal sealed class SlipReading
{
    private static readonly Basis Told = Basis.Given("lever measurement");

    public SlipTestOutcome Outcome { get; init; }

    /// <summary>Torque while it slipped, or the highest it withstood.</summary>
    public TorqueBand? Torque { get; init; }

    /// <summary>Torque at the first movement.</summary>
    public TorqueBand? Breakaway { get; init; }

    /// <summary>Force on the lever while it slipped, or the highest it withstood.</summary>
    public Force? Force { get; init; }

    /// <summary>Force on the lever at the first movement.</summary>
    public Force? BreakawayForce { get; init; }

    public Length? Arm { get; init; }

    /// <summary>The test that this was on a day.</summary>
    public SlipTest On(DateTime day) => Outcome switch
    {
        SlipTestOutcome.Slipped => Slipped(day),
        SlipTestOutcome.DidNotSlip => Withstood() is { } torque ? SlipTest.DidNotSlip(day, torque) : SlipTest.DidNotSlip(day),
        _ => SlipTest.NotRecorded(day),
    };

    private SlipTest Slipped(DateTime day)
    {
        if (Torque is not null)
        {
            SlipTest measured = SlipTest.Measured(day, Torque);
            return Breakaway is null ? measured : measured.WithBreakaway(Breakaway);
        }

        return Force is not { } force || Arm is not { } arm ? SlipTest.Slipped(day)
            : BreakawayForce is { } first ? SlipTest.Lever(day, first, force, arm)
            : SlipTest.Lever(day, force, arm);
    }

    // T = force · arm.
    private TorqueBand? Withstood() => Torque ?? (Force is { } force && Arm is { } arm
        ? TorqueBand.OfSi(Band.Exactly(Si.Newtons(force) * Si.Meters(arm)), BandBasis.Of(Told))
        : null);
}
