using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Chains;

/// <summary>A ratchet, cam or radial-pin clutch in its place in the driveline: a trip band, and what it does after the trip.</summary>
/// <remarks>
/// It can rust or jam like any moving part, so its guard is certain only when it was seen to trip since the machine last stood.
/// A kind that is not known bars a Yes too.
/// </remarks>
public sealed class CutOutDevice : ProtectiveDevice
{
    private CutOutDevice(string name, CutOutClutch clutch, bool isProven)
        : base(name)
    {
        Clutch = clutch;
        IsProven = isProven;
        var findings = new List<Finding>(clutch.Findings);
        if (clutch.Kind == CutOutKind.NotKnown)
        {
            findings.Add(Finding.NotKnown(DeviceFindings.CutOutKindNotKnown).Barring(Bars.Guards).WithSettledBy(Measurements.IdentifyDevice)
                .With("name", name));
        }

        if (!isProven)
        {
            findings.Add(Finding.Of(DeviceFindings.CutOutNotProven, Severity.Danger).Barring(Bars.Guards)
                .WithSettledBy(Measurements.SlipTest).With("name", name));
        }

        Findings = findings;
    }

    /// <summary>The clutch, with what it carries after the trip and the speed below which it takes hold again.</summary>
    public CutOutClutch Clutch { get; }

    /// <summary>True when it was seen to trip since the machine last stood.</summary>
    public bool IsProven { get; }

    /// <inheritdoc/>
    public override DeviceKind Kind => DeviceKind.CutOut;

    /// <inheritdoc/>
    public override TorqueBand? Breakaway => Clutch.Trip;

    /// <inheritdoc/>
    public override TorqueBand? Running => Clutch.Trip;

    /// <inheritdoc/>
    public override AfterTrip AfterTrip => Clutch.Kind switch
    {
        CutOutKind.Cam => AfterTrip.TorqueFallsUntilSlow,
        CutOutKind.Ratchet or CutOutKind.RadialPin => AfterTrip.TorquePulses,
        _ => AfterTrip.NotKnown,
    };

    /// <inheritdoc/>
    public override IReadOnlyList<Finding> Findings { get; }

    /// <summary>A cut-out clutch that nobody has seen to trip since the machine last stood.</summary>
    public static CutOutDevice Of(string name, CutOutClutch clutch) => new(name, Guard.NotNull(clutch, nameof(clutch)), false);

    /// <summary>The same clutch, judged by its condition: proven when a trip since the last storage may be trusted.</summary>
    public CutOutDevice With(ClutchCondition condition) =>
        new(Name, Clutch, Guard.NotNull(condition, nameof(condition)).MayBeTrustedToSlip);
}
