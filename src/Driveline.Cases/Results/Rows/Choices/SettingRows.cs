using Driveline.Choosing;

namespace Driveline.Cases.Results;

/// <summary>The settings of a slip clutch.</summary>
internal static class SettingRows
{
    private static readonly ShapeOf<PointOf> Point = new ShapeOf<PointOf>("setting", "A setting of a slip clutch; torques at the clutch.")
        .Band("slipTorqueNm", p => p.Point.Slip.Running, "Torque while it slips.")
        .Band("breakawayTorqueNm", p => p.Point.Slip.Breakaway, "Torque at its first slip after standing.")
        .Number("springLengthMm", p => p.LengthMm, "Length of its springs, mm; null without the manual's torque.")
        .Number("nutTurns", p => p.Turns, "Turns of its nuts from loose; null without the manual's torque or the pitch.")
        .Margin("workMargin", p => p.Point.WorkMargin, "Work margin with it.")
        .Margin("guardMargin", p => p.Point.GuardMargin, "Guard margin with it.");

    private static readonly ShapeOf<ClutchChoice> Window = new ShapeOf<ClutchChoice>(
            "window", "Between which expected torques at the clutch, while it slips, a setting suits.")
        .Number("lowNm", c => c.Window!.LowTorque.NewtonMeters, "Lowest.")
        .Number("highNm", c => c.Window!.HighTorque.NewtonMeters, "Highest.")
        .Object("springLengthMm", c => new WindowEnds(Of(c, c.Window!.Lowest).LengthMm, Of(c, c.Window!.Highest).LengthMm),
            WindowEnds.Shape, "Length of its springs, mm.")
        .Object("nutTurns", c => new WindowEnds(Of(c, c.Window!.Lowest).Turns, Of(c, c.Window!.Highest).Turns), WindowEnds.Shape,
            "Turns of its nuts from loose.");

    public static readonly ShapeOf<ClutchChoice> Shape = new ShapeOf<ClutchChoice>("settings", "The settings that suit a slip clutch.")
        .Text("device", c => c.Place.Name, "Name of the clutch.")
        .Maybe("window", c => c.Window is null ? null : c, Window, "The window of settings; null when none suits.")
        .Maybe("best", c => c.Best is { } best ? Of(c, best) : null, Point, "The setting with most room; null when none suits.")
        .Maybe("manuals", c => c.Manuals is { } manuals ? Of(c, manuals) : null, Point, "The manual's setting; null when it states none.")
        .List("findings", c => c.Findings, FindingRows.Shape, "Everything to notice, worst first.")
        .List("cautions", c => c.Cautions, CautionRows.Shape, "Cautions; show them all.");

    private static PointOf Of(ClutchChoice choice, ClutchPoint point) => new(choice, point);

    // Without the manual's torque no length is to be set.
    private sealed class PointOf
    {
        private readonly ClutchChoice choice;

        public PointOf(ClutchChoice choice, ClutchPoint point)
        {
            this.choice = choice;
            Point = point;
        }

        public ClutchPoint Point { get; }

        public double? LengthMm => choice.ManualsTorque is null ? null : Point.SpringLength.Millimeters;

        public double? Turns => choice.ManualsTorque is null ? null : choice.NutTurns(Point);
    }

    private sealed class WindowEnds
    {
        public static readonly ShapeOf<WindowEnds> Shape = new ShapeOf<WindowEnds>("windowEnds", "A number at both ends of the window.")
            .Number("atLow", e => e.low, "At the lowest torque.")
            .Number("atHigh", e => e.high, "At the highest torque.");

        private readonly double? low;
        private readonly double? high;

        public WindowEnds(double? low, double? high)
        {
            this.low = low;
            this.high = high;
        }
    }
}
