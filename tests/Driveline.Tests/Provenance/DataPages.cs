using System.Text;
using Driveline.Provenance;

namespace Driveline.Tests.Provenance;

/// <summary>The pages of numbers in shared/docs/data, by the names of their files.</summary>
internal static class DataPages
{
    public static readonly SortedDictionary<string, Func<DataPage>> All = new(StringComparer.Ordinal)
    {
        ["advice.md"] = AdvicePages.OfAdvice,
        ["clutches.md"] = ClutchPages.OfClutches,
        ["constants.md"] = ConstantPages.OfConstants,
        ["grades.md"] = FastenerPages.OfGrades,
        ["hardness.md"] = FastenerPages.OfHardness,
        ["head-marks.md"] = FastenerPages.OfHeadMarks,
        ["machines.md"] = MachinePages.OfMachines,
        ["materials.md"] = BoltPages.OfMaterials,
        ["printed-loads.md"] = FastenerPages.OfPrintedLoads,
        ["pto.md"] = MachinePages.OfPto,
        ["shear.md"] = BoltPages.OfShear,
        ["threads.md"] = FastenerPages.OfThreads,
    };

    /// <summary>The page as it ought to stand in the folder.</summary>
    public static string Text(string file) => file == "index.md" ? Index() : All[file]().ToString();

    private static string Index()
    {
        var page = new StringBuilder();
        page.Append("# The numbers, and where they come from\n\n")
            .Append("Every table of numbers the library holds, written from the data itself. Each row carries a mark; a result hands on\n"
                + "the weakest of those it relied on:\n\n")
            .Append("| mark | meaning |\n|---|---|\n")
            .Append("| `Published` | printed in a document we name: number, edition, clause or table, and the copy it was read in |\n")
            .Append("| `CommonPractice` | used widely, without a source we can name, or known only from a secondary copy |\n")
            .Append("| `FromMemory` | nobody has checked it; a headline that rests on it says so where a margin is small |\n\n")
            .Append("`Given`, what a case or a caller states, is the fourth mark; no table holds it. To bring your own numbers see\n"
                + "[own-data.md](../own-data.md).\n\n")
            .Append("| page | rows | Published | CommonPractice | FromMemory |\n|---|---|---|---|---|\n");
        foreach ((string file, Func<DataPage> make) in All)
        {
            DataPage made = make();
            string text = made.ToString();
            page.Append("| [").Append(text[2..text.IndexOf('\n', StringComparison.Ordinal)]).Append("](").Append(file).Append(") | ")
                .AppendJoin(" | ", made.Marks.Values.Sum(), Of(BasisKind.Published), Of(BasisKind.CommonPractice), Of(BasisKind.FromMemory))
                .Append(" |\n");

            int Of(BasisKind kind) => made.Marks.GetValueOrDefault(kind);
        }

        return page.ToString();
    }
}
