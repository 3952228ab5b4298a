using System.Buffers;
using System.Text.Json;
using BenchmarkDotNet.Attributes;
using Driveline.Cases;
using Driveline.Cases.Results;

namespace Driveline.Benchmarks.Protection;

/// <summary>A case of 2 KB as JSON to its verdict as JSON, as a service answers it; and what each stage of it costs.</summary>
/// <remarks>
/// The path before the façade, on the same kind of case and machine: 169 to 245 µs and 115 KB, of which reading took 62 µs and 59 KB,
/// mapping 19 µs and 15 KB, judging 0.8 µs and 1.2 KB, writing 48 µs and 35 KB; its result had a third of today's bytes.
/// On two cores shared with other work (10th percentile of processor time, by turns): 188 µs and 68 KB, where the same code with queries
/// and a second walk of the syntax took 352 µs and 99 KB. Of the 188 µs writing takes 46 %, reading 20 %, mapping 10 %, the verdict with
/// its findings, standing and measurements 17 %, the neighbour grades 7 %. Of writing a fifth is the digits of 60 different numbers, a
/// seventh the texts, the rest some 700 members. What bounds the memory are the objects themselves: facts, devices, findings and bands.
/// </remarks>
[MemoryDiagnoser]
public class CaseToVerdictBenchmarks
{
    /// <summary>The case, copied beside the benchmarks.</summary>
    public const string Case = "millbrook-feed-auger";

    private readonly byte[] utf8;
    private readonly byte[] result;
    private readonly CaseReadResult read;
    private readonly CaseAssessment asked;
    private readonly ResultDocument document;
    private readonly ArrayBufferWriter<byte> room = new(1 << 16);

    public CaseToVerdictBenchmarks()
    {
        utf8 = File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "cases", Case + ".case.json"));
        read = CaseReader.Read(utf8);
        asked = CaseAssessment.Of(read);
        document = VerdictJson.Of(asked.Verdict());
        document.Write(room);
        result = room.WrittenSpan.ToArray();
    }

    [Benchmark(Baseline = true)]
    public int CaseToVerdict()
    {
        room.ResetWrittenCount();
        VerdictJson.Of(CaseAssessment.Of(CaseReader.Read(utf8)).Verdict()).Write(room);
        return room.WrittenCount;
    }

    /// <summary>
    /// What System.Text.Json alone takes: the tokens of the case are read, and those of its result are read and written again.
    /// </summary>
    [Benchmark]
    public int TokensAlone()
    {
        room.ResetWrittenCount();
        int count = 0;
        var incoming = new Utf8JsonReader(utf8);
        while (incoming.Read())
        {
            count++;
        }

        using var json = new Utf8JsonWriter(room, new JsonWriterOptions { SkipValidation = true, Encoder = ResultWriter.Encoder });
        var outgoing = new Utf8JsonReader(result);
        while (outgoing.Read())
        {
            Copy(ref outgoing, json);
        }

        return count;
    }

    [Benchmark]
    public bool Read() => CaseReader.Read(utf8).IsRead;

    [Benchmark]
    public bool Map() => CaseAssessment.Of(read).IsGood;

    [Benchmark]
    public int MapAndJudge() => CaseAssessment.Of(read).Verdict().Findings.Count;

    [Benchmark]
    public int Write()
    {
        room.ResetWrittenCount();
        document.Write(room);
        return room.WrittenCount;
    }

    /// <summary>Runs one stage for ever, for a profiler: read, map, judge, write, or else the whole.</summary>
    public static void Loop(string stage)
    {
        var cases = new CaseToVerdictBenchmarks();
        while (true)
        {
            _ = stage switch
            {
                "read" => cases.Read(),
                "map" => cases.Map(),
                "judge" => cases.MapAndJudge() >= 0,
                "write" => cases.Write() > 0,
                _ => cases.CaseToVerdict() > 0,
            };
        }
    }

    private static void Copy(ref Utf8JsonReader from, Utf8JsonWriter to)
    {
        switch (from.TokenType)
        {
            case JsonTokenType.StartObject:
                to.WriteStartObject();
                break;
            case JsonTokenType.EndObject:
                to.WriteEndObject();
                break;
            case JsonTokenType.StartArray:
                to.WriteStartArray();
                break;
            case JsonTokenType.EndArray:
                to.WriteEndArray();
                break;
            case JsonTokenType.PropertyName:
                to.WritePropertyName(from.ValueSpan);
                break;
            case JsonTokenType.String:
                to.WriteStringValue(from.ValueSpan);
                break;
            default:
                to.WriteRawValue(from.ValueSpan, skipInputValidation: true);
                break;
        }
    }
}
