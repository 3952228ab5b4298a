using Driveline.Quantities;

namespace Driveline.Clutches;

/// <summary>The condition of a clutch on a day: faces, wear, last slip test, last storage. Unknown facts stay unknown.</summary>
/// <remarks>
/// A clutch may be trusted to slip only after a slip test since its last storage, made at the present setting.
/// While the last storage is not known, a test counts only on its own day: a storage may have followed it.
/// No test counts for more than a year, because a yearly check is asked for at least.
/// </remarks>
public sealed class ClutchCondition
{
    /// <summary>Age beyond which no slip test counts, in days.</summary>
    internal const int OldestTestDays = 365;

    private bool isOpen;

    private ClutchCondition(DateTime day) => Day = day;

    private ClutchCondition(ClutchCondition other)
    {
        Day = other.Day;
        RunIn = other.RunIn;
        Surface = other.Surface;
        Wear = other.Wear;
        IsStuck = other.IsStuck;
        LastSlipTest = other.LastSlipTest;
        LastStorageEnded = other.LastStorageEnded;
        StorageMonths = other.StorageMonths;
        Climate = other.Climate;
    }

    /// <summary>The day the condition is judged on.</summary>
    public DateTime Day { get; private set; }

    /// <summary>Whether the faces are run in.</summary>
    public RunInState RunIn { get; private set; }

    /// <summary>What the faces are like.</summary>
    public SurfaceState Surface { get; private set; }

    /// <summary>Lining wear of the whole pack since the springs were set to their length; null when not known, and then up to a whole
    /// lining on every face: measure the springs on the day, and it is 0.</summary>
    public LengthBand? Wear { get; private set; }

    /// <summary>True when the clutch is known to be stuck.</summary>
    public bool IsStuck { get; private set; }

    /// <summary>The last slip test; null when there was none or it is not known.</summary>
    public SlipTest? LastSlipTest { get; private set; }

    /// <summary>The day the last storage ended; null when not known. The day judged on when it stands in storage.</summary>
    public DateTime? LastStorageEnded { get; private set; }

    /// <summary>How long the last storage was, in months; null when not known.</summary>
    public double? StorageMonths { get; private set; }

    /// <summary>How damp the place of storage is.</summary>
    public StorageClimate Climate { get; private set; }

    /// <summary>Whether the clutch may be trusted to slip at all.</summary>
    public SlipTrust Trust
    {
        get
        {
            if (KnownStuck || TestIsBeforeStorage)
            {
                return SlipTrust.MustNotBeTrusted;
            }

            int counts = LastStorageEnded is null ? 0 : OldestTestDays;
            return LastSlipTest is { Outcome: SlipTestOutcome.Slipped } && TestAgeDays <= counts ? SlipTrust.MayBeTrusted
                : SlipTrust.NotKnown;
        }
    }

    /// <summary>True only when a slip test since the last storage allows it.</summary>
    public bool MayBeTrustedToSlip => Trust == SlipTrust.MayBeTrusted;

    internal bool KnownStuck => IsStuck || LastSlipTest?.Outcome == SlipTestOutcome.DidNotSlip;

    internal bool TestIsBeforeStorage => LastSlipTest is not null && LastStorageEnded is { } ended && LastSlipTest.Date < ended;

    internal double TestAgeDays => LastSlipTest is null ? double.PositiveInfinity : (Day - LastSlipTest.Date).TotalDays;

    /// <summary>A clutch of which nothing is known, judged on a day.</summary>
    /// <param name="day">The day judged on; the caller's "today".</param>
    /// <exception cref="ArgumentOutOfRangeException">The day is before 1900.</exception>
    public static ClutchCondition AsOf(DateTime day) => new(SlipTest.Day(day));

    /// <summary>The same facts judged on another day, not before any of them.</summary>
    /// <exception cref="ArgumentOutOfRangeException">A known date would lie after that day.</exception>
    public ClutchCondition JudgedOn(DateTime day)
    {
        var copy = new ClutchCondition(this) { Day = SlipTest.Day(day) };
        NotAfter(LastSlipTest?.Date, copy.Day, "Date of the slip test", nameof(day));
        NotAfter(LastStorageEnded, copy.Day, "End of the last storage", nameof(day));
        return copy;
    }

