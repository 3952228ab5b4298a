using Driveline.Provenance;
using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Clutches;

/// <summary>A dated test that showed whether a clutch slips, and perhaps at which torque.</summary>
/// <remarks>
/// By lever: block the output, pull a lever of known arm with a spring scale, T = force · arm. The force at the first
/// movement is the breakaway; the force while the faces keep moving is the running slip torque.
/// By scribe line: a line across the plates shows after a short engagement whether they moved.
/// </remarks>
public sealed class SlipTest
{
    private static readonly Basis LeverError = Basis.CommonPractice("lever reading within 10 %, the width of a printed acceptance band");

    private SlipTest(
        DateTime date, SlipTestOutcome outcome, TorqueBand? running, TorqueBand? breakaway, double leverForceN, double leverArmM)
    {
        Date = date;
        Outcome = outcome;
        Running = running;
        Breakaway = breakaway;
        LeverForceN = leverForceN;
        LeverArmM = leverArmM;
    }

    /// <summary>The day of the test.</summary>
    public DateTime Date { get; }

    /// <summary>What it showed.</summary>
    public SlipTestOutcome Outcome { get; }

    /// <summary>Torque while slipping; null when not measured.</summary>
    public TorqueBand? Running { get; }

    /// <summary>Torque at the first movement, or the torque it withstood without slipping; null when not measured.</summary>
    public TorqueBand? Breakaway { get; }

    internal double LeverForceN { get; }

    internal double LeverArmM { get; }

    /// <summary>A test in which the plates were seen to move on each other; no torque measured.</summary>
    /// <param name="date">The day of the test.</param>
    /// <exception cref="ArgumentOutOfRangeException">The day is before 1900.</exception>
    public static SlipTest Slipped(DateTime date) => new(Day(date), SlipTestOutcome.Slipped, null, null, double.NaN, double.NaN);

    /// <summary>A test in which the plates did not move: the clutch is stuck or set too tight.</summary>
    /// <param name="date">The day of the test.</param>
    /// <exception cref="ArgumentOutOfRangeException">The day is before 1900.</exception>
    public static SlipTest DidNotSlip(DateTime date) => new(Day(date), SlipTestOutcome.DidNotSlip, null, null, double.NaN, double.NaN);

    /// <summary>A test in which the plates did not move up to a torque.</summary>
    /// <param name="date">The day of the test.</param>
    /// <param name="withstood">The highest torque applied.</param>
    /// <exception cref="ArgumentException">The day is before 1900, or the torque is missing.</exception>
    public static SlipTest DidNotSlip(DateTime date, TorqueBand withstood) =>
        new(Day(date), SlipTestOutcome.DidNotSlip, null, Guard.NotNull(withstood, nameof(withstood)), double.NaN, double.NaN);

    /// <summary>A test of which only the day is known.</summary>
    /// <param name="date">The day of the test.</param>
    /// <exception cref="ArgumentOutOfRangeException">The day is before 1900.</exception>
    public static SlipTest NotRecorded(DateTime date) => new(Day(date), SlipTestOutcome.NotKnown, null, null, double.NaN, double.NaN);

    /// <summary>A lever measurement: force at the end of an arm while the clutch keeps slipping, read within 10 %.</summary>
    /// <param name="date">The day of the test.</param>
    /// <param name="force">Force square to the arm; above 0.</param>
    /// <param name="arm">Distance from the shaft's centre; above 0, at most 10 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of its range.</exception>
    /// <example>200 N at 3 m: 600 N·m, read as 540 to 660 N·m.</example>
    public static SlipTest Lever(DateTime date, Force force, Length arm)
    {
        double newtons = Guard.Positive(Si.Newtons(force), "Lever force", "N", nameof(force));
        double meters = ArmM(arm);
        return new SlipTest(Day(date), SlipTestOutcome.Slipped, Read(newtons * meters), null, newtons, meters);
    }

    /// <summary>
    /// A lever measurement of both forces, each read within 10 %: at the first movement, and while the clutch keeps slipping.
    /// </summary>
    /// <param name="date">The day of the test.</param>
    /// <param name="firstMovement">Highest force up to the first movement, square to the arm; above 0.</param>
    /// <param name="slipping">Force while the faces keep moving; above 0.</param>
    /// <param name="arm">Distance from the shaft's centre; above 0, at most 10 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">Out of its range.</exception>
    /// <example>250 N and 200 N at 3 m: breakaway 675 to 825 N·m, running 540 to 660 N·m.</example>
    public static SlipTest Lever(DateTime date, Force firstMovement, Force slipping, Length arm)
    {
        double newtons = Guard.Positive(Si.Newtons(firstMovement), "Lever force at the first movement", "N", nameof(firstMovement));
        return Lever(date, slipping, arm).WithBreakaway(Read(newtons * ArmM(arm)));
    }

    /// <summary>A measurement whose torque is stated.</summary>
    /// <param name="date">The day of the test.</param>
    /// <param name="running">Torque while the clutch keeps slipping; bounded, low above 0.</param>
    /// <exception cref="ArgumentException">The torque is unbounded, or its low end is 0.</exception>
    public static SlipTest Measured(DateTime date, TorqueBand running) =>
        new(Day(date), SlipTestOutcome.Slipped, Reading(running, nameof(running)), null, double.NaN, double.NaN);

    /// <summary>The same test with the torque read at the first movement.</summary>
    /// <exception cref="ArgumentException">
    /// The torque is unbounded, or no running torque was measured, or the clutch did not slip.
    /// </exception>
    public SlipTest WithBreakaway(TorqueBand firstMovement) => Running is null
        ? throw new ArgumentException("A breakaway reading needs a running torque measured in the same test.", nameof(firstMovement))
        : new SlipTest(Date, Outcome, Running, Reading(firstMovement, nameof(firstMovement)), LeverForceN, LeverArmM);

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"slip test {Date:yyyy-MM-dd}: {Outcome}")
        + (Running is null ? string.Empty : ", " + Running);

    internal static DateTime Day(DateTime date) => date.Year >= 1900
        ? date.Date
        : throw new ArgumentOutOfRangeException(
            nameof(date), FormattableString.Invariant($"Date must be from 1900-01-01 on; got {date:yyyy-MM-dd}."));

    private static double ArmM(Length arm) => Guard.Within(
        Guard.Positive(Si.Meters(arm), "Lever arm", "m", nameof(arm)), 0, 10, "Lever arm", "m", nameof(arm));

    private static TorqueBand Read(double nm) => TorqueBand.OfSi(
        new Band(0.9 * nm, nm, 1.1 * nm),
        new BandBasis(LeverError, Basis.Given("lever measurement"), LeverError, BandEnd.Interval95, BandEnd.Interval95));

    private static TorqueBand Reading(TorqueBand torque, string parameter) => Guard.NotNull(torque, parameter).IsBounded
        && torque.SiBand.Low > 0
        ? torque
        : throw new ArgumentException("A measured torque must have a high end and a low end above 0 N·m; got " + torque + ".", parameter);
}
