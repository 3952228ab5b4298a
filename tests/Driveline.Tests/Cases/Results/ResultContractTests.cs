using System.Buffers;
using System.Text;
using System.Text.Json;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Cases.Results;
using Driveline.Cases.TorsionModels;
using Driveline.Clutches;
using Driveline.Fasteners;
using Driveline.Monitoring;
using Driveline.Wording;
using Json.Schema;

namespace Driveline.Tests.Cases;

public class ResultContractTests
{
    private static readonly Dictionary<ResultKind, JsonSchema> Schemas =
        Enum.GetValues<ResultKind>().ToDictionary(k => k, k => JsonSchema.FromText(ResultSchema.Json(k)));

    public static TheoryData<ResultKind> Kinds => [.. Enum.GetValues<ResultKind>()];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Schema_ItsOwnRules_AreKept(ResultKind kind)
    {
        using JsonDocument schema = JsonDocument.Parse(ResultSchema.Json(kind));
        Assert.True(MetaSchemas.Draft202012.Evaluate(schema.RootElement).IsValid);
        Assert.Same(ResultSchema.Json(kind), ResultSchema.Json(kind));
    }

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Schema_EveryObject_HasANameOfItsOwn(ResultKind kind)
    {
        IReadOnlyList<ResultShape> shapes = ResultSchema.ShapeOf(kind).All();
        Assert.Equal(shapes.Count, shapes.Select(s => s.Name).Distinct().Count());
        Assert.All(shapes, s => Assert.Equal(s.Members.Count, s.Members.Select(m => m.Name).Distinct().Count()));
    }

    [Fact]
    public void Demo_EveryResult_IsValidByItsSchema()
    {
        foreach (string name in DemoCases.Names)
        {
            CaseAssessment asked = CaseAssessment.Of(DemoCases.Read(name));
            ResultOptions options = ResultOptions.Default.WithCase(asked.File!).WithLanguage(Language.Spanish);
            Check(name, VerdictJson.Of(asked.Verdict(), options));
            Check(name, AdviceJson.Of(asked.Advice(), options));
            Check(name, SimulationJson.Of(asked.Simulation(), options));
            Check(name, ChoiceJson.Of(asked.Choice(), asked.Settings(), options));
            foreach (CaseClutch clutch in asked.Clutches())
            {
                Check(name, ClutchJson.Of(clutch.Review(), ServiceProcedure.All, options));
            }
        }
    }

    [Fact]
    public void Bolt_StrengthAndMark_AreValidBySchema()
    {
        ScrewThread half = ScrewThread.Parse("1/2-13 UNC");
        Check("strength", StrengthJson.Of(BoltStrength.Of(SaeJ429.Grade5, half)));
        Check("identify", IdentifyJson.Of(HeadMarks.Identify(HeadMark.Parse("3 lines"), half)));
    }

    [Fact]
    public void LogAndModel_TheirResults_AreValidBySchema()
    {
        CaseWatch watch = CaseWatch.Of(
            MonitorSettings.Of(UnitsNet.Torque.FromNewtonMeters(1000), UnitsNet.Duration.FromSeconds(0.1)),
            DemoCases.Read("dunmarsh-clutch-well-set"));
        watch.Feed([.. Enumerable.Range(0, 200).Select(k => new TorqueSample(0.1 * k, 50, k % 2 * 1200))]);
        Check("watch", MonitorJson.Of(watch.Finish(UnitsNet.Duration.FromHours(10), ActedInWork.NotKnown)));
        TorsionModelReadResult read = TorsionModelReader.Read(File.ReadAllText(
            Path.Combine(AppContext.BaseDirectory, "cases", "break-between-two.model.json")));
        Check("transient", TransientJson.Of(read.Model!.Run(), ResultOptions.Default.WithTitle(read.Model.Title)));
    }

    [Fact]
    public void Result_OfACase_SaysWhatItIs()
    {
        CaseAssessment asked = CaseAssessment.Of("""{ "title": "Mower", "date": "2026-05-31" }""");
        using JsonDocument json = Parse(VerdictJson.Of(asked.Verdict(), ResultOptions.Default.WithCase(asked.File!)));
        Assert.Equal(
            ["contract:1", "library:0.1.0", "result:Assess", "language:en", "units:Metric", "title:Mower", "date:2026-05-31"],
            json.RootElement.EnumerateObject().Take(7).Select(m => m.Name + ":" + m.Value));
    }

    [Fact]
    public void Band_WithoutAnEnd_IsUnboundedAndNotNullOrZero()
    {
        CaseAssessment asked = CaseAssessment.Of("""
            { "work": { "steadyPeak": { "low": "700 N.m" } }, "driveline": [ { "shaft": "tube" } ] }
            """);
        using JsonDocument json = Parse(VerdictJson.Of(asked.Verdict()));
        JsonElement peak = json.RootElement.GetProperty("workPeakNm");
        Assert.Equal(700, peak.GetProperty("low").GetDouble());
        Assert.Equal("unbounded", peak.GetProperty("high").GetString());
        Assert.Equal("Given", peak.GetProperty("basis").GetProperty("kind").GetString());
        Assert.Equal("the case", peak.GetProperty("basis").GetProperty("document").GetString());
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("workMargin").ValueKind);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("parts")[0].GetProperty("damagedAtNm").ValueKind);
    }

    [Fact]
    public void Finding_OfAPart_HasItsPartAndTypedParameters()
    {
        using JsonDocument json = Parse(VerdictJson.Of(CaseAssessment.Of(Sample.BrushCutter).Verdict()));
        JsonElement[] findings = [.. json.RootElement.GetProperty("findings").EnumerateArray()];
        Assert.All(findings, f => Assert.Equal(
            ["code", "severity", "text", "part", "bars", "settledBy", "because", "parameters"], f.EnumerateObject().Select(m => m.Name)));
        Assert.Contains(findings, f => f.GetProperty("part").GetString() == "shear bolt");
    }

    [Fact]
    public async Task Document_EveryWayOfWriting_GivesTheSameJson()
    {
        ResultDocument document = VerdictJson.Of(CaseAssessment.Of(Sample.BrushCutter).Verdict());
        using var stream = new MemoryStream();
        document.Write(stream);
        Assert.Equal(document.ToJson(), Encoding.UTF8.GetString(stream.ToArray()));
        using var response = new AsyncOnlyStream();
        await document.WriteAsync(response, CancellationToken.None);
        Assert.Equal(stream.ToArray(), response.ToArray());
        var buffer = new ArrayBufferWriter<byte>();
        document.Write(buffer);
        Assert.True(JsonElement.DeepEquals(
            JsonDocument.Parse(stream.ToArray()).RootElement, JsonDocument.Parse(buffer.WrittenMemory).RootElement));
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => document.WriteAsync(response, new CancellationToken(true)));
    }

    private static JsonDocument Parse(ResultDocument document) => JsonDocument.Parse(document.ToJson());

    private static void Check(string name, ResultDocument document)
    {
        using JsonDocument json = Parse(document);
        EvaluationResults found = Schemas[document.Kind]
            .Evaluate(json.RootElement, new EvaluationOptions { OutputFormat = OutputFormat.List });
        Assert.True(found.IsValid, name + " " + document.Kind + ": " + string.Join("; ", found.Details!.Where(d => d.Errors is not null)
            .Take(5).Select(d => d.InstanceLocation + " " + string.Join(", ", d.Errors!.Values))));
    }
}