    /// <summary>The same condition with faces new or run in.</summary>
    public ClutchCondition WithRunIn(RunInState runIn) => Changed(runIn, static (c, value) => c.RunIn = value);

    /// <summary>The same condition with a surface state.</summary>
    public ClutchCondition WithSurface(SurfaceState surface) => Changed(surface, static (c, value) => c.Surface = value);

    /// <summary>The same condition with the lining wear of the whole pack since the springs were set.</summary>
    /// <param name="wear">Sum over all linings; bounded. 0 when the spring length was measured on this day.</param>
    /// <exception cref="ArgumentException">The wear is unbounded.</exception>
    public ClutchCondition WithWear(LengthBand wear) => Guard.NotNull(wear, nameof(wear)).IsBounded
        ? Changed(wear, static (c, value) => c.Wear = value)
        : throw new ArgumentException("Wear must have a high end; leave it out when it is not known.", nameof(wear));

    /// <summary>The same condition, found stuck: rusted or burnt together.</summary>
    public ClutchCondition Stuck() => Changed(true, static (c, value) => c.IsStuck = value);

    /// <summary>The same condition with its last slip test; frees a clutch found stuck before when it slipped.</summary>
    /// <param name="test">The last test at the present spring setting: a test before the nuts were turned is none of this clutch.</param>
    /// <exception cref="ArgumentOutOfRangeException">The test lies after the day judged on.</exception>
    public ClutchCondition WithSlipTest(SlipTest test)
    {
        NotAfter(Guard.NotNull(test, nameof(test)).Date, Day, "Date of the slip test", nameof(test));
        return Changed(test, static (c, value) =>
        {
            c.LastSlipTest = value;
            c.IsStuck = c.IsStuck && value.Outcome != SlipTestOutcome.Slipped;
        });
    }

    /// <summary>The same condition with the day its last storage ended (the day judged on when it stands in storage).</summary>
    /// <exception cref="ArgumentOutOfRangeException">The day lies after the day judged on.</exception>
    public ClutchCondition WithStorage(DateTime ended)
    {
        DateTime day = NotAfter(SlipTest.Day(ended), Day, "End of the last storage", nameof(ended))!.Value;
        return Changed(day, static (c, value) =>
        {
            c.LastStorageEnded = value;
            c.StorageMonths = null;
        });
    }

    /// <summary>The same condition with the day its last storage ended and its length in months.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The day lies after the day judged on, or the months are not 0 to 1200.</exception>
    public ClutchCondition WithStorage(DateTime ended, double months) =>
        WithStorage(ended).Changed(
            Guard.Within(months, 0, 1200, "Storage", "months", nameof(months)), static (c, value) => c.StorageMonths = value);

    /// <summary>The same condition with the climate of its storage.</summary>
    public ClutchCondition WithClimate(StorageClimate climate) => Changed(climate, static (c, value) => c.Climate = value);

    /// <summary>How far it may be trusted to slip, on the day judged on.</summary>
    public override string ToString() => FormattableString.Invariant($"{Trust} on {Day:yyyy-MM-dd}");

    /// <summary>The same, to be filled by one owner: until it is closed, each change is made in this very object.</summary>
    internal static ClutchCondition Open(DateTime day) => new(SlipTest.Day(day)) { isOpen = true };

    internal ClutchCondition Closed()
    {
        isOpen = false;
        return this;
    }

    private ClutchCondition Changed<T>(T value, Action<ClutchCondition, T> change)
    {
        ClutchCondition changed = isOpen ? this : new ClutchCondition(this);
        change(changed, value);
        return changed;
    }

    private static DateTime? NotAfter(DateTime? date, DateTime day, string what, string parameter) => date is null || date <= day
        ? date
        : throw new ArgumentOutOfRangeException(
            parameter, FormattableString.Invariant(
                $"{what} must not be after {day:yyyy-MM-dd}, the day judged on; got {date:yyyy-MM-dd}."));
}
