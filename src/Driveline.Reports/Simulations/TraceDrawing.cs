using Driveline.Chains;
using Driveline.Protection;
using Driveline.Quantities;
using Driveline.Reports.Documents;
using Driveline.Reports.Ladders;
using Driveline.Reports.Verdicts;
using OxyPlot;

namespace Driveline.Reports.Simulations;

/// <summary>
/// Lays the picture out: title, one panel an element with its torque over time, its limit and the trip, one time axis, key.
/// </summary>
internal sealed class TraceDrawing
{
    public const double Width = 1000;

    private const int Samples = 1501;
    private const double Margin = 24;
    private const double Left = 92;
    private const double Right = Width - 190;
    private const double PanelHeight = 190;
    private const double PanelGap = 54;

    // Limits far above everything that happens would flatten the traces: they are named at the top edge instead.
    private const double FarAbove = 2.5;

    private static readonly OxyColor WithColor = LadderColors.Of(LadderRowKind.Work);
    private static readonly OxyColor WithoutColor = LadderColors.Of(LadderRowKind.Overlap);
    private static readonly OxyColor LimitColor = OxyColor.FromRgb(0xE6, 0xDF, 0xEF);
    private static readonly OxyColor LimitLine = LadderColors.Of(LadderRowKind.Part);
    private static readonly OxyColor TripColor = OxyColor.FromRgb(0x9A, 0x62, 0x00);

    private readonly SimulationCheck check;
    private readonly Phrase phrase;
    private readonly string? title;
    private readonly string lead;
    private readonly SimulationTraces traces;
    private readonly IReadOnlyList<SimulationTrace> shown;
    private readonly double perNm;
    private readonly bool isShort;

    public TraceDrawing(SimulationCheck check, ReportOptions options)
    {
        this.check = check;
        phrase = new Phrase(Wording.Texts.In(options.Language), options.Units);
        string what = phrase.Of("simulate.title." + check.Simulation.Event);
        title = options.Title is null ? what : CleanText.Title(options.Title) + ": " + what;
        lead = SimulationLead.Of(check, phrase)
            + (check.Simulation.CanRun && check.Simulation.Assumed.Count > 0 ? " " + phrase.Of("simulate.undecided") : string.Empty);
        traces = SimulationTraces.OfPeaks(check, Samples);
        shown = traces.All.Count > 0 ? traces.Shown : [];
        perNm = phrase.TorquePerNm;
        isShort = traces.LengthS < 1;
    }

    /// <summary>What the picture says, for those who cannot see it.</summary>
    public string Description => lead + " " + phrase.Of("simulate.picture.description");

    public double Height => Math.Ceiling(PanelsTop + Math.Max(80, shown.Count * (PanelHeight + PanelGap)) + 70);

    private double PanelsTop => Margin + 24 + LadderCanvas.ColumnHeight(Width - (2 * Margin), lead, 22, true) + 40;

    public void Draw(LadderCanvas canvas)
    {
        canvas.Text(Margin, Margin + 8, title!, 16, LadderColors.Faint, false, HorizontalAlignment.Left);
        canvas.Column(Margin, Margin + 24, Width - (2 * Margin), lead, 22, LadderColors.Ink, true);
        double top = PanelsTop;
        if (shown.Count == 0)
        {
            canvas.Text(Width / 2, top + 30, phrase.Of("simulate.picture.none"), 16, LadderColors.Faint, false, HorizontalAlignment.Center);
            return;
        }

        var time = new TraceScale(0, Shown(traces.LengthS), Left, Right, 8);
        foreach (SimulationTrace trace in shown)
        {
            DrawPanel(canvas, trace, time, top);
            top += PanelHeight + PanelGap;
        }

        canvas.Text((Left + Right) / 2, top - 4, phrase.Of(Phrase.Code("simulate.picture.time").With("unit", isShort ? "ms" : "s")), 14,
            LadderColors.Ink, false, HorizontalAlignment.Center);
        DrawKey(canvas, top + 32);
    }

