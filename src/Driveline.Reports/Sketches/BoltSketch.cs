using Driveline.Findings;
using Driveline.Reports.Pictures;
using Driveline.Reports.Verdicts;
using Driveline.ShearBolts;

namespace Driveline.Reports.Sketches;

/// <summary>The bolt in its joint with the planes in which it is cut, drawn to one scale from the numbers of the joint.</summary>
internal sealed class BoltSketch : IPicture
{
    private const double Tall = 300;

    private readonly PictureFrame frame;
    private readonly Phrase phrase;
    private readonly ShearBoltJoint joint;
    private readonly IReadOnlyList<string> lead;
    private readonly IReadOnlyList<string> notes;
    private readonly double perMeter;

    private BoltSketch(BreakTorque torque, Phrase phrase, PictureFrame frame)
    {
        joint = torque.Joint;
        this.frame = frame;
        this.phrase = phrase;
        int planes = joint.Bolts * joint.PlanesPerBolt;
        Title = planes == 1 ? phrase.Of("picture.bolt.lead.one")
            : phrase.Of(Phrase.Code(joint.Bolts > 1 ? "picture.bolt.lead.bolts" : "picture.bolt.lead")
                .With("bolts", QuantityKind.Count, joint.Bolts).With("planes", QuantityKind.Count, planes));
        Title += torque.IsKnown ? " " + phrase.Of(Phrase.Code("picture.bolt.lead.breaks").With("band", BandWords.Of(torque.Torque, phrase)))
            : string.Empty;
        lead = TextWidths.Lines(Title, frame.Inner, frame.Name, true);
        double across = 2.4 * (joint.Radius.Meters + joint.Bolt.Diameter.Meters);
        perMeter = Math.Min(Tall, frame.Inner) / Math.Max(across, 1e-4);
        notes =
        [
            .. new[] { Note("picture.bolt.radius", joint.Radius.Meters), Note("picture.bolt.diameter", joint.Bolt.Diameter.Meters) }
                .SelectMany(n => TextWidths.Lines(n, frame.Inner, frame.Detail, false)),
            .. TextWidths.Lines(phrase.Of("picture.bolt.layout." + joint.Layout), frame.Inner, frame.Detail, false),
        ];
    }

    public string Title { get; }

    public string Description => phrase.Of("picture.bolt.description");

    public double Width => frame.Width;

    public double Height => Math.Ceiling(Top + Tall + 20 + (notes.Count * SvgCanvas.LineHeight(frame.Detail)) + 12);

    private double Top => frame.Margin + (lead.Count * SvgCanvas.LineHeight(frame.Name)) + 12;

    public static BoltSketch? Of(BreakTorque torque, ReportOptions options, PictureFrame frame) =>
        torque.Joint is { Layout: not JointLayout.NotKnown, Radius.Meters: > 0, Bolt.Diameter.Meters: > 0 }
            ? new BoltSketch(torque, new Phrase(options.Texts, options.Units), frame) : null;

    public void Draw(SvgCanvas canvas)
    {
        canvas.Column(frame.Margin, frame.Margin, lead, frame.Name, SvgInk.Ink, true);
        double middleX = frame.Width / 2;
        double middleY = Top + (Tall / 2);
        if (joint.Layout == JointLayout.BoltCircle)
        {
            DrawCircle(canvas, middleX, middleY);
        }
        else
        {
            DrawAcross(canvas, middleX, middleY);
        }

        canvas.Column(frame.Margin, Top + Tall + 16, notes, frame.Detail, SvgInk.Ink, false);
    }

    private string Note(string code, double meters) => phrase.Of(Phrase.Code(code).With("value", QuantityKind.Length, meters));

    // The section along the bolt: the shaft in the middle, the hub around it, a plane at each face that cuts.
    private void DrawAcross(SvgCanvas canvas, double x, double y)
    {
        double r = joint.Radius.Meters * perMeter;
        double d = Math.Max(6, joint.Bolt.Diameter.Meters * perMeter);
        double wall = Math.Max(18, 0.35 * r);
        double reach = Math.Min(frame.Inner / 2, 2.2 * r);
        bool isBoth = joint.PlanesPerBolt > 1;
        canvas.Box(x - reach, y - r - wall, 2 * reach, wall, SvgInk.OtherSteel, SvgInk.Ink, 1);
        canvas.Box(x - reach, y + r, 2 * reach, wall, SvgInk.OtherSteel, SvgInk.Ink, 1);
        canvas.Box(x - reach, y - r, 2 * reach, 2 * r, SvgInk.Steel, SvgInk.Ink, 1);
        canvas.Box(x - (d / 2), y - r - wall - 10, d, (2 * r) + (2 * wall) + 20, SvgInk.Device, SvgInk.Ink, 1.2);
        canvas.Box(x - d, y - r - wall - 20, 2 * d, 10, SvgInk.Device, SvgInk.Ink, 1.2);
        canvas.Path([(x - reach - 8, y), (x + reach + 8, y)], SvgInk.Ink, 1, true);
        Plane(canvas, x, d, y - r);
        if (isBoth)
        {
            Plane(canvas, x, d, y + r);
        }

        double at = x - reach + 24;
        canvas.Line(at, y, at, y - r, SvgInk.Ink, 1.2);
        canvas.Line(at - 5, y, at + 5, y, SvgInk.Ink, 1.2);
        canvas.Line(at - 5, y - r, at + 5, y - r, SvgInk.Ink, 1.2);
        canvas.Text(at + 8, y - (r / 2), "r", frame.Name, SvgInk.Ink, true, TextAlign.Start);
        canvas.Text(x + (d / 2) + 6, y + (r / 2), "d", frame.Name, SvgInk.Ink, true, TextAlign.Start);
    }

    // Red on the colour of the bolt would be lost in grey and on a dark screen.
    private static void Plane(SvgCanvas canvas, double x, double d, double y)
    {
        canvas.Path([(x - (2 * d) - 20, y), (x + (2 * d) + 20, y)], SvgInk.Overlap, 3, true);
        canvas.Line(x - (d / 2), y, x + (d / 2), y, SvgInk.Paper, 4);
        canvas.Path([(x - (d / 2), y), (x + (d / 2), y)], SvgInk.Ink, 3, true);
    }

    // The end view: the bolts on their circle.
    private void DrawCircle(SvgCanvas canvas, double x, double y)
    {
        double r = joint.Radius.Meters * perMeter;
        double half = Math.Max(4, joint.Bolt.Diameter.Meters * perMeter / 2);
        canvas.Circle(x, y, r + (2.2 * half), SvgInk.OtherSteel, SvgInk.Ink, 1);
        canvas.Circle(x, y, r, SvgInk.None, SvgInk.Faint, 1);
        canvas.Circle(x, y, Math.Max(4, r * 0.35), SvgInk.Steel, SvgInk.Ink, 1);
        for (int k = 0; k < joint.Bolts; k++)
        {
            double angle = (2 * Math.PI * k / joint.Bolts) - (Math.PI / 2);
            canvas.Circle(x + (r * Math.Cos(angle)), y + (r * Math.Sin(angle)), half, SvgInk.Device, SvgInk.Overlap, 3);
        }

        canvas.Line(x, y, x, y - r + half, SvgInk.Ink, 1.2);
        canvas.Text(x + 6, y - (r * 0.6), "r", frame.Name, SvgInk.Ink, true, TextAlign.Start);
    }
}
