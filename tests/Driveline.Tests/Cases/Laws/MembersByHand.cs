namespace Driveline.Tests.Cases;

/// <summary>
/// Members that count only beside others of their kind, that name an element, or that no demo states: facts to put at a place of a demo,
/// where taking the member out again, or another value of it, changes an answer. A fact that is null here goes.
/// </summary>
internal static class MembersByHand
{
    private const string Rock = "ravensmoor-rock";
    private const string Right = "thornbeck-bolt-right";
    private const string WellSet = "dunmarsh-clutch-well-set";
    private const string DroppedIn = "ravensmoor-clutch-dropped-in";
    private const string TwoWays = "millbrook-feed-auger";
    private const string Clutch = "driveline[2].slipClutch";

    private const string Springy =
        """{ "kind": "springy", "stiffness": "9000 N.m/rad", "damping": "40 N.m.s/rad" }""";

    private const string Yielding =
        """{ "kind": "yielding", "torque": "900 N.m", "travel": "10 deg", "radius": "0.9 m", "thickness": "200 mm" }""";

    private const string Folding =
        """{ "kind": "swingBack", "swing": "40 deg", "swingTorque": "60 N.m", "passes": true }""";

    private const string Yoke =
        """{ "yokeThickness": "3 mm", "yokeYieldStrength": "250 MPa", "yokeTensileStrength": "360 MPa", "yokeEdge": "10 mm" }""";

    private const string Wound = """
        { "springs": { "coil": { "count": 8, "freeLength": "40 mm", "wire": "5 mm", "meanDiameter": "30 mm", "coils": 6,
          "ends": "squaredGround" } } }
        """;

    private const string Discs = """
        { "springLength": null, "springs": { "disc": { "outerDiameter": "100 mm", "innerDiameter": "51 mm", "thickness": "6 mm",
          "reducedThickness": "5.6 mm", "freeHeight": "8.2 mm", "parallel": 2, "sets": 3, "stacks": 2 } } }
        """;

    private const string Series = """
        { "springLength": null, "springs": { "disc": { "series": "A", "outerDiameter": "100 mm", "parallel": 2, "sets": 3, "stacks": 2 } } }
        """;

    private const string Tube =
        """{ "damagedAt": null, "outerDiameter": "50 mm", "innerDiameter": "44 mm", "material": "C45 normalized" }""";

    private const string LongTube =
        """{ "stiffness": null, "outerDiameter": "60 mm", "innerDiameter": "50 mm", "length": "1.2 m" }""";

    private const string WeakSide = """{ "driveline": [ { "shaft": "side shaft", "damagedAt": "200 N.m" } ] }""";

    private const string StrongSide = """{ "driveline": [ { "shaft": "side shaft", "damagedAt": "900 N.m" } ] }""";

    private const string Lengths =
        """{ "planeThrough": null, "boltLength": "70 mm", "threadLength": "15 mm", "gripLength": "50 mm" }""";

    private const string Numbered = """
        { "shearBolt": { "thread": "M10", "grade": "8.8", "layout": "throughShaft", "shaftDiameter": "35 mm", "partNumber": "77-1" },
          "specified": { "shearBolt": { "thread": "M10", "grade": "8.8", "partNumber": "77-1" } } }
        """;

    private const string Cam = """{ "shearBolt": null, "cutOut": { "kind": "cam", "trip": "600 N.m", "reengagesBelow": "100 rpm" } }""";

    private const string LeakyCam = """{ "shearBolt": null, "cutOut": { "kind": "cam", "trip": "600 N.m", "afterTrip": 0.1 } }""";

    private const string StoredRatchet = """
        { "slipClutch": null,
          "cutOut": { "kind": "ratchet", "trip": "600 N.m", "lastTrip": "2026-05-02", "lastStorage": "2026-04-20" } }
        """;

    private const string StatedOnly = """
        { "leverForce": null, "leverArm": null, "lastSlipTest": null, "slipTestResult": null, "springs": null, "springLength": null,
          "statedTorque": "600 N.m" }
        """;

    private static readonly (string[] Members, string Demo, string Place, string Facts)[] Rows =
    [
        (["work.at"], Right, "work", """{ "at": "blades and carrier" }"""),
        (["strike.at"], Rock, "strike", """{ "at": "main gearbox" }"""),
        (["strike.time"], Rock, "strike", """{ "time": "0.05 s" }"""),
        (["strike.torque", "strike.travel"], Rock, "strike", Yielding),
        (["strike.stiffness", "strike.damping"], Rock, "strike", Springy),
        (["strike.swing", "strike.swingTorque", "strike.passes"], Rock, "strike", Folding),
        (["element.innerDiameter", "element.material"], Right, "driveline[1]", Tube),
        (["element.driveline"], TwoWays, "driveline[4]", WeakSide),
        (["shearBolt.threadLength", "shearBolt.gripLength"], Right, "driveline[2].shearBolt", Lengths),
        (["shearBolt.partNumber"], TwoWays, "driveline[2]", Numbered),
        (["element.length"], DroppedIn, "driveline[1]", LongTube),
        (["element.cross"], Right, "driveline[0]", """{ "damagedAt": null, "cross": "27 x 74.6 mm" }"""),
        (["cutOut.kind", "cutOut.trip", "cutOut.reengagesBelow"], Rock, "driveline[2]", Cam),
        (["cutOut.afterTrip"], Rock, "driveline[2]", LeakyCam),
        (["cutOut.lastTrip", "cutOut.lastStorage"], WellSet, "driveline[2]", StoredRatchet),
        (["shearBolt.yokeThickness", "shearBolt.yokeYieldStrength", "shearBolt.yokeTensileStrength", "shearBolt.yokeEdge"],
            Right, "driveline[2].shearBolt", Yoke),
        (["coilSprings.wire", "coilSprings.meanDiameter", "coilSprings.coils", "coilSprings.ends"], WellSet, Clutch, Wound),
        (["clutchSprings.disc", "discSprings.outerDiameter", "discSprings.innerDiameter", "discSprings.thickness",
            "discSprings.reducedThickness", "discSprings.freeHeight", "discSprings.parallel", "discSprings.sets", "discSprings.stacks"],
            WellSet, Clutch, Discs),
        (["discSprings.series"], WellSet, Clutch, Series),
        (["slipClutch.nutTurns"], WellSet, Clutch, """{ "springLength": null, "nutTurns": 4 }"""),
        (["slipClutch.statedTorque"], WellSet, Clutch, StatedOnly),
    ];

    /// <summary>Other facts for a member that no case may lack; null when it may be left out.</summary>
    public static string? Instead(string member) => member == "element.driveline" ? StrongSide : null;

    /// <summary>Where a member counts; null when it needs no help.</summary>
    public static (string Demo, string Place, string Facts)? Find(string member) =>
        Array.Find(Rows, r => r.Members.Contains(member)) is { Members: not null } row ? (row.Demo, row.Place, row.Facts) : null;
}
