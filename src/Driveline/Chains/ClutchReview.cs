using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Chains;

/// <summary>Everything about one slip clutch that a report shows: torques, springs, facing, heat, perhaps a new setting.</summary>
/// <remarks>
/// Clamp force, spring length, travel and pressure are expected values; null when they are not known or have no expected value.
/// Immutable.
/// </remarks>
public sealed class ClutchReview
{
    private IReadOnlyList<Caution>? cautions;
    private static readonly string[] Metallic = ["METAL", "CERMET", "IRON", "GRAPHITE"];

    private ClutchReview(SlipClutchDevice device, SlipEvent? slip, SlipHeat? heat, ClutchSetting? setting)
    {
        Device = device;
        Slip = slip;
        Heat = heat;
        Setting = setting;
    }

    /// <summary>The clutch as a device.</summary>
    public SlipClutchDevice Device { get; }

    /// <summary>The slip with the machine blocked, at the expected torque; null when torque or speed is not known.</summary>
    public SlipEvent? Slip { get; }

    /// <summary>The heat of that slip at the highest torque; null when plates, faces or speed are not known.</summary>
    public SlipHeat? Heat { get; }

    /// <summary>How to set it for a wanted torque; null when none was asked for.</summary>
    public ClutchSetting? Setting { get; }

    /// <summary>The slip torque.</summary>
    public SlipTorque Torque => Device.SlipTorque;

    /// <summary>True when the torque is known at all.</summary>
    public bool IsKnown => Device.IsIdentified;

    /// <summary>Expected clamp force of all springs.</summary>
    public Force? ClampForce => Setting is { IsReached: true } ? Setting.ClampForce : Torque.ClampForce?.Expected;

    /// <summary>Length of the springs as set.</summary>
    public Length? SpringLength => Setting is not null ? Setting.SpringLength : Torque.Clutch?.SpringLength?.Expected;

    /// <summary>Travel left before the springs are solid or flat; 0 when they are.</summary>
    public Length? TravelToSolid => SpringLength is { } length && Torque.Clutch is { } clutch ? clutch.Springs.TravelLeft(length) : null;

    /// <summary>Mean pressure on a face.</summary>
    public Pressure? FacingPressure => Setting is { IsReached: false } ? null : Torque.MeanPressure?.Expected;

    /// <summary>Time until the linings reach the temperature they stand for long; null when not reached or not known.</summary>
    public Duration? TimeToLimit => Heat?.TimeToContinuous;

    /// <summary>Time until the linings reach the temperature they stand at all; null when not reached or not known.</summary>
    public Duration? TimeToMaximum => Heat?.TimeToMaximum;

    /// <summary>
    /// Time until organic linings begin to smoke, by practice; null when not reached, not known, or when the linings are of metal.
    /// </summary>
    public Duration? TimeToSmoke => IsOrganic ? Heat?.TimeToFirstSmoke : null;

    /// <summary>
    /// The service procedures that its state calls for: a slip test while it is not trusted, the lever after setting it anew; taken apart,
    /// and no slip test before, while it is known to be stuck or solid.
    /// </summary>
    public IReadOnlyList<ServiceProcedure> Procedures => CannotSlip
        ? [ServiceProcedure.YearlyCheck, .. Setting is null ? Array.Empty<ServiceProcedure>() : [ServiceProcedure.LeverSetting]]
        : Setting is not null
        ? [ServiceProcedure.LeverSetting, ServiceProcedure.ScribeLineTest]
        : Torque.MayBeTrustedToSlip && Torque.Source == SlipTorqueSource.Measured ? []
        : Torque.MayBeTrustedToSlip ? [ServiceProcedure.LeverSetting]
        : [ServiceProcedure.ScribeLineTest, ServiceProcedure.LeverSetting];

    /// <summary>The weakest basis of its torques; null when no torque is known.</summary>
    public Basis? WeakestBasis => IsKnown ? Basis.Weakest(Torque.Running.WeakestBasis, Torque.Breakaway.WeakestBasis) : null;

    /// <summary>
    /// What a caller must notice, worst first and each once. That a blocked slip has no end is its meaning, and not told again.
    /// </summary>
    public IReadOnlyList<Finding> Findings
    {
        get
        {
            IEnumerable<Finding> ofItsSlip = Heat?.Findings.Where(f => f.Code != ClutchFindings.SlipNeverEnds) ?? [];
            IEnumerable<Finding> more = (Setting?.Findings ?? []).Concat(ofItsSlip).Select(f => f.At(Device.Place));
            return [.. Device.Findings.Concat(more).Distinct().OrderBy(f => f.Severity)];
        }
    }

