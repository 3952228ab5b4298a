using System.Globalization;
using System.Text.Json;
using Driveline.Cases.Results;
using Driveline.Cases.TorsionModels;
using Driveline.Tests.Torsion;
using Driveline.Torsion;

namespace Driveline.Tests.Cases.TorsionModels;

/// <summary>
/// Every transient of shared/reference/torsion, as a model file through reader and result document, within the tolerances of the core's own
/// test.
/// </summary>
public class ModelReferencesTests
{
    private static readonly string[] WithFriction = ["c04", "c05", "c06", "c07", "c08", "c11"];

    private static readonly Dictionary<string, string> Kinds = new()
    {
        ["broke"] = "Broke",
        ["slip"] = "SlipStarted",
        ["stuck"] = "SlipEnded",
        ["overrun"] = "OverrunStarted",
        ["drives"] = "OverrunEnded",
        ["parted"] = "FacesParted",
        ["met"] = "FacesMet",
        ["yield"] = "Yielding",
        ["rest"] = "YieldingEnded",
        ["swung"] = "SwungBack",
        ["limited"] = "DriveLimited",
        ["line"] = "DriveOnLine",
    };

    public static TheoryData<string> Cases => IndependentIntegratorTests.Cases;

    [Theory]
    [MemberData(nameof(Cases))]
    public void Model_ReferenceTransient_AgreesThroughTheJsonDocuments(string name)
    {
        using JsonDocument result = Run(name);
        bool friction = WithFriction.Contains(name);
        double torqueTolerance = friction ? 1e-6 : 1e-8;
        double timeTolerance = friction ? 1e-7 : 1e-9;
        var wrong = new List<string>();
        int checks = 0;
        foreach (IReadOnlyList<string> row in ReferenceTable.Read("torsion", "transients.csv").Select(r => r.Cells)
            .Where(r => r[0] == name))
        {
            double expected = double.Parse(row[3], CultureInfo.InvariantCulture);
            (double? actual, double tolerance) = row[1] switch
            {
                "event" => (EventTime(result, row[2]), timeTolerance),
                "peak" => (Peak(result, row[2], "forwardTorqueNm"), torqueTolerance * expected),
                "reversePeak" => (Peak(result, row[2], "reverseTorqueNm"), torqueTolerance * Math.Max(expected, 1)),
                "final" when row[2] != "heat" => (Speed(result, row[2]), torqueTolerance * 56.5),
                _ => ((double?)null, 0.0),
            };
            checks += actual is null ? 0 : 1;
            if (actual is { } value && !(Math.Abs(value - expected) <= tolerance))
            {
                wrong.Add(FormattableString.Invariant($"{row[1]} {row[2]}: expected {expected:R}, got {value:R}"));
            }
        }

        Assert.Empty(wrong);
        Assert.True(checks >= 3);
        Assert.Equal(
            0, result.RootElement.GetProperty("findings").EnumerateArray().Count(f => f.GetProperty("severity").GetString() != "Note"));
        Assert.True(Math.Abs(result.RootElement.GetProperty("energy").GetProperty("errorRelative").GetDouble()) < 1e-10);
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Model_ReferenceTransient_IsTheModelOfTheCoresOwnTest(string name)
    {
        TransientResult own = ReferenceModels.Run(name);
        using JsonDocument result = Run(name);
        foreach (string element in own.Model.Elements)
        {
            if (own.Peak(element).Own is { } peak)
            {
                double got = Peak(result, element, "forwardTorqueNm")!.Value;
                Assert.True(Math.Abs(got - peak.NewtonMeters) <= 1e-9 * Math.Max(1, peak.NewtonMeters), element + " " + got + " " + peak);
            }
        }
    }

    private static JsonDocument Run(string name)
    {
        using FileStream file = File.OpenRead(
            Path.Combine(AppContext.BaseDirectory, "reference", "torsion", "models", name + ".model.json"));
        TorsionModelReadResult read = TorsionModelReader.Read(file);
        Assert.True(read.IsRead, string.Join("; ", read.Errors));
        using var stream = new MemoryStream();
        TransientJson.Of(read.Model!.Run()).Write(stream);
        return JsonDocument.Parse(stream.ToArray());
    }

    private static double EventTime(JsonDocument result, string label) => result.RootElement.GetProperty("events").EnumerateArray()
        .Where(e => e.GetProperty("kind").GetString() == Kinds[label[..^1]])
        .ElementAt(label[^1] - '1').GetProperty("timeS").GetDouble();

    private static double? Peak(JsonDocument result, string element, string member) => result.RootElement.GetProperty("peaks")
        .EnumerateArray()
        .Single(p => p.GetProperty("element").GetString() == element).GetProperty(member).GetDouble();

    private static double? Speed(JsonDocument result, string rotor) => result.RootElement.GetProperty("finalState").GetProperty("rotors")
        .EnumerateArray()
        .Single(r => r.GetProperty("name").GetString() == rotor).GetProperty("speedRadS").GetDouble();
}
