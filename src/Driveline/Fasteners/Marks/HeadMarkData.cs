using Driveline.Provenance;

namespace Driveline.Fasteners;

/// <summary>Which grades a head mark can stand for, likeliest first.</summary>
internal static class HeadMarkData
{
    public static readonly Basis Charts = Basis.CommonPractice("fastener-trade identification charts");

    private static readonly Basis Textbook = Basis.CommonPractice("textbook table of bolt marks after J429j");

    private static readonly Basis Grouped = Basis.FromMemory("lines grouped in one part of the head; the angle is not verified");

    private static readonly Basis OlderStock = Basis.FromMemory(
        "older stock of this specification may carry the lines of the like SAE grade");

    private static readonly Basis Iso898Marking = Basis.CommonPractice("ISO 898-1, clause on marking");

    private static readonly Basis Omitted = Basis.CommonPractice("the mark of classes below 8.8 is often left off");

    /// <summary>Inch bolts by radial lines; a spacing of <see cref="LineSpacing.NotKnown"/> in a row fits only an unknown one.</summary>
    public static readonly LineRow[] Lines =
    [
        new(3, LineSpacing.Even, SaeJ429.Grade5, Charts),
        new(3, LineSpacing.UpsideDownT, SaeJ429.Grade5_1, Textbook),
        new(3, LineSpacing.Grouped, SaeJ429.Grade5_2, Grouped),
        new(3, LineSpacing.Even, AstmBolts.A449, OlderStock),
        new(3, LineSpacing.Even, AstmBolts.A325, OlderStock),
        new(3, LineSpacing.Even, AstmBolts.A325Before2014, OlderStock),
        new(5, LineSpacing.Even, SaeJ429.Grade7, Charts),
        new(6, LineSpacing.Even, SaeJ429.Grade8, Charts),
        new(6, LineSpacing.Grouped, SaeJ429.Grade8_2, Grouped),
        new(6, LineSpacing.Even, AstmBolts.A354Bd, OlderStock),
    ];

    /// <summary>Letters and numbers, compact and upper case.</summary>
    public static readonly TextRow[] Texts =
    [
        new("307A", AstmBolts.A307A, Charts),
        new("307B", AstmBolts.A307B, Charts),
        new("A307A", AstmBolts.A307A, Charts),
        new("A307B", AstmBolts.A307B, Charts),
        new("A307", AstmBolts.A307A, Charts),
        new("A307", AstmBolts.A307B, Charts),
        new("A325", AstmBolts.A325, Charts),
        new("A325", AstmBolts.A325Before2014, Charts),
        new("A490", AstmBolts.A490, Charts),
        new("A449", AstmBolts.A449, Charts),
        new("BC", AstmBolts.A354Bc, Basis.FromMemory("ASTM A354 marking")),
        new("BD", AstmBolts.A354Bd, Basis.FromMemory("ASTM A354 marking")),
        .. Iso898.All.Where(g => g.Name.IndexOf(' ') < 0).Select(g => new TextRow(g.Name, g, Iso898Marking)),
        .. Iso3506.All.Select(g => new TextRow(g.Name.Replace("-", string.Empty), g, Charts)),
    ];

    /// <summary>Marks of inch stainless bolts.</summary>
    public static readonly string[] InchStainless = ["304", "316", "188", "F593C"];

    /// <summary>Grades of a headed inch bolt without a mark.</summary>
    public static readonly TextRow[] UnmarkedInch =
    [
        new(string.Empty, SaeJ429.Grade2, Charts),
        new(string.Empty, SaeJ429.Grade1, Charts),
        new(string.Empty, AstmBolts.A307A, Charts),
    ];

    /// <summary>Classes of a metric bolt without a mark.</summary>
    public static readonly TextRow[] UnmarkedMetric =
    [
        new(string.Empty, Iso898.Class4_6, Omitted),
        new(string.Empty, Iso898.Class5_8, Omitted),
        new(string.Empty, Iso898.Class4_8, Omitted),
        new(string.Empty, Iso898.Class5_6, Omitted),
        new(string.Empty, Iso898.Class3_6, Omitted),
    ];

    internal sealed class LineRow(int count, LineSpacing spacing, BoltGrade grade, Basis basis)
    {
        public BoltGrade Grade { get; } = grade;

        public Basis Basis { get; } = basis;

        public bool Fits(HeadMark mark) =>
            mark.Lines == count && (mark.Spacing == LineSpacing.NotKnown || mark.Spacing == spacing);
    }

    internal sealed class TextRow(string text, BoltGrade grade, Basis basis)
    {
        public string Text { get; } = text;

        public BoltGrade Grade { get; } = grade;

        public Basis Basis { get; } = basis;
    }
}
