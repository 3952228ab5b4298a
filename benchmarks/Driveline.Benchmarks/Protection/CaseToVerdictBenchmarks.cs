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
/// Today's result of this case has 18.4 KB in 692 members. On an otherwise idle machine of two cores the whole takes 139 µs and 62 KB
/// (12,000 rounds after as many to warm up, each stage timed within the whole): reading 31 µs and 13 KB, mapping 16 µs and 14 KB, judging
/// 8 µs and 5 KB, the lists of the verdict 39 µs and 24 KB (whether it may be used 15, the two neighbour grades 14, findings 6), writing
/// 45 µs and 6 KB. Beside other work the same takes 188 to 285 µs: caches are shared, so only ratios within one run mean anything.
/// Nothing in it stands out: the method that takes most by itself has 3.4 %, objects made 15 %. System.Text.Json alone takes 4 µs to read
/// the tokens of the case and 63 µs to copy those of the result, 40 of them to read (<see cref="TokensAlone"/>). What bounds time and
/// memory are the things themselves: facts, devices, findings and bands, each with its basis.
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
