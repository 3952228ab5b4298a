using System.Globalization;
using Parquet;

namespace Driveline.Sweeps.Tests;

public class FileTests
{
    [Theory]
    [InlineData(".csv")]
    [InlineData(".parquet")]
    public void File_ThreadsShardsAndResume_ChangeNoByte(string kind)
    {
        using var folder = new TestFolder();
        Study study = TestStudies.Mixed(1234);
        string whole = folder["one" + kind];
        Sweep.RunTo(study, whole, SweepOptions.Default.WithThreads(1), default);
        byte[] expected = File.ReadAllBytes(whole);
        foreach (int threads in new[] { 2, 16 })
        {
            Sweep.RunTo(study, folder[threads + kind], SweepOptions.Default.WithThreads(threads), default);
            Assert.Equal(expected, File.ReadAllBytes(folder[threads + kind]));
        }

        string[] shards = [.. Enumerable.Range(1, 7).Select(i => folder["shard" + i + kind])];
        for (int i = 1; i <= 7; i++)
        {
            Sweep.RunTo(study, shards[i - 1], SweepOptions.Default.WithThreads(2).WithShard(i, 7), default);
        }

        Assert.Equal(1234, Sweep.Merge(shards.Reverse(), folder["merged" + kind]));
        Assert.Equal(expected, File.ReadAllBytes(folder["merged" + kind]));
        Assert.DoesNotContain(folder.Files, f => f.Contains("partial", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData(".csv", 0)]
    [InlineData(".csv", 2)]
    [InlineData(".csv", 9_999)]
    [InlineData(".csv", 30_000)]
    [InlineData(".parquet", 3)]
    [InlineData(".parquet", 4)]
    [InlineData(".parquet", 12_345)]
    [InlineData(".parquet", 30_000)]
    public void File_CutAnywhere_IsGoneOnWithToTheSameBytes(string kind, int bytes)
    {
        using var folder = new TestFolder();
        Study study = TestStudies.Mixed(777);
        Sweep.RunTo(study, folder["whole" + kind], SweepOptions.Default.WithThreads(1), default);
        byte[] expected = File.ReadAllBytes(folder["whole" + kind]);
        string path = folder["cut" + kind];
        Stop(study, path);
        File.WriteAllBytes(path + ".partial", expected[..bytes]);
        StudyResult result = Sweep.RunTo(study, path, SweepOptions.Default.WithResume(true), default);
        Assert.Equal(expected, File.ReadAllBytes(path));
        string Figures(StudyResult of) => of.Document().ToJson().Split("\"quantiles\"")[1];
        Assert.Equal(Figures(Sweep.Run(study)), Figures(result));
    }

    [Theory]
    [InlineData(".csv")]
    [InlineData(".parquet")]
    public void File_OnAFullDisk_SaysSoAndWhereToGoOn(string kind)
    {
        if (!OperatingSystem.IsLinux())
        {
            return;
        }

        using var folder = new TestFolder();
        string path = folder["full" + kind];
        File.CreateSymbolicLink(path + ".partial", "/dev/full");
        StudyFileException failed = Assert.Throws<StudyFileException>(() => Sweep.RunTo(TestStudies.Mixed(50_000), path));
        Assert.Contains("cannot be written: ", failed.Message, StringComparison.Ordinal);
        Assert.EndsWith("'. What is done stays in '" + path + ".partial': make room, and go on with --resume.", failed.Message,
            StringComparison.Ordinal);
        Assert.False(File.Exists(path));
    }

    // A CSV carries no mark of its study; its factors tell it.
    [Fact]
    public void Resume_WholeCsvOfAnotherSeed_IsRefused()
    {
        using var folder = new TestFolder();
        Study Of(int seed) => Study.Of("y").WithFactors(TestFunctions.Units(2)).WithDesign(Design.Sobol(64, (ulong)seed))
            .WithOutputs(StudyOutput.Of("y", x => x[0] + x[1]));
        Sweep.RunTo(Of(7), folder["y.csv"]);
        byte[] written = File.ReadAllBytes(folder["y.csv"]);
        StudyFileException refused = Assert.Throws<StudyFileException>(
            () => Sweep.RunTo(Of(8), folder["y.csv"], SweepOptions.Default.WithResume(true), default));
        Assert.Contains("it is not this study", refused.Message, StringComparison.Ordinal);
        Assert.Equal(written, File.ReadAllBytes(folder["y.csv"]));
        Assert.Equal(64, Sweep.RunTo(Of(7), folder["y.csv"], SweepOptions.Default.WithResume(true), default).Rows);
    }

    // Another version may compute other numbers: a file must not hold both.
    [Fact]
    public void Mark_OfAnotherVersionOfTheLibrary_IsAnother()
    {
        StudyPlan plan = StudyPlan.Of(TestStudies.Mixed(10));
        string MarkOf(string version) => StudyPlan.MarkOf(plan.Study, plan.Outputs, plan.RowsPerGroup, version);
        Assert.Equal(plan.Mark, MarkOf(typeof(StudyPlan).Assembly.GetName().Version!.ToString()));
        Assert.NotEqual(MarkOf("0.1.0.0"), MarkOf("0.1.1.0"));
    }

    [Fact]
    public void File_OfAnotherStudy_IsNotGoneOnWith()
    {
        using var folder = new TestFolder();
        Stop(TestStudies.Mixed(777), folder["a.csv"]);
        StudyFileException refused = Assert.Throws<StudyFileException>(() =>
            Sweep.RunTo(TestStudies.Mixed(778), folder["a.csv"], SweepOptions.Default.WithResume(true), default));
        Assert.Contains("another study", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void File_Whole_IsOnlyReadWhenResumed()
    {
        using var folder = new TestFolder();
        Study study = TestStudies.Mixed(500);
        foreach (string name in new[] { "a.csv", "a.parquet" })
        {
            Sweep.RunTo(study, folder[name]);
            DateTime written = File.GetLastWriteTimeUtc(folder[name]);
            Assert.Equal(500, Sweep.RunTo(study, folder[name], SweepOptions.Default.WithResume(true), default).Rows);
            Assert.Equal(written, File.GetLastWriteTimeUtc(folder[name]));
            Assert.Throws<StudyFileException>(
                () => Sweep.RunTo(TestStudies.Mixed(501), folder[name], SweepOptions.Default.WithResume(true), default));
        }
    }

    [Fact]
    public void File_FullDisk_SaysSoAndIsGoneOnWith()
    {
        using var folder = new TestFolder();
        Study study = TestStudies.Mixed(777);
        Stop(study, folder["full.csv"]);
        File.Delete(folder["full.csv.partial"]);
        File.CreateSymbolicLink(folder["full.csv.partial"], "/dev/full");
        StudyFileException refused = Assert.Throws<StudyFileException>(() => Sweep.RunTo(study, folder["full.csv"]));
        Assert.Contains("No space left", refused.Message, StringComparison.Ordinal);
        Assert.Contains("--resume", refused.Message, StringComparison.Ordinal);
        Assert.False(File.Exists(folder["full.csv"]));
    }

    [Theory]
    [InlineData("1 2 4", "Rows 200 to 299 are missing")]
    [InlineData("1 2", "missing")]
    [InlineData("1 2 2 3 4", "stand twice")]
    public void Merge_ShardsThatDoNotFit_SaysWhichRows(string taken, string says)
    {
        using var folder = new TestFolder();
        for (int i = 1; i <= 4; i++)
        {
            Sweep.RunTo(TestStudies.Mixed(400), folder[i + ".parquet"], SweepOptions.Default.WithShard(i, 4), default);
        }

        StudyFileException refused = Assert.Throws<StudyFileException>(() => Sweep.Merge(
            taken.Split(' ').Select(i => folder[i + ".parquet"]), folder["m.parquet"]));
        Assert.Contains(says, refused.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("m.parquet", folder.Files);
    }

    [Fact]
    public void Merge_OtherStudy_IsRefused()
    {
        using var folder = new TestFolder();
        Sweep.RunTo(TestStudies.Mixed(400), folder["1.parquet"], SweepOptions.Default.WithShard(1, 2), default);
        Sweep.RunTo(TestStudies.Mixed(402), folder["2.parquet"], SweepOptions.Default.WithShard(2, 2), default);
        Assert.Contains("another study", Assert.Throws<StudyFileException>(() => Sweep.Merge(
            [folder["1.parquet"], folder["2.parquet"]], folder["m.parquet"])).Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Parquet_AnotherReader_FindsTheSameRows()
    {
        using var folder = new TestFolder();
        Study study = TestStudies.Mixed(250);
        StudyTable table = Sweep.Run(study).Table!;
        Sweep.RunTo(study, folder["a.parquet"]);
        await using ParquetReader reader = await ParquetReader.CreateAsync(folder["a.parquet"]);
        Assert.Equal(3, reader.RowGroupCount);
        Assert.Equal(["row", "x, first", "y", "grade", "sum", "word", "double", "fails", "error"],
            reader.Schema.DataFields.Select(f => f.Name));
        int at = 0;
        for (int g = 0; g < 3; g++)
        {
            using ParquetRowGroupReader group = reader.OpenRowGroupReader(g);
            var columns = new Dictionary<string, Array>();
            foreach (Parquet.Schema.DataField field in reader.Schema.DataFields)
            {
                columns[field.Name] = await ParquetColumns.Read(group, field);
            }

            for (int k = 0; k < group.RowCount; k++, at++)
            {
                Assert.Equal((long)at, columns["row"].GetValue(k));
                Assert.Equal(table.Numbers("x, first")[at], columns["x, first"].GetValue(k));
                AssertNumber(table.Numbers("sum")[at], columns["sum"].GetValue(k));
                AssertNumber(table.Numbers("fails")[at], columns["fails"].GetValue(k));
                Assert.Equal(table.Words("word")[at], columns["word"].GetValue(k));
                Assert.Equal(table.ErrorOf(at), columns["error"].GetValue(k));
                Assert.Equal(table.Numbers("grade")[at] == 0 ? "soft" : "hard, \"gold\"", columns["grade"].GetValue(k));
            }
        }

        Assert.Equal(250, at);
    }

    [Fact]
    public void Csv_Cells_Have17DigitsAndNothingWhereNothingIsKnown()
    {
        using var folder = new TestFolder();
        Study study = TestStudies.Mixed(250);
        StudyTable table = Sweep.Run(study).Table!;
        Sweep.RunTo(study, folder["a.csv"]);
        string[] lines = File.ReadAllLines(folder["a.csv"]);
        Assert.Equal("row,\"x, first\",y,grade,sum,word,double,fails,error", lines[0]);
        Assert.Equal(251, lines.Length);
        for (int k = 0; k < 250; k++)
        {
            List<string> cells = Files.CsvFormat.Cells(lines[k + 1]);
            Assert.Equal(k.ToString(CultureInfo.InvariantCulture), cells[0]);
            Assert.Equal(table.Numbers("x, first")[k].ToString("G17", CultureInfo.InvariantCulture), cells[1]);
            double sum = table.Numbers("sum")[k];
            Assert.Equal(double.IsNaN(sum) ? "" : double.IsInfinity(sum) ? "inf" : sum.ToString("G17", CultureInfo.InvariantCulture),
                cells[4]);
            Assert.Equal(table.Words("word")[k] ?? "", cells[5]);
            Assert.Equal(table.ErrorOf(k) ?? "", cells[8]);
        }
    }

    private static void AssertNumber(double expected, object? found) => Assert.Equal(double.IsNaN(expected) ? null : expected, found);

    // A run that was stopped leaves its mark and what it had written.
    private static void Stop(Study study, string path)
    {
        using var stop = new CancellationTokenSource();
        Assert.ThrowsAny<OperationCanceledException>(() => Sweep.RunTo(
            study, path, SweepOptions.Default.WithThreads(1).WithProgress(_ => stop.Cancel()), stop.Token));
        Assert.True(File.Exists(path + ".partial"));
        Assert.False(File.Exists(path));
    }
}