    private void DrawPanel(LadderCanvas canvas, SimulationTrace trace, TraceScale time, double top)
    {
        double bottom = top + PanelHeight;
        Limit? limit = LimitOf(trace.Load.DamagedAt);
        double most = trace.Most * perNm;
        double high = Math.Max(most, limit is { } l && l.Top <= FarAbove * most ? l.Top : 0) * 1.1;
        var torque = new TraceScale(trace.Least * perNm, Math.Max(high, 1e-6), bottom, top, 4);
        string name = phrase.Capital(trace.Load.Element.Name) + " ("
            + phrase.Of(Phrase.Code("simulate.picture.torque").With("unit", phrase.TorqueUnit)) + ")";
        canvas.Text(Left, top - 14, name, 15, LadderColors.Ink, true, HorizontalAlignment.Left);
        DrawLimit(canvas, limit, torque, top);
        foreach (double tick in torque.Ticks)
        {
            canvas.Line(Left, torque.At(tick), Right, torque.At(tick), LadderColors.Grid, 1);
            canvas.Text(Left - 8, torque.At(tick), phrase.Number(tick, "0.####"), 13, LadderColors.Ink, false, HorizontalAlignment.Right);
        }

        foreach (double tick in time.Ticks)
        {
            canvas.Line(time.At(tick), bottom, time.At(tick), bottom + 5, LadderColors.Ink, 1);
            canvas.Text(time.At(tick), bottom + 16, phrase.Number(tick, "0.####"), 13, LadderColors.Ink, false, HorizontalAlignment.Center);
        }

        if (check.With is { TripTime: { } trip, TrippedDevice: { } device })
        {
            DrawTrip(canvas, time.At(Shown(trip.Seconds)), top, bottom, ReferenceEquals(trace, shown[0]) ? device : null);
        }

        // The dashes lie on top, so that equal curves show both.
        DrawTrace(canvas, trace.With, time, torque, WithColor, isDashed: false);
        DrawTrace(canvas, trace.Without, time, torque, WithoutColor, isDashed: true);

        canvas.Line(Left, torque.At(0), Right, torque.At(0), LadderColors.Faint, 1);
        canvas.Line(Left, top, Left, bottom, LadderColors.Ink, 1.2);
        canvas.Line(Left, bottom, Right, bottom, LadderColors.Ink, 1.2);
        Note(canvas, top + 16, "simulate.picture.without", trace.Load.WithoutProtection?.NewtonMeters, WithoutColor);
        Note(canvas, top + 58, "simulate.picture.with", trace.Load.WithProtection?.NewtonMeters, WithColor);
        if (trace.Load.DamagedAt is { } damaged)
        {
            string range = damaged.High is { } end
                ? phrase.Number(damaged.Low.NewtonMeters) + " … " + phrase.Quantity(end.NewtonMeters, Findings.QuantityKind.Torque)
                : phrase.Quantity(damaged.Low.NewtonMeters, Findings.QuantityKind.Torque) + " …";
            canvas.Text(Right + 12, top + 100, phrase.Of("simulate.picture.damaged"), 13, LimitLine, false, HorizontalAlignment.Left);
            canvas.Text(Right + 12, top + 117, range, 13, LimitLine, true, HorizontalAlignment.Left);
        }
    }

    private void Note(LadderCanvas canvas, double y, string code, double? nm, OxyColor color)
    {
        string value = nm is { } known ? phrase.Quantity(known, Findings.QuantityKind.Torque) : phrase.Of("band.notKnown");
        canvas.Text(Right + 12, y, phrase.Of(code), 13, color, false, HorizontalAlignment.Left);
        canvas.Text(Right + 12, y + 17, value, 14, color, true, HorizontalAlignment.Left);
    }

    private static void DrawLimit(LadderCanvas canvas, Limit? limit, TraceScale torque, double top)
    {
        if (limit is not { } band || band.Low > torque.High)
        {
            return;
        }

        double upper = band.Top > torque.High ? top : torque.At(band.Top);
        canvas.Box(Left, upper, Right - Left, Math.Max(2, torque.At(band.Low) - upper), LimitColor, OxyColors.Undefined, 0);
        if (band.Expected <= torque.High)
        {
            canvas.Line(Left, torque.At(band.Expected), Right, torque.At(band.Expected), LimitLine, 2);
        }
    }

    private void DrawTrace(
        LadderCanvas canvas, IReadOnlyList<double>? values, TraceScale time, TraceScale torque, OxyColor color, bool isDashed)
    {
        if (values is null || values.Count < 2)
        {
            return;
        }

        double step = time.High / (Samples - 1);
        var points = new List<ScreenPoint>(values.Count);
        for (int k = 0; k < values.Count; k++)
        {
            points.Add(new ScreenPoint(time.At(k * step), torque.At(values[k] * perNm)));
        }

        canvas.Path(points, color, isDashed ? 1.6 : 2.2, isDashed);
    }

    private void DrawTrip(LadderCanvas canvas, double x, double top, double bottom, ProtectiveDevice? named)
    {
        canvas.Line(x, top, x, bottom, TripColor, 1.8);
        if (named is not null)
        {
            bool isLate = x > (Left + Right) / 2;
            string words = phrase.Of(Phrase.Code("simulate.picture.trip").With("device", phrase.Name(named.Name)));
            canvas.Text(isLate ? x - 6 : x + 6, bottom - 10, words, 13, TripColor, true, isLate ? HorizontalAlignment.Right
                : HorizontalAlignment.Left);
        }
    }

    private void DrawKey(LadderCanvas canvas, double y)
    {
        double x = Left;
        canvas.Path([new(x, y), new(x + 28, y)], WithColor, 2.2, false);
        x = Label(canvas, x + 34, y, "simulate.picture.with");
        canvas.Path([new(x, y), new(x + 28, y)], WithoutColor, 1.6, true);
        x = Label(canvas, x + 34, y, "simulate.picture.without");
        canvas.Box(x, y - 7, 26, 14, LimitColor, OxyColors.Undefined, 0);
        canvas.Line(x, y, x + 26, y, LimitLine, 2);
        Label(canvas, x + 32, y, "simulate.picture.damagedAt");
    }

    private double Label(LadderCanvas canvas, double x, double y, string code)
    {
        string label = phrase.Of(code);
        canvas.Text(x, y, label, 13, LadderColors.Ink, false, HorizontalAlignment.Left);
        return x + SvgTextMeasurer.Width(label, 13) + 14;
    }

    private double Shown(double seconds) => isShort ? seconds * 1000 : seconds;

    private Limit? LimitOf(TorqueBand? damagedAt) => damagedAt is null ? null : new Limit(
        damagedAt.Low.NewtonMeters * perNm,
        (damagedAt.Expected?.NewtonMeters ?? double.PositiveInfinity) * perNm,
        (damagedAt.High?.NewtonMeters ?? double.PositiveInfinity) * perNm);

    private readonly struct Limit(double low, double expected, double top)
    {
        public double Low { get; } = low;

        public double Expected { get; } = expected;

        public double Top { get; } = top;
    }
}
