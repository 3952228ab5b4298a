using Driveline.Provenance;

namespace Driveline.Clutches;

/// <summary>The numbers that the sums of a clutch begin with, and readings.</summary>
internal static class ClutchInputs
{
    private const string Springs = "springs as stated";
    private const string Build = "clutch as stated";

    public static readonly CalculationStep LeverForce = CalculationStep.Input(
        "leverForce", "F_L", "force at the lever while the clutch slips", "N", "lever test");
    public static readonly CalculationStep LeverArm = CalculationStep.Input("leverArm", "a", "arm of the lever", "m", "lever test");
    public static readonly CalculationStep ReadingError = CalculationStep.Input(
        "readingError", "e", "share by which a reading may be off", "1", "lever test");
    public static readonly CalculationStep ReadLow = new("readLow", "T_low", "(1 − e) · T", "N·m", "lowest of the reading");
    public static readonly CalculationStep ReadHigh = new("readHigh", "T_high", "(1 + e) · T", "N·m", "highest of the reading");
    public static readonly CalculationStep Present = new(
        "presentLow", "T_min", "lowest on faces as they are today", "N·m", "loss of friction when hot or damp");

    public static readonly CalculationStep BreakawayRatio = CalculationStep.Input(
        "breakawayRatio", "b", "highest first movement over slipping", "1", "breakaway of clean dry faces");

    public static readonly CalculationStep BreakawayOfReading = new(
        "breakawayTorque", "T_0", "b · T_high", "N·m", "highest at the first movement");
    public static readonly CalculationStep BreakawayStated = new(
        "breakawayTorque", "T_0", "highest at the first movement", "N·m", "reading, and faces as they are");

    public static readonly CalculationStep FreeLength = CalculationStep.Input(
        "freeLength", "L_0", "length of the springs without load", "m", Springs);
    public static readonly CalculationStep SetLength = CalculationStep.Input(
        "springLength", "L", "length of the springs as set", "m", "measured");
    public static readonly CalculationStep Wear = CalculationStep.Input("wear", "w", "wear of all faces since", "m", "as stated");
    public static readonly CalculationStep Deflection = new("deflection", "s", "L_0 − L − w", "m", "geometry");
    public static readonly CalculationStep DeflectionHeld = new(
        "deflection", "s", "no less than loose, no more than solid", "m", "geometry");

    public static readonly CalculationStep Rate = CalculationStep.Input(
        "springRate", "k", "force of one spring over its travel", "N/m", Springs);
    public static readonly CalculationStep Count = CalculationStep.Input("springCount", "n", "springs side by side", "1", Springs);
    public static readonly CalculationStep Factor = CalculationStep.Input(
        "springFactor", "f", "force measured or at its limit over the calculated one", "1", Springs);
    public static readonly CalculationStep Parallel = CalculationStep.Input("discsParallel", "p", "discs nested in a set", "1", Springs);
    public static readonly CalculationStep Series = CalculationStep.Input("setsInSeries", "i", "sets one after the other", "1", Springs);
    public static readonly CalculationStep Faces = CalculationStep.Input("faces", "N", "pairs of rubbing faces", "1", Build);
    public static readonly CalculationStep Outer = CalculationStep.Input("outerRadius", "Ro", "outer radius of the faces", "m", Build);
    public static readonly CalculationStep Inner = CalculationStep.Input("innerRadius", "Ri", "inner radius of the faces", "m", Build);
    public static readonly CalculationStep BreakawayFriction = CalculationStep.Input(
        "breakawayFriction", "μ_0", "friction coefficient at the first movement", "1", "facing data");

    public static readonly CalculationStep Breakaway = new("breakawayTorque", "T_0", "N · μ_0 · F · r", "N·m", "equilibrium");

    public static readonly CalculationStep Wanted = CalculationStep.Input(
        "wantedTorque", "T_w", "slip torque wanted", "N·m", "as asked for");
    public static readonly CalculationStep ClampNeeded = new("clampNeeded", "F", "T_w / (N · μ · r)", "N", "equilibrium, solved for F");
    public static readonly CalculationStep CoilsNeeded = new(
        "deflection", "s", "F / (n · k · f)", "m", "elementary spring theory, solved for s");
    public static readonly CalculationStep DiscsNeeded = new(
        "deflection", "s", "at which the springs give that force", "m", "EN 16984, solved for s");
    public static readonly CalculationStep LengthNeeded = new("lengthNeeded", "L", "L_0 − s", "m", "geometry");

    public static readonly CalculationStep SlipTorque = CalculationStep.Input(
        "torqueOfSlip", "T", "torque of the slipping clutch", "N·m", "as stated");
    public static readonly CalculationStep SlipSpeed = CalculationStep.Input(
        "slipSpeed", "Δω", "slip speed at the start", "rad/s", "as stated");
    public static readonly CalculationStep Until = CalculationStep.Input(
        "slipTime", "t", "time until somebody disengages", "s", "as stated");
    public static readonly CalculationStep FaceArea = CalculationStep.Input("faceArea", "A", "area of one face", "m²", Build);
    public static readonly CalculationStep PlateHeat = CalculationStep.Input(
        "plateHeat", "C", "heat that warms the plates by one kelvin", "J/K", "plates as stated");
}
