using Driveline.Cases;

namespace Driveline.Tests.Cases;

public partial class CaseReaderTests
{
    [Theory]
    [InlineData("""{ "tractor": { "stubDamagedAt": { "low": "2 N.m", "high": "1 N.m" } } }""", "tractor.stubDamagedAt",
        "got 2 N.m, ")]
    [InlineData("""{ "tractor": { "stubDamagedAt": { "low": "1 N.m", "expected": "unbounded", "high": "2 N.m" } } }""",
        "tractor.stubDamagedAt", "got 1 N.m, unbounded, 2 N.m")]
    [InlineData("""{ "driveline": [ { "shaft": "a", "rotor": "b" } ] }""", "driveline[0].rotor",
        "make them two elements")]
    [InlineData("""{ "driveline": [ { "branch": "b", "powerShare": 0.6 }, { "branch": "c", "powerShare": 0.5 } ] }""", "driveline",
        "add to 1.1")]
    [InlineData("""{ "driveline": [ { "shaft": "a", "outerDiameter": "20 mm", "innerDiameter": "20 mm" } ] }""",
        "driveline[0].innerDiameter", "must be smaller")]
    [InlineData("""{ "driveline": [ { "shaft": "a", "outerDiameter": "20 mm", "splineRootDiameter": "21 mm" } ] }""",
        "driveline[0].splineRootDiameter", "must not be larger")]
    [InlineData("""{ "driveline": [ { "shaft": "a", "innerDiameter": "20 mm" } ] }""", "driveline[0].innerDiameter",
        "means nothing without \"outerDiameter\" or \"splineRootDiameter\"")]
    [InlineData("""{ "driveline": [ { "shaft": "a", "overloadFactor": 2 } ] }""", "driveline[0].overloadFactor",
        "means nothing without \"ratedTorque\"")]
    [InlineData("""{ "driveline": [ { "shearBolt": { "thread": "M10", "pinDiameter": "10 mm" } } ] }""",
        "driveline[0].shearBolt.pinDiameter", "\"thread\" is stated already")]
    [InlineData("""{ "driveline": [ { "shearBolt": { "pinDiameter": "10 mm", "neckDiameter": "11 mm" } } ] }""",
        "driveline[0].shearBolt.neckDiameter", "must not be thicker")]
    [InlineData("""{ "driveline": [ { "shearBolt": { "radius": "40 mm", "boltCircleDiameter": "100 mm" } } ] }""",
        "driveline[0].shearBolt.boltCircleDiameter", "is not twice the radius")]
    [InlineData("""{ "driveline": [ { "shearBolt": { "thread": "M20", "grade": "9.8" } } ] }""", "driveline[0].shearBolt.grade",
        "is not held at M20")]
    [InlineData("""{ "driveline": [ { "shearBolt": { "thread": "M10", "neckDiameter": "11 mm" } } ] }""",
        "driveline[0].shearBolt.neckDiameter", "must not be thicker than the bolt 10 mm")]
    [InlineData("""{ "driveline": [ { "shearBolt": { "thread": "M10", "layout": "throughShaft", "shaftDiameter": "10 mm" } } ] }""",
        "driveline[0].shearBolt.shaftDiameter", "must be thicker than the bolt through it, 10 mm")]
    [InlineData("""{ "driveline": [ { "shearBolt": { "pinDiameter": "10 mm", "planeThrough": "thread" } } ] }""",
        "driveline[0].shearBolt.planeThrough", "it has no thread")]
    [InlineData("""{ "driveline": [ { "shearBolt": { "pinDiameter": "10 mm", "grade": "8.8" } } ] }""", "driveline[0].shearBolt.grade",
        "A pin without thread has no bolt grade")]
    [InlineData("""{ "driveline": [ { "shearBolt": { "pinDiameter": "10 mm", "hardness": "HRC 60" } } ] }""",
        "driveline[0].shearBolt.hardness",
        "The conversion tables held reach from HRC 20 to HRC 45; got HRC 60.")]
    [InlineData("""{ "specified": { "shearBolt": { "pinDiameter": "10 mm", "grade": "8.8" } } }""", "specified.shearBolt.grade",
        "A pin without thread has no bolt grade")]
    [InlineData("""{ "driveline": [ { "part": "p", "outerDiameter": "40 mm", "material": "cheese" } ] }""", "driveline[0].material",
        "State yieldStrength instead")]
    [InlineData("""{ "driveline": [ { "branch": "b", "powerShare": { "low": 0.2 } } ] }""", "driveline[0].powerShare",
        "needs a high end here")]
    [InlineData("""{ "driveline": [ { "slipClutch": { "springs": { "coil": { "wire": "5 mm", "meanDiameter": "9.9 mm" } } } } ] }""",
        "driveline[0].slipClutch.springs.coil.meanDiameter", "from 2 to 50 times the wire 5 mm")]
    [InlineData("""{ "driveline": [ { "slipClutch": { "springs": { "coil": { "wire": "5 mm", "coils": 6, "ends": "squaredGround","""
        + """ "freeLength": "30 mm" } } } } ] }""",
        "driveline[0].slipClutch.springs.coil.freeLength",
        "above the solid length of that many coils of that wire, 30 mm")]
    [InlineData("""{ "driveline": [ { "slipClutch": { "springs": { "disc": { "series": "A", "outerDiameter": "101 mm" } } } } ] }""",
        "driveline[0].slipClutch.springs.disc.outerDiameter",
        "Series A disc spring of that outer diameter is not held here")]
    [InlineData("""{ "driveline": [ { "slipClutch": { "springs": { "disc": { "outerDiameter": "100 mm", "innerDiameter": "90 mm","""
        + """ "thickness": "5.1 mm" } } } } ] }""",
        "driveline[0].slipClutch.springs.disc.thickness", "the width of the ring, 5 mm")]
    [InlineData("""{ "driveline": [ { "slipClutch": { "springs": { "disc": { "thickness": "2 mm", "freeHeight": "8.1 mm" } } } } ] }""",
        "driveline[0].slipClutch.springs.disc.freeHeight", "four times the thickness, 8 mm")]
    [InlineData("""{ "driveline": [ { "slipClutch": { "springs": { "disc": { "thickness": "2 mm","""
        + """ "reducedThickness": "1.7 mm" } } } } ] }""",
        "driveline[0].slipClutch.springs.disc.reducedThickness", "from 0.9 times the thickness")]
    [InlineData("""{ "deck": { "frontTip": "0 m", "rearTip": "0.5 m", "bladeSpan": "0.5 m" } }""", "deck.frontTip",
        "must be below the blade span, 500 mm")]
    [InlineData("""{ "deck": { "manualFrontBelowRear": "-300 mm", "bladeSpan": "300 mm" } }""", "deck.manualFrontBelowRear",
        "must be below the blade span, 300 mm")]
    [InlineData("""{ "deck": { "hitchHeight": "1.6 m", "tailHeight": "0.6 m", "hitchToTail": "1 m", "hitchToRotor": "0.5 m","""
        + """ "bladesBelow": "0 m", "bladeSpan": "1 m" } }""",
        "deck.hitchHeight", "Difference of the heights must be below the distance of 1 m")]
    [InlineData("""{ "deck": { "hitchHeight": "0.3 m", "tailHeight": "0.3 m", "hitchToTail": "1 m", "hitchToRotor": "0.5 m","""
        + """ "bladesBelow": "0.4 m", "bladeSpan": "1 m" } }""",
        "deck.hitchHeight", "a tip in the ground is measured with the deck raised")]
    [InlineData("""{ "deck": { "frontTip": "0.1 m", "rearTip": "0.1 m", "bladeSpan": "1 m", "mastHeight": "1.5 m","""
        + """ "topLinkLength": "0.4 m", "topLinkPinHeight": "0.2 m" } }""",
        "deck.topLinkLength", "cannot span a height difference of 1.3 m")]
    [InlineData("""{ "driveline": [ { "rotor": "r" } ], "strike": { "kind": "swingBack", "torque": "50 N.m", "travel": "5 deg","""
        + """ "swing": "60 deg", "swingTorque": "51 N.m" } }""",
        "strike.swingTorque", "must be at most that at which what is struck gives way, 50 N.m")]
    [InlineData("""{ "costs": { "currency": "EUR", "options": [ { "name": "a", "overloadsPerYear": 2,"""
        + """ "failsToProtect": { "low": 0.1 } } ] } }""",
        "costs.options[0].failsToProtect", "needs a high end here")]
    [InlineData("""{ "partsComplete": true }""", "partsComplete", "no driveline is stated")]
    [InlineData("""{ "date": "2026-01-01", "driveline": [ { "shearBolt": { "lastTrip": "2026-01-02" } } ] }""", "date",
        "2026-01-02 lies after")]
    [InlineData("""{ "work": { "steadyPeak": "10 N.m", "steadyMean": "11 N.m" } }""", "work.steadyMean",
        "must not be above the peak")]
    [InlineData("""{ "driveline": [ { "shaft": "front" } ], "work": { "at": "frnt" } }""", "work.at",
        "no element of the driveline; known are pto, front")]
    [InlineData("""{ "driveline": [ { "shaft": "a" }, { "yoke": "a" } ], "work": { "at": "a" } }""", "work.at",
        "more than one element")]
    public void Facts_Contradicting_GiveOneErrorAtTheirPath(string json, string path, string words) =>
        AssertOneError(json, path, CaseErrorKind.Contradiction, words);

    private static void AssertOneError(string json, string path, CaseErrorKind kind, string words)
    {
        CaseError error = ReadOneError(json);
        Assert.Equal(path, error.Path);
        Assert.Equal(kind, error.Kind);
        Assert.Contains(words, error.Message, StringComparison.Ordinal);
        Assert.True(error.Line == 1 && error.Column > 1, error.ToString());
    }
}
