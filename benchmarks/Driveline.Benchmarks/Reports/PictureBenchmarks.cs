using System.Buffers;
using System.Globalization;
using System.Text;
using BenchmarkDotNet.Attributes;
using Driveline.Cases;
using Driveline.Cases.Results;
using Driveline.Choosing;
using Driveline.Fasteners;
using Driveline.Protection;
using Driveline.Reports;

namespace Driveline.Benchmarks.Reports;

/// <summary>A torque ladder, the picture of a simulated strike, and a choice of 60 stock bolts with its JSON.</summary>
/// <remarks>
/// The baseline of each writes as many characters of a picture as one would by hand: a string builder, shapes with four numbers in the
/// invariant culture, no lay-out, no words, no simulation.
/// </remarks>
[MemoryDiagnoser]
public class PictureBenchmarks
{
    private static readonly string[] Sizes =
    [
        "M5", "M6", "M8", "M10", "M12", "M14", "M16", "1/4-20 UNC", "5/16-18 UNC", "3/8-16 UNC", "7/16-14 UNC", "1/2-13 UNC",
        "5/8-11 UNC", "3/4-10 UNC",
    ];

    private readonly ProtectionVerdict verdict = Case("thornbeck-bolt-right").Verdict();
    private readonly SimulationCheck check = Case("ravensmoor-stump").Simulation().Check!;
    private readonly ProtectionQuestion question = Case("thornbeck-bolt-right").Verdict().Question;
    private readonly ChoiceTerms terms = ChoiceTerms.Default.WithStock(Stock());
    private readonly ArrayBufferWriter<byte> room = new(1 << 18);
    private readonly int ladderLength;
    private readonly int simulationLength;
    private readonly int choiceLength;

    public PictureBenchmarks()
    {
        ladderLength = Ladder();
        simulationLength = Simulation();
        choiceLength = Choice();
    }

    [Benchmark]
    public int Ladder() => TorqueLadderPicture.Svg(verdict).Length;

    [Benchmark]
    public int HandWritten_Ladder() => HandWritten(ladderLength);

    /// <summary>With the simulation, which runs once more for the picture, with and without protection.</summary>
    [Benchmark]
    public int Simulation() => SimulationPicture.Svg(check).Length;

    [Benchmark]
    public int HandWritten_Simulation() => HandWritten(simulationLength);

    [Benchmark]
    public int Choice()
    {
        room.ResetWrittenCount();
        ChoiceJson.Of(BoltChoice.For(question, terms)).Write(room);
        return room.WrittenCount;
    }

    [Benchmark]
    public int HandWritten_Choice() => HandWritten(choiceLength);

    /// <summary>Chooses for ever, for a profiler.</summary>
    public static void LoopChoice()
    {
        var pictures = new PictureBenchmarks();
        while (pictures.Choice() > 0)
        {
        }
    }

    private static CaseAssessment Case(string name) =>
        CaseAssessment.Of(File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "cases", name + ".case.json")));

    private static StockList Stock()
    {
        string[] metric = ["4.6", "5.8", "8.8", "10.9"];
        string[] inch = ["SAE 2", "SAE 5", "SAE 8", "SAE 1"];
        string[] strongest = ["M8", "M10", "M12", "M16"];
        StockItem[] items =
        [
            .. Sizes.SelectMany(size => (size[0] == 'M' ? metric : inch).Select(grade => Item(size, grade))),
            .. strongest.Select(size => Item(size, "12.9")),
        ];
        return items.Length == 60 ? StockList.Of(items) : throw new InvalidOperationException("The benchmark must offer 60 bolts.");
    }

    private static StockItem Item(string thread, string grade) => StockItem.Of(ScrewThread.Parse(thread), BoltGrade.Parse(grade));

    private static int HandWritten(int length)
    {
        var svg = new StringBuilder(length + 200);
        for (int k = 0; svg.Length < length; k++)
        {
            svg.Append("<rect x=\"").Append((12.25 + k).ToString("0.##", CultureInfo.InvariantCulture))
                .Append("\" y=\"").Append((40.5 + k).ToString("0.##", CultureInfo.InvariantCulture))
                .Append("\" width=\"").Append((100.75 + k).ToString("0.##", CultureInfo.InvariantCulture))
                .Append("\" height=\"").Append((14.0 + k).ToString("0.##", CultureInfo.InvariantCulture))
                .Append("\" fill=\"none\" class=\"dl-f-work dl-s-ink\" stroke-width=\"1\"/>\n");
        }

        return svg.ToString().Length;
    }
}
