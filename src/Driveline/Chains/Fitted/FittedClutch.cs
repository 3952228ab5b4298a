using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Chains;

/// <summary>A friction-disc slip clutch as it is fitted and was seen: it judges itself on the day it is looked at.</summary>
/// <remarks>
/// Immutable; each With… method gives a changed copy. What is not told is not known, and not known is never safe. Dry faces count as
/// clean in work, which makes them damp and hot at times. Without a day no age can be told, and no slip test counts. What its place
/// tells of its heat comes with <see cref="DrivelineChain.InPlace"/>.
/// </remarks>
public sealed partial class FittedClutch
{
    private readonly DateTime? day;
    private double plateM = double.NaN;
    private double pitchM = double.NaN;
    private double perHour = double.NaN;
    private double slipS = double.NaN;
    private double storedMonths = double.NaN;
    private bool isOpen;

    private FittedClutch(string name, DateTime? day)
    {
        Name = Guard.NotBlank(name, "Name of a clutch", nameof(name));
        this.day = day is { } on ? SlipTest.Day(on) : null;
    }

    /// <summary>Name by which people know it.</summary>
    public string Name { get; }

    /// <summary>Where its facts stand; null when nobody has told.</summary>
    public FactPlace? Place { get; private set; }

    /// <summary>The day it is judged on; null when not known.</summary>
    public DateTime? Day => day;

    /// <summary>Faces, facing and springs, perhaps without their length; null while they are not all known.</summary>
    public DiscClutch? Clutch { get; private set; }

    /// <summary>Slip torque that the machine's documents state; null when none is told.</summary>
    public TorqueBand? StatedTorque { get; private set; }

    /// <summary>What the faces are like, as told.</summary>
    public SurfaceState Surface { get; private set; }

    /// <summary>Whether the faces are new or have bedded in.</summary>
    public RunInState RunIn { get; private set; }

    /// <summary>Wear of all linings together since the springs were set; null when not known.</summary>
    public LengthBand? Wear { get; private set; }

    /// <summary>True when it was found stuck.</summary>
    public bool IsStuck { get; private set; }

    /// <summary>The last slip test at the present setting; null when none is told.</summary>
    public SlipTest? LastSlipTest { get; private set; }

    /// <summary>The day its last storage ended; null when not known.</summary>
    public DateTime? LastStorageEnded { get; private set; }

    /// <summary>How damp the place of its storage is.</summary>
    public StorageClimate Climate { get; private set; }

    /// <summary>Thickness of the thinnest metal plate of the pack, the whole plate; null when not known.</summary>
    public Length? PlateThickness => double.IsNaN(plateM) ? null : Length.FromMeters(plateM);

    /// <summary>Pitch of the thread of the spring bolts; null when not known.</summary>
    public Length? ThreadPitch => double.IsNaN(pitchM) ? null : Length.FromMeters(pitchM);

    /// <summary>How often it slips in an hour of work; null when not known.</summary>
    public double? SlipsPerHour => double.IsNaN(perHour) ? null : perHour;

    /// <summary>How long such a slip lasts, until the PTO is disengaged; null when not known.</summary>
    public Duration? SlipTime => double.IsNaN(slipS) ? null : Duration.FromSeconds(slipS);

    /// <summary>A clutch of which nothing else is known, looked at on a day.</summary>
    /// <param name="name">Name by which people know it.</param>
    /// <param name="day">The day it is judged on; the caller's "today".</param>
    public static FittedClutch AsOf(string name, DateTime day) => new(name, day.Date);

    /// <summary>A clutch of which nothing else is known, not even the day it was looked at.</summary>
    public static FittedClutch Undated(string name) => new(name, null);

    /// <summary>The same with the place of its facts, which its findings then name.</summary>
    public FittedClutch At(FactPlace place)
    {
        Guard.NotNull(place, nameof(place));
        return Changed(place, static (f, value) => f.Place = value);
    }

    /// <summary>The same with its faces, facing and springs.</summary>
    public FittedClutch With(DiscClutch clutch)
    {
        Guard.NotNull(clutch, nameof(clutch));
        return Changed(clutch, static (f, value) => f.Clutch = value);
    }

    /// <summary>The same with the slip torque that the machine's documents state; used when it cannot be calculated.</summary>
    /// <exception cref="ArgumentException">The torque is unbounded.</exception>
    public FittedClutch WithStatedTorque(TorqueBand torque) => Guard.NotNull(torque, nameof(torque)).IsBounded
        ? Changed(torque, static (f, value) => f.StatedTorque = value)
        : throw new ArgumentException("A stated slip torque must have a high end; got " + torque + ".", nameof(torque));

