using Driveline.Cases.Members;
using Driveline.Clutches;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Cases;

/// <summary>A friction-disc slip clutch as fitted.</summary>
public sealed class SlipClutchFacts : CaseFacts
{
    internal SlipClutchFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static SlipClutchFacts Empty { get; } = new(SlipClutchMembers.Table.NoValues());

    /// <summary>What you call it. Null when not known.</summary>
    public string? Name => Reference<string>(SlipClutchMembers.Name);

    /// <summary>The same with another <see cref="Name"/>.</summary>
    public SlipClutchFacts WithName(string? value) => new(Set(SlipClutchMembers.Name, value));

    /// <summary>Outer diameter of the rubbing faces. Permitted: [20 mm; 1 m]. Null when not known.</summary>
    public Length? OuterDiameter => Si(SlipClutchMembers.OuterDiameter) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="OuterDiameter"/>.</summary>
    public SlipClutchFacts WithOuterDiameter(Length? value) => new(Set(SlipClutchMembers.OuterDiameter, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Inner diameter of the rubbing faces. Permitted: [5 mm; 1 m). Null when not known.</summary>
    public Length? InnerDiameter => Si(SlipClutchMembers.InnerDiameter) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="InnerDiameter"/>.</summary>
    public SlipClutchFacts WithInnerDiameter(Length? value) => new(Set(SlipClutchMembers.InnerDiameter, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Number of rubbing pairs of faces: two for each plate that is lined on both sides. Permitted: 1 to 40. Null when not known.</summary>
    public int? Faces => Value<int>(SlipClutchMembers.Faces);

    /// <summary>The same with another <see cref="Faces"/>.</summary>
    public SlipClutchFacts WithFaces(int? value) => new(Set(SlipClutchMembers.Faces, value));

    /// <summary>The linings: by name, e.g. "moulded organic lining", or by the two letters of friction on their edge, e.g. "FE". Null when not known.</summary>
    public string? Facing => Reference<string>(SlipClutchMembers.Facing);

    /// <summary>The same with another <see cref="Facing"/>.</summary>
    public SlipClutchFacts WithFacing(string? value) => new(Set(SlipClutchMembers.Facing, value));

    /// <summary>The springs that press the plates together. Null when not known.</summary>
    public ClutchSpringsFacts? Springs => Reference<ClutchSpringsFacts>(SlipClutchMembers.Springs);

    /// <summary>The same with another <see cref="Springs"/>.</summary>
    public SlipClutchFacts WithSprings(ClutchSpringsFacts? value) => new(Set(SlipClutchMembers.Springs, value is null || value.IsEmpty ? null : value));

    /// <summary>Length of the springs as set, measured; for disc springs that of the whole stack. Permitted: [1 mm; 1 m]. Null when not known.</summary>
    public LengthBand? SpringLength => Reference<LengthBand>(SlipClutchMembers.SpringLength);

    /// <summary>The same with another <see cref="SpringLength"/>.</summary>
    public SlipClutchFacts WithSpringLength(LengthBand? value) => new(Set(SlipClutchMembers.SpringLength, value));

    /// <summary>Turns of every nut from finger-tight, in place of springLength; it needs threadPitch. Permitted: [0; 100]. Null when not known.</summary>
    public double? NutTurns => Si(SlipClutchMembers.NutTurns);

    /// <summary>The same with another <see cref="NutTurns"/>.</summary>
    public SlipClutchFacts WithNutTurns(double? value) => new(Set(SlipClutchMembers.NutTurns, value));

    /// <summary>Pitch of the thread of the spring bolts. Permitted: [0.2 mm; 10 mm]. Null when not known.</summary>
    public Length? ThreadPitch => Si(SlipClutchMembers.ThreadPitch) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="ThreadPitch"/>.</summary>
    public SlipClutchFacts WithThreadPitch(Length? value) => new(Set(SlipClutchMembers.ThreadPitch, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Wear of all linings together since the springs were set to that length; 0 mm when the length was measured on the date of the case. Permitted: [0 mm; 50 mm]. Null when not known.</summary>
    public LengthBand? Wear => Reference<LengthBand>(SlipClutchMembers.Wear);

    /// <summary>The same with another <see cref="Wear"/>.</summary>
    public SlipClutchFacts WithWear(LengthBand? value) => new(Set(SlipClutchMembers.Wear, value));

    /// <summary>What the faces are like. Dry ones count as cleanInWork, since work makes them damp and hot.</summary>
    public SurfaceState Surface => Value<SurfaceState>(SlipClutchMembers.Surface) ?? default;

    /// <summary>The same with another <see cref="Surface"/>.</summary>
    public SlipClutchFacts WithSurface(SurfaceState value) => new(Set(SlipClutchMembers.Surface, value == default ? null : value));

    /// <summary>Whether the faces are new or have bedded in.</summary>
    public RunInState RunIn => Value<RunInState>(SlipClutchMembers.RunIn) ?? default;

    /// <summary>The same with another <see cref="RunIn"/>.</summary>
    public SlipClutchFacts WithRunIn(RunInState value) => new(Set(SlipClutchMembers.RunIn, value == default ? null : value));

    /// <summary>When it was last seen whether the clutch slips, at the present setting. Null when not known.</summary>
    public DateTime? LastSlipTest => Value<DateTime>(SlipClutchMembers.LastSlipTest);

    /// <summary>The same with another <see cref="LastSlipTest"/>.</summary>
    public SlipClutchFacts WithLastSlipTest(DateTime? value) => new(Set(SlipClutchMembers.LastSlipTest, value));

    /// <summary>What that test showed; didNotSlip is also for a clutch found stuck.</summary>
    public SlipTestOutcome SlipTestResult => Value<SlipTestOutcome>(SlipClutchMembers.SlipTestResult) ?? default;

    /// <summary>The same with another <see cref="SlipTestResult"/>.</summary>
    public SlipClutchFacts WithSlipTestResult(SlipTestOutcome value) => new(Set(SlipClutchMembers.SlipTestResult, value == default ? null : value));

    /// <summary>Torque measured in that test with a lever: while it slipped, or the highest that it withstood. Permitted: (0 N.m; 1000 kN.m]. Null when not known.</summary>
    public TorqueBand? LeverTorque => Reference<TorqueBand>(SlipClutchMembers.LeverTorque);

    /// <summary>The same with another <see cref="LeverTorque"/>.</summary>
    public SlipClutchFacts WithLeverTorque(TorqueBand? value) => new(Set(SlipClutchMembers.LeverTorque, value));

    /// <summary>Force at the end of the lever in that test, in place of leverTorque; it needs leverArm. Permitted: (0 N; 100 kN]. Null when not known.</summary>
    public Force? LeverForce => Si(SlipClutchMembers.LeverForce) is { } si ? Force.FromNewtons(si) : null;

    /// <summary>The same with another <see cref="LeverForce"/>.</summary>
    public SlipClutchFacts WithLeverForce(Force? value) => new(Set(SlipClutchMembers.LeverForce, value is { } v ? Quantities.Si.Newtons(v) : null));

    /// <summary>Length of that lever from the middle of the shaft. Permitted: [50 mm; 10 m]. Null when not known.</summary>
    public Length? LeverArm => Si(SlipClutchMembers.LeverArm) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="LeverArm"/>.</summary>
    public SlipClutchFacts WithLeverArm(Length? value) => new(Set(SlipClutchMembers.LeverArm, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>Slip torque that the machine's documents state for this clutch; used when it cannot be calculated. Permitted: (0 N.m; 1000 kN.m]. Null when not known.</summary>
    public TorqueBand? StatedTorque => Reference<TorqueBand>(SlipClutchMembers.StatedTorque);

    /// <summary>The same with another <see cref="StatedTorque"/>.</summary>
    public SlipClutchFacts WithStatedTorque(TorqueBand? value) => new(Set(SlipClutchMembers.StatedTorque, value));

    /// <summary>When the machine was last taken out of storage; the date of the case while it stands there. Null when not known.</summary>
    public DateTime? LastStorage => Value<DateTime>(SlipClutchMembers.LastStorage);

    /// <summary>The same with another <see cref="LastStorage"/>.</summary>
    public SlipClutchFacts WithLastStorage(DateTime? value) => new(Set(SlipClutchMembers.LastStorage, value));

    /// <summary>How many months that storage lasted. Permitted: [0; 1200]. Null when not known.</summary>
    public double? StoredMonths => Si(SlipClutchMembers.StoredMonths);

    /// <summary>The same with another <see cref="StoredMonths"/>.</summary>
    public SlipClutchFacts WithStoredMonths(double? value) => new(Set(SlipClutchMembers.StoredMonths, value));

    /// <summary>How damp the place of storage is.</summary>
    public StorageClimate Climate => Value<StorageClimate>(SlipClutchMembers.Climate) ?? default;

    /// <summary>The same with another <see cref="Climate"/>.</summary>
    public SlipClutchFacts WithClimate(StorageClimate value) => new(Set(SlipClutchMembers.Climate, value == default ? null : value));

    /// <summary>Thickness of the thinnest metal plate of the pack, the whole plate. Each of its two faces is given half of it to warm. Permitted: [0.5 mm; 100 mm]. Null when not known.</summary>
    public Length? PlateThickness => Si(SlipClutchMembers.PlateThickness) is { } si ? Length.FromMeters(si) : null;

    /// <summary>The same with another <see cref="PlateThickness"/>.</summary>
    public SlipClutchFacts WithPlateThickness(Length? value) => new(Set(SlipClutchMembers.PlateThickness, value is { } v ? Quantities.Si.Meters(v) : null));

    /// <summary>How often it slips in an hour of work. Permitted: [0; 3600]. Null when not known.</summary>
    public double? SlipsPerHour => Si(SlipClutchMembers.SlipsPerHour);

    /// <summary>The same with another <see cref="SlipsPerHour"/>.</summary>
    public SlipClutchFacts WithSlipsPerHour(double? value) => new(Set(SlipClutchMembers.SlipsPerHour, value));

    /// <summary>How long such a slip lasts, until the PTO is disengaged. Permitted: (0 s; 600 s]. Null when not known.</summary>
    public Duration? SlipTime => Si(SlipClutchMembers.SlipTime) is { } si ? Duration.FromSeconds(si) : null;

    /// <summary>The same with another <see cref="SlipTime"/>.</summary>
    public SlipClutchFacts WithSlipTime(Duration? value) => new(Set(SlipClutchMembers.SlipTime, value is { } v ? Quantities.Si.Seconds(v) : null));

    internal override MemberTable Table => SlipClutchMembers.Table;
}
