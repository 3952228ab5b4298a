using Driveline.Findings;
using Driveline.Quantities;
using Driveline.Reports.Pictures;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Simulations;

/// <summary>One element's panel: its torque with and without protection, its limit, and the moment at which something acts.</summary>
internal sealed class TracePanel(SimulationTrace trace, TraceLayout layout, TraceScale time, Phrase phrase)
{
    // Limits far above everything that happens would flatten the traces: they are named at the side instead.
    private const double FarAbove = 2.5;
    private const double NoteLine = 17;

    private readonly double perNm = phrase.TorquePerNm;

    /// <summary>When a device acts, in the time shown.</summary>
    public double? Trip { get; set; }

    /// <summary>The device, where this panel shall name it.</summary>
    public string? TrippedDevice { get; set; }

    public int Samples { get; set; }

    public double Height => layout.PanelHeight + layout.PanelGap + (layout.Frame.IsNarrow ? (Notes().Count * NoteLine) + 8 : 0);

    public void Draw(SvgCanvas canvas, double panelTop)
    {
        double top = panelTop + 26;
        double bottom = top + layout.PanelHeight;
        TorqueBand? damaged = trace.Load.DamagedAt;
        double most = trace.Most * perNm;
        double limit = EndOf(damaged);
        double high = Math.Max(most, limit <= FarAbove * most ? limit : 0) * 1.1;
        var torque = new TraceScale(
            trace.Least * perNm, Math.Max(high, 1e-6), bottom, top, layout.Frame.IsNarrow ? 3 : 4);
        string name = phrase.Capital(trace.Load.Element.Name) + " ("
            + phrase.Of(Phrase.Code("simulate.picture.torque").With("unit", phrase.TorqueUnit)) + ")";
        canvas.Text(layout.Frame.IsNarrow ? layout.Frame.Margin : layout.Left, top - 14, name, 15, SvgInk.Ink, true, TextAlign.Start);
        DrawLimit(canvas, damaged, torque, top);
        DrawAxes(canvas, torque, top, bottom);
        if (Trip is { } trip)
        {
            DrawTrip(canvas, time.At(trip), top, bottom);
        }

        // The dashes lie on top, so that equal curves show both.
        DrawTrace(canvas, trace.With, torque, SvgInk.Work, isDashed: false);
        DrawTrace(canvas, trace.Without, torque, SvgInk.Overlap, isDashed: true);
        canvas.Line(layout.Left, torque.At(0), layout.Right, torque.At(0), SvgInk.Faint, 1);
        canvas.Line(layout.Left, top, layout.Left, bottom, SvgInk.Ink, 1.2);
        canvas.Line(layout.Left, bottom, layout.Right, bottom, SvgInk.Ink, 1.2);
        DrawNotes(canvas, top, bottom);
    }

    private void DrawAxes(SvgCanvas canvas, TraceScale torque, double top, double bottom)
    {
        foreach (double tick in torque.Ticks)
        {
            canvas.Line(layout.Left, torque.At(tick), layout.Right, torque.At(tick), SvgInk.Grid, 1);
            canvas.Text(layout.Left - 8, torque.At(tick), phrase.Number(tick, "0.####"), layout.Frame.Small, SvgInk.Ink, false,
                TextAlign.End);
        }

        foreach (double tick in time.Ticks)
        {
            canvas.Line(time.At(tick), bottom, time.At(tick), bottom + 5, SvgInk.Ink, 1);
            canvas.Text(time.At(tick), bottom + 16, phrase.Number(tick, "0.####"), layout.Frame.Small, SvgInk.Ink, false, TextAlign.Middle);
        }
    }

    private List<(string Words, string Value, SvgInk Ink)> Notes()
    {
        var notes = new List<(string, string, SvgInk)>
        {
            (phrase.Of("simulate.picture.without"), Value(trace.Load.WithoutProtection?.NewtonMeters), SvgInk.Overlap),
            (phrase.Of("simulate.picture.with"), Value(trace.Load.WithProtection?.NewtonMeters), SvgInk.Work),
        };
        if (trace.Load.DamagedAt is { } damaged)
        {
            string range = damaged.High is { } end
                ? phrase.Number(damaged.Low.NewtonMeters) + " … " + phrase.Quantity(end.NewtonMeters, QuantityKind.Torque)
                : phrase.Quantity(damaged.Low.NewtonMeters, QuantityKind.Torque) + " …";
            notes.Add((phrase.Of("simulate.picture.damaged"), range, SvgInk.Part));
        }

        return notes;
    }

    private void DrawNotes(SvgCanvas canvas, double top, double bottom)
    {
        double y = layout.Frame.IsNarrow ? bottom + 38 : top + 16;
        foreach ((string words, string value, SvgInk ink) in Notes())
        {
            if (layout.Frame.IsNarrow)
            {
                canvas.Text(layout.Left, y, words, layout.NoteSize, ink);
                canvas.Text(layout.Right, y, value, layout.NoteSize, ink, true, TextAlign.End);
                y += NoteLine;
                continue;
            }

            canvas.Text(layout.Right + 12, y, words, layout.NoteSize, ink);
            canvas.Text(layout.Right + 12, y + NoteLine, value, 14, ink, true, TextAlign.Start);
            y += 42;
        }
    }

    private string Value(double? nm) => nm is { } known ? phrase.Quantity(known, QuantityKind.Torque) : phrase.Of("band.notKnown");

    private double EndOf(TorqueBand? damaged) => damaged is null ? 0 : (damaged.High?.NewtonMeters ?? double.PositiveInfinity) * perNm;

    private void DrawLimit(SvgCanvas canvas, TorqueBand? damaged, TraceScale torque, double top)
    {
        if (damaged is null || damaged.Low.NewtonMeters * perNm is var low && low > torque.High)
        {
            return;
        }

        double upper = EndOf(damaged) > torque.High ? top : torque.At(EndOf(damaged));
        canvas.Box(layout.Left, upper, layout.Right - layout.Left, Math.Max(2, torque.At(low) - upper), SvgInk.LimitGround, SvgInk.None, 0);
        if (damaged.Expected?.NewtonMeters * perNm is { } expected && expected <= torque.High)
        {
            canvas.Line(layout.Left, torque.At(expected), layout.Right, torque.At(expected), SvgInk.Part, 2);
        }
    }

    private void DrawTrace(SvgCanvas canvas, IReadOnlyList<double>? values, TraceScale torque, SvgInk ink, bool isDashed)
    {
        if (values is null || values.Count < 2)
        {
            return;
        }

        double step = time.High / (Samples - 1);
        var points = new SlimPath(values.Count);
        for (int k = 0; k < values.Count; k++)
        {
            points.Add(time.At(k * step), torque.At(values[k] * perNm));
        }

        canvas.Path(points.Done(), ink, isDashed ? 1.6 : 2.2, isDashed);
    }

    private void DrawTrip(SvgCanvas canvas, double x, double top, double bottom)
    {
        canvas.Line(x, top, x, bottom, SvgInk.Trip, 1.8);
        if (TrippedDevice is not null)
        {
            bool isLate = x > (layout.Left + layout.Right) / 2;
            string words = phrase.Of(Phrase.Code("simulate.picture.trip").With("device", phrase.Name(TrippedDevice)));
            canvas.Text(isLate ? x - 6 : x + 6, bottom - 10, words, layout.Frame.Small, SvgInk.Trip, true,
                isLate ? TextAlign.End : TextAlign.Start);
        }
    }
}