    /// <summary>The same with a state of its faces.</summary>
    public FittedClutch WithSurface(SurfaceState surface) => Changed(surface, static (f, value) => f.Surface = value);

    /// <summary>The same with faces new or bedded in.</summary>
    public FittedClutch WithRunIn(RunInState runIn) => Changed(runIn, static (f, value) => f.RunIn = value);

    /// <summary>The same with the wear of all linings together since the springs were set.</summary>
    /// <exception cref="ArgumentException">The wear is unbounded.</exception>
    public FittedClutch WithWear(LengthBand wear)
    {
        Guard.NotNull(wear, nameof(wear));
        return Changed(wear, static (f, value) => f.Wear = value).Checked();
    }

    /// <summary>The same, found stuck on a day nobody noted.</summary>
    public FittedClutch FoundStuck() => Changed(true, static (f, value) => f.IsStuck = value);

    /// <summary>The same with its last slip test at the present setting. One that did not slip is stuck, one that slipped is not.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The test lies after the day judged on.</exception>
    public FittedClutch WithSlipTest(SlipTest test)
    {
        Guard.NotNull(test, nameof(test));
        return Changed(test, static (f, value) =>
        {
            f.LastSlipTest = value;
            f.IsStuck = value.Outcome == SlipTestOutcome.DidNotSlip || (f.IsStuck && value.Outcome != SlipTestOutcome.Slipped);
        }).Checked();
    }

    /// <summary>The same with the day it was last taken out of storage; the day judged on while it stands there.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The day lies after the day judged on.</exception>
    public FittedClutch WithStorage(DateTime ended) => Stored(ended, double.NaN);

    /// <summary>The same with the day its last storage ended, and how long that was.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The day lies after the day judged on, or the months are not 0 to 1200.</exception>
    public FittedClutch WithStorage(DateTime ended, double months) =>
        Stored(ended, Guard.Within(months, 0, 1200, "Storage", "months", nameof(months)));

    /// <summary>The same with the climate of its storage.</summary>
    public FittedClutch WithClimate(StorageClimate climate) => Changed(climate, static (f, value) => f.Climate = value);

    /// <summary>The same with the thickness of the thinnest metal plate of the pack: half of it stands behind each of its faces.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public FittedClutch WithPlateThickness(Length thickness)
    {
        double m = Guard.Positive(Si.Meters(thickness), "Plate thickness", "m", nameof(thickness));
        return Changed(m, static (f, value) => f.plateM = value);
    }

    /// <summary>The same with the pitch of the thread of its spring bolts.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0 or more than 10 mm.</exception>
    public FittedClutch WithThreadPitch(Length pitch)
    {
        double m = Guard.Positive(Si.Meters(pitch), "Pitch of the bolt thread", "m", nameof(pitch));
        Guard.Within(m, 0, 0.01, "Pitch of the bolt thread", "m", nameof(pitch));
        return Changed(m, static (f, value) => f.pitchM = value);
    }

    /// <summary>The same, slipping so often in an hour of work; 0 when it was never seen to.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Negative or not finite.</exception>
    public FittedClutch WithSlipsInWork(double perHour)
    {
        Guard.NotNegative(perHour, "Slips per hour", "1/h", nameof(perHour));
        return Changed(perHour, static (f, value) => f.perHour = value);
    }

    /// <summary>The same with the time a slip in work lasts, until the PTO is disengaged.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not above 0.</exception>
    public FittedClutch WithSlipTime(Duration time)
    {
        double s = Guard.Positive(Si.Seconds(time), "Time of a slip", "s", nameof(time));
        return Changed(s, static (f, value) => f.slipS = value);
    }

    /// <inheritdoc/>
    public override string ToString() => Name + ": " + (Clutch?.ToString() ?? "not described");

    private FittedClutch Stored(DateTime ended, double months)
    {
        return Changed((Ended: SlipTest.Day(ended), Months: months), static (f, value) =>
        {
            f.LastStorageEnded = value.Ended;
            f.storedMonths = value.Months;
        }).Checked();
    }

    /// <summary>A clutch to be filled by one owner: until it is closed, each change is made in this very object.</summary>
    internal static FittedClutch Open(string name, DateTime? day) => new(name, day?.Date) { isOpen = true };

    internal FittedClutch Closed()
    {
        isOpen = false;
        return this;
    }

    // What is told of it must not come after the day judged on, and its wear must have an end.
    private FittedClutch Checked()
    {
        _ = Condition;
        return this;
    }

    private FittedClutch Changed<T>(T value, Action<FittedClutch, T> change)
    {
        FittedClutch changed = isOpen ? this : (FittedClutch)MemberwiseClone();
        change(changed, value);
        changed.device = null;
        changed.condition = null;
        return changed;
    }
}
