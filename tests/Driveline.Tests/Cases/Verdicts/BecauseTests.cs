using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Chains;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.ShearBolts;

namespace Driveline.Tests.Cases;

/// <summary>A finding names the facts on which it rests, by their paths in the case.</summary>
public partial class BecauseTests
{
    private const string Right = "thornbeck-bolt-right";

    private const string WellSet = "dunmarsh-clutch-well-set";

    public static TheoryData<string> Demos => [.. DemoCases.Names];

    [Theory]
    [InlineData(Right, "\"hub\": \"free\", ", "", ShearBoltFindings.HubFreedomNotKnown, "driveline[2].shearBolt.hub")]
    [InlineData(Right, "\"planeThrough\": \"shank\", ", "", ShearBoltFindings.PlaneNotKnown, "driveline[2].shearBolt.planeThrough")]
    [InlineData(Right, "\"grade\": \"SAE 5\", \"layout\"", "\"grade\": \"unmarked\", \"layout\"", ShearBoltFindings.BoltNotIdentified,
        "driveline[2].shearBolt.grade")]
    [InlineData(Right, "\"grade\": \"SAE 5\", \"layout\"", "\"layout\"", ShearBoltFindings.BoltNotIdentified,
        "driveline[2].shearBolt.grade driveline[2].shearBolt.hardness driveline[2].shearBolt.headMarks")]
    [InlineData(Right, "\"grade\": \"SAE 5\", \"layout\"", "\"grade\": \"SAE 5\", \"headMarks\": \"6 lines\", \"layout\"",
        ShearBoltFindings.MarksContradict, "driveline[2].shearBolt.grade driveline[2].shearBolt.headMarks")]
    [InlineData(Right, ", \"shaftYieldStrength\": \"700 MPa\"", "", DeviceFindings.ShaftAtCrossHoleNotKnown,
        "driveline[2].shearBolt.shaftYieldStrength")]
    [InlineData(Right, "\"partsComplete\": true", "\"partsComplete\": false", ProtectionFindings.PartsNotComplete, "partsComplete")]
    [InlineData(Right, "\"ratio\": 1.47, ", "", ProtectionFindings.GearboxRatioNotKnown, "driveline[3].ratio")]
    [InlineData(WellSet, "\"surface\": \"dry\", ", "", "clutch.surfaceNotKnown", "driveline[2].slipClutch.surface")]
    [InlineData(WellSet, ", \"slipsPerHour\": 2", "", DeviceFindings.SlipsPerHourNotKnown, "driveline[2].slipClutch.slipsPerHour")]
    [InlineData(WellSet, "\"lastStorage\": \"2026-04-20\", ", "", "clutch.storageNotKnown", "driveline[2].slipClutch.lastStorage")]
    public void Finding_OfAChangedFact_NamesItsPath(string demo, string old, string replacement, string code, string paths)
    {
        string json = DemoCases.Json(demo);
        Assert.Contains(old, json, StringComparison.Ordinal);
        ProtectionVerdict verdict = ProtectionCheck.Run(CaseQuestion.Of(
            CaseReaderTests.ReadGood(json.Replace(old, replacement, StringComparison.Ordinal))).Question!);
        Finding finding = Assert.Single(verdict.Findings, f => f.Code == code);
        Assert.All(paths.Split(' '), path => Assert.Contains(path, finding.Because));
    }

    [Theory]
    [MemberData(nameof(Demos))]
    public void Doubt_OfEveryDemo_NamesFactsThatTheCaseCanHave(string demo)
    {
        JsonNode root = JsonNode.Parse(DemoCases.Json(demo))!;
        root["work"]?.AsObject().Remove("peaks");   // simulations have tests of their own
        CaseReadResult read = CaseReader.Read(root.ToJsonString());
        ProtectionVerdict verdict = ProtectionCheck.Run(CaseQuestion.Of(read.Case!).Question!);
        foreach (Doubt doubt in verdict.Doubts)
        {
            Assert.True(doubt.Finding.Because.Count > 0, doubt.Finding.Code + " names no fact");
            Assert.All(doubt.Finding.Because, path => Assert.True(IsPath(root, path), doubt.Finding.Code + ": " + path));
        }
    }

    [Fact]
    public void Setting_OfAClutch_SaysNothingTwice()
    {
        CaseClutch clutch = Assert.Single(CaseClutch.AllOf(DemoCases.Read("cranley-baler-flywheel")));
        string[] codes = [.. clutch.ReviewSetTo(UnitsNet.Torque.FromNewtonMeters(500)).Findings.Select(f => f.Code)];
        Assert.Equal(codes.Distinct(), codes);
    }

    [Fact]
    public void Device_WithoutAPlace_NamesItsFactsAlone() => Assert.Contains(
        FittedBolt.Undated("bolt").With(StatedBolt.OfPin(UnitsNet.Length.FromMillimeters(8)))
            .WithLayout(JointLayout.Tangential).WithRadius(UnitsNet.Length.FromMillimeters(40)).Device.Findings,
        f => f.Code == ShearBoltFindings.HubFreedomNotKnown && f.Because.SequenceEqual(["hub"]));

    // Every object on the way but the last stands in the file, unless it is at its root: what lacks there is the whole object.
    private static bool IsPath(JsonNode root, string path)
    {
        JsonNode? at = root;
        string[] steps = [.. Step().Matches(path).Select(m => m.Value)];
        for (int k = 0; k < steps.Length - 1; k++)
        {
            at = steps[k][0] == '[' ? at![int.Parse(steps[k].Trim('[', ']'), System.Globalization.CultureInfo.InvariantCulture)]
                : at![steps[k]];
            if (at is null)
            {
                return k == 0;
            }
        }

        return steps.Length > 0;
    }

    [GeneratedRegex(@"\[\d+\]|[a-zA-Z]+")]
    private static partial Regex Step();
}