    /// <summary>The cautions that go with every clutch; no renderer may drop them.</summary>
    internal static IReadOnlyList<Caution> OfEveryClutch { get; } =
    [
        Caution.StopAndKeyOut, Caution.GuardsOn, Caution.BystandersAway, Caution.HotClutch, Caution.HotClutchDryGrass,
        Caution.NeverTighter, Caution.ManualDecides, Caution.LicensedPractice,
    ];

    /// <summary>The cautions of this clutch: those of its machine before those of every clutch.</summary>
    public IReadOnlyList<Caution> Cautions => cautions ??= [.. FirstCautions.Concat(OfEveryClutch).Distinct()];

    /// <summary>The cautions of its machine, which stand first; empty when none are given.</summary>
    internal IReadOnlyList<Caution> FirstCautions { get; private set; } = [];

    private bool CannotSlip => Device.IsStuck
        || Device.Findings.Any(f => f.Code is ClutchFindings.Stuck or ClutchFindings.SpringsSolid or ClutchFindings.ShorterThanSolid);

    private bool IsOrganic
    {
        get
        {
            string name = Torque.Clutch?.Facing.Name.ToUpperInvariant() ?? Metallic[0];
            return !Array.Exists(Metallic, name.Contains);
        }
    }

    /// <summary>A clutch as it is, with its slip against the blocked machine where its place, and that slip's heat where its plates tell
    /// them.</summary>
    public static ClutchReview Of(SlipClutchDevice device)
    {
        var review = new ClutchReview(Guard.NotNull(device, nameof(device)), null, null, null);
        if (device.SpeedInWork is not { } speed || device.Running is not { Expected: { } expected } running)
        {
            return review;
        }

        SlipEvent blocked = SlipEvent.Blocked(expected, speed);
        return device.Fitted?.HeatPath is { } path
            ? review.WithBlockedSlip(
                blocked,
                SlipHeat.Of(
                    SlipEvent.Blocked(running.High ?? expected, speed), path, device.Fitted.Clutch!.Facing, ClutchAir.Temperature))
            : review.WithBlockedSlip(blocked);
    }

    /// <summary>How to set a clutch for a wanted slip torque, and what it is and does then.</summary>
    /// <param name="device">The clutch as it is fitted.</param>
    /// <param name="wanted">Expected torque while it slips; above 0.</param>
    /// <exception cref="InvalidOperationException">Its faces and springs are not all known.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The torque is zero, negative or not finite.</exception>
    public static ClutchReview SetTo(SlipClutchDevice device, Torque wanted)
    {
        FittedClutch? fitted = Guard.NotNull(device, nameof(device)).Fitted;
        DiscClutch clutch = fitted?.Clutch?.CalibratedBy(fitted.Condition)
            ?? throw new InvalidOperationException("To set a clutch, its faces and springs must be known.");
        ClutchSetting setting = fitted.ThreadPitch is { } pitch ? ClutchSetting.For(clutch, wanted, fitted.SetAnew(), pitch)
            : ClutchSetting.For(clutch, wanted, fitted.SetAnew());
        ClutchReview review = setting.Predicted is { } predicted ? Of(device.SetTo(predicted))
            : new ClutchReview(device, null, null, null);
        return review.WithSetting(setting);
    }

    /// <summary>The same with a slip against the blocked machine, how hot it gets not known.</summary>
    internal ClutchReview WithBlockedSlip(SlipEvent slip) =>
        new(Device, Guard.NotNull(slip, nameof(slip)), null, Setting) { FirstCautions = FirstCautions };

    /// <summary>The same with a slip against the blocked machine and its heat.</summary>
    internal ClutchReview WithBlockedSlip(SlipEvent slip, SlipHeat heat) =>
        new(Device, Guard.NotNull(slip, nameof(slip)), Guard.NotNull(heat, nameof(heat)), Setting) { FirstCautions = FirstCautions };

    /// <summary>The same with a setting for a wanted torque.</summary>
    internal ClutchReview WithSetting(ClutchSetting setting) =>
        new(Device, Slip, Heat, Guard.NotNull(setting, nameof(setting))) { FirstCautions = FirstCautions };

    /// <summary>The same with the cautions of its machine, which stand first.</summary>
    /// <param name="cautions">E.g. those of a verdict.</param>
    public ClutchReview WithFirstCautions(IReadOnlyList<Caution> cautions) =>
        new(Device, Slip, Heat, Setting) { FirstCautions = [.. Guard.NotNull(cautions, nameof(cautions))] };

    /// <summary>Its clutch and the torque at which it slips, with its unit.</summary>
    public override string ToString() => Device.Name + ": " + Torque;
}
