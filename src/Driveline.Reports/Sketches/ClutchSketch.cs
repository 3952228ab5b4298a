using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Reports.Pictures;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Sketches;

/// <summary>The pack of a disc clutch in half section above its axis: faces, radii, springs, drawn from its numbers.</summary>
internal sealed class ClutchSketch : IPicture
{
    private const double Tall = 250;
    private const int MostFaces = 24;

    private readonly PictureFrame frame;
    private readonly Phrase phrase;
    private readonly DiscClutch clutch;
    private readonly IReadOnlyList<string> lead;
    private readonly IReadOnlyList<string> notes;

    private ClutchSketch(DiscClutch clutch, Phrase phrase, PictureFrame frame)
    {
        this.frame = frame;
        this.phrase = phrase;
        this.clutch = clutch;
        Title = phrase.Of(Phrase.Code("picture.pack.lead").With("faces", QuantityKind.Count, clutch.Faces));
        lead = TextWidths.Lines(Title, frame.Inner, frame.Name, true);
        var lines = new List<string>
        {
            Note("picture.pack.outer", clutch.OuterRadius.Meters), Note("picture.pack.inner", clutch.InnerRadius.Meters),
            Note("picture.pack.free", clutch.Springs.FreeLength.Meters), Note("picture.pack.solid", clutch.Springs.SolidLength.Meters),
        };
        if (clutch.SpringLength?.Expected is { } now)
        {
            lines.Add(Note("picture.pack.now", now.Meters));
        }

        notes = [.. lines.SelectMany(n => TextWidths.Lines(n, frame.Inner, frame.Detail, false))];
    }

    public string Title { get; }

    public string Description => phrase.Of("picture.pack.description");

    public double Width => frame.Width;

    public double Height => Math.Ceiling(Top + Tall + 24 + (notes.Count * SvgCanvas.LineHeight(frame.Detail)) + 12);

    private double Top => frame.Margin + (lead.Count * SvgCanvas.LineHeight(frame.Name)) + 12;

    public static ClutchSketch? Of(DiscClutch clutch, ReportOptions options, PictureFrame frame) =>
        clutch.Faces > MostFaces ? null : new ClutchSketch(clutch, new Phrase(options.Texts, options.Units), frame);

    public void Draw(SvgCanvas canvas)
    {
        canvas.Column(frame.Margin, frame.Margin, lead, frame.Name, SvgInk.Ink, true);
        double axis = Top + Tall;
        double perMeter = (Tall - 20) / clutch.OuterRadius.Meters;
        double outer = axis - (clutch.OuterRadius.Meters * perMeter);
        double inner = axis - (clutch.InnerRadius.Meters * perMeter);
        double springs = Math.Min(0.3 * frame.Inner, 220);
        double step = Math.Min(34, (frame.Inner - springs - 90) / (clutch.Faces + 1));
        double x = frame.Margin + 46;
        double start = x;

        // Plate, lining, plate, lining: each face is one pair that rubs.
        for (int k = 0; k <= clutch.Faces; k++)
        {
            canvas.Box(x, outer, step * 0.6, k % 2 == 0 ? axis - outer - 12 : inner - outer + 10,
                k % 2 == 0 ? SvgInk.OtherSteel : SvgInk.Steel, SvgInk.Ink, 1);
            if (k < clutch.Faces)
            {
                canvas.Box(x + (step * 0.6), outer, step * 0.4, inner - outer, SvgInk.Device, SvgInk.Ink, 0.8);
            }

            x += step;
        }

        DrawSpring(canvas, x - (step * 0.4), springs, (outer + inner) / 2);
        canvas.Path([(frame.Margin, axis), (frame.Width - frame.Margin, axis)], SvgInk.Ink, 1, true);
        Radius(canvas, start - 14, axis, outer, "Ro");
        Radius(canvas, start - 36, axis, inner, "Ri");
        canvas.Column(frame.Margin, axis + 24, notes, frame.Detail, SvgInk.Ink, false);
    }

    private string Note(string code, double meters) => phrase.Of(Phrase.Code(code).With("value", QuantityKind.Length, meters));

    private void Radius(SvgCanvas canvas, double x, double axis, double to, string name)
    {
        canvas.Line(x, axis, x, to, SvgInk.Ink, 1.2);
        canvas.Line(x - 5, to, x + 5, to, SvgInk.Ink, 1.2);
        canvas.Text(x - 2, axis + 12, name, frame.Small, SvgInk.Ink, false, TextAlign.Middle);
    }

    private void DrawSpring(SvgCanvas canvas, double x, double width, double y)
    {
        double share = clutch.SpringLength?.Expected is { } now
            ? Math.Max(0.2, Math.Min(1, now.Meters / clutch.Springs.FreeLength.Meters)) : 1;
        double length = width * 0.8 * share;
        const int Turns = 7;
        (double X, double Y)[] coil =
            [.. Enumerable.Range(0, (2 * Turns) + 1).Select(k => (x + (length * k / (2 * Turns)), y + (k % 2 == 0 ? 16 : -16)))];
        canvas.Path(coil, SvgInk.Part, 3, false);
        canvas.Box(x + length, y - 40, 8, 80, SvgInk.OtherSteel, SvgInk.Ink, 1);
        canvas.Line(x, y - 52, x + length, y - 52, SvgInk.Ink, 1.2);
        canvas.Line(x, y - 57, x, y - 47, SvgInk.Ink, 1.2);
        canvas.Line(x + length, y - 57, x + length, y - 47, SvgInk.Ink, 1.2);
        canvas.Text(x + (length / 2), y - 64, "L", frame.Name, SvgInk.Ink, true, TextAlign.Middle);
    }
}
