namespace Driveline.Tests.Cases;

/// <summary>Case files that the tests share.</summary>
internal static class Sample
{
    public const string BrushCutter = """
        {
          "title": "Brush cutter, Thornbeck common",
          "tractor": { "ptoPower": "26 kW", "ptoType": 1, "ptoSpeed": "540 rpm", "ptoClutch": { "kind": "handLever",
            "capacity": "1100 N.m" } },
          "implement": { "kind": "rotaryCutter", "width": "1.5 m" },
          "driveline": [
            { "shaft": "drive tube", "damagedAt": { "low": "2100 N.m", "expected": "2300 N.m", "high": "2600 N.m" } },
            { "shearBolt": { "thread": "1/2-13 UNC", "grade": "SAE 2", "layout": "throughShaft", "shaftDiameter": "1 1/4 in",
              "planeThrough": "shank", "hub": "free" } },
            { "gearbox": "main", "ratio": 1.47, "damagedAt": "2900 N.m" },
            { "rotor": "blades", "inertia": "4.2 kg.m2" }
          ],
          "partsComplete": true,
          "specified": { "shearBolt": { "thread": "1/2-13 UNC", "grade": "SAE 2" } },
          "work": { "steadyPeak": { "low": "700 N.m", "expected": "800 N.m", "high": "1000 N.m" }, "peaksPerHour": 40 },
          "complaint": { "symptom": "breaksOften", "when": "engaging", "hoursBetweenBreaks": 2 }
        }
        """;

    /// <summary>Every member of the format at least once.</summary>
    public const string Everything = """
        {
          "$schema": "case-file.schema.json", "format": 1,
          "title": "Everything", "notes": "Two lines,\nthe second with “quotes”.", "date": "2026-05-31",
          "letter": { "to": "Ms Hale", "from": "The workshop", "machine": "Auger blower 60", "serial": "A-17", "reference": "L-9" },
          "tractor": {
            "ptoPower": "35 hp", "enginePower": "45 PS", "engineSpeed": "2200 rpm", "flywheelInertia": "1.1 kg.m2", "torqueReserve": "30 %",
            "engineTorqueLine": { "torque": "300 N.m", "fall": "20 N.m.s/rad", "highest": "450 N.m" }, "ptoType": 2,
              "ptoSpeed": "1000 1/min",
            "stubDamagedAt": { "low": "2 kN.m" }, "stubYieldStrength": { "low": "60 ksi", "high": "90 ksi" },
            "ptoClutch": { "kind": "hydraulic", "capacity": { "low": "900 N.m", "expected": "1000 N.m", "high": "unbounded" } }
          },
          "implement": { "kind": "snowBlower", "width": "60 in", "massFlow": "80 t/h" },
          "driveline": [
            { "universalJoint": "front", "angle": "12 deg", "damagedAt": "1400 lbf.ft", "cross": "27 x 74.6 mm" },
            { "yoke": "inner yoke", "ratedTorque": "400 N.m", "overloadFactor": { "low": 2, "expected": 2.5, "high": 3 },
              "overloadSource": "maker's sheet 12" },
            { "overrunClutch": "freewheel" },
            { "shearBolt": {
                "name": "impeller bolt", "thread": "5/16-18 UNC", "grade": "SAE 5", "headMarks": "three radial lines", "hardness": "HRC 28",
                "layout": "boltCircle", "radius": "1.5 in", "boltCircleDiameter": "3 in", "bolts": 2, "planes": 1,
                "planeThrough": "thread", "hub": "stiff", "hubFriction": "30 N.m", "holeFit": "worn", "holeDiameter": "8.4 mm",
                  "permittedHole": "7 mm", "standOff": "0.5 mm", "boltLength": "1 1/2 in",
                  "threadLength": "1.2 in", "gripLength": "1 in", "shankDiameter": "7.9 mm", "bodyStyle": "hexCapScrew",
                  "partNumber": "AB-77",
                "yokeThickness": "8 mm", "yokeYieldStrength": "400 MPa", "shaftYieldStrength": { "low": "310 MPa", "expected": "400 MPa" },
                "yokeTensileStrength": "510 MPa", "yokeEdge": "16 mm", "hubDiameter": "2 in", "hubSeen": "2026-03-01",
                  "lastTrip": "2026-02-28" },
              "specified": { "shearBolt": { "thread": "5/16-18 UNC", "grade": "SAE 2", "planeThrough": "shank", "hardness": "HRB 85",
                "neckDiameter": "6 mm", "partNumber": "AB-77" } } },
            { "shearBolt": { "pinDiameter": "8 mm", "grade": "rod SAE 1018", "planeThrough": "neck", "neckDiameter": "6 mm",
              "layout": "tangential" } },
            { "shearBolt": { "springPin": "ISO 8752 8 mm", "layout": "throughShaft", "shaftDiameter": "30 mm", "planes": 2 } },
            { "slipClutch": {
                "name": "auger clutch", "outerDiameter": "165 mm", "innerDiameter": "100 mm", "faces": 4, "facing": "FE",
                "springs": { "coil": { "count": 8, "rate": "150 N/mm", "freeLength": "40 mm", "solidLength": "30 mm", "wire": "5 mm",
                  "meanDiameter": "30 mm", "coils": 6, "ends": "squaredGround" } },
                "springLength": { "low": "33 mm", "high": "34 mm" }, "threadPitch": "1.5 mm", "wear": "0.2 mm", "surface": "damp",
                  "runIn": "new",
                "lastSlipTest": "2026-05-30", "slipTestResult": "slipped", "leverForce": "400 N", "breakawayForce": "480 N",
                  "leverArm": "1.5 m", "statedTorque": "600 N.m",
                "lastStorage": "2026-04-30", "storedMonths": 5, "climate": "moist", "plateThickness": "12 mm", "slipsPerHour": 4,
                  "slipTime": "1.5 s" },
              "specified": { "slipTorque": "600 N.m" } },
            { "slipClutch": {
                "springs": { "disc": { "series": "A", "outerDiameter": "100 mm", "parallel": 1, "sets": 2, "stacks": 1 } },
                "nutTurns": 1.5, "threadPitch": "1.5 mm", "lastSlipTest": "2026-05-30", "leverTorque": "500 N.m",
                  "breakawayTorque": "600 N.m" } },
            { "slipClutch": { "springs": { "disc": {
                "outerDiameter": "100 mm", "innerDiameter": "51 mm", "thickness": "6 mm", "reducedThickness": "5.9 mm",
                  "freeHeight": "8.2 mm", "parallel": 1, "sets": 1, "stacks": 1 } } } },
            { "cutOut": {
                "name": "cam clutch", "kind": "cam", "trip": { "low": "400 N.m", "high": "500 N.m" }, "afterTrip": 0,
                  "reengagesBelow": "200 rpm",
                "lastTrip": "2026-05-01", "lastStorage": "2026-04-01" } },
            { "branch": "auger", "powerShare": { "low": 0.3, "high": "40 %" }, "driveline": [ { "gearbox": "side", "ratio": 0.5,
              "efficiency": "95 %", "ratedPower": "20 kW", "ratedSpeed": "540 rpm" }, { "rotor": "auger" } ] },
            { "flywheel": "disc", "inertia": "100 lb.ft2", "fatigueCategory": "90 MPa", "outerDiameter": "45 mm", "innerDiameter": "20 mm",
              "splineRootDiameter": "40 mm", "yieldStrength": "350 MPa" },
            { "part": "coupling", "outerDiameter": "40 mm", "material": "1045 hot rolled" },
            { "shaft": "tube", "length": "800 mm", "stiffness": { "low": "3000 N.m/rad", "expected": "3300 N.m/rad",
              "high": "3600 N.m/rad" }, "damping": "2 N.m.s/rad", "inertia": "0.02 kg.m2" }
          ],
          "partsComplete": false,
          "history": { "from": "season", "hours": 120, "breaks": 3, "breaksAtEngagement": 1, "changed": true },
          "stock": "5/16-18 UNC, SAE 2, 0.35; M8, 8.8",
          "work": {
            "steadyPeak": "250 N.m", "steadyMean": "120 N.m", "meanPower": { "low": "10 kW", "expected": "12 kW", "high": "15 kW" },
              "peakFactor": { "low": 1.5, "high": 2.5 },
            "peaksPerHour": 60, "at": "front", "peaks": "simulated",
            "engagement": { "manner": "abrupt", "peak": "300 N.m", "rampTime": { "low": "0.2 s", "expected": "0.3 s", "high": "0.5 s" },
              "engineSpeed": "1200 rpm", "load": "0 N.m" }, "tripsInNormalWork": true
          },
          "strike": { "at": "disc", "kind": "swingBack", "what": "blade", "force": "6 kN", "radius": "500 mm", "distance": "40 mm",
            "thickness": "150 mm", "swing": "60 deg", "swingTorque": "80 N.m", "time": "0.02 s" },
          "complaint": {
            "symptom": "nothingGaveAtStrike", "strikePeak": { "low": "600 N.m", "expected": "700 N.m", "high": "900 N.m" },
            "device": "shearBolt", "gradeAgainstManual": "same", "boltSize": "larger", "planeThrough": "thread", "holes": "oval",
            "hubTurns": "notAtAll", "hubGreased": "thisYear", "lastTrip": "never", "when": "engaging", "engagementManner": "abruptly",
            "engagementSpeed": "middle", "ptoClutch": "none", "deckAttitude": "noseDown", "scalping": "notSeen",
              "cuttingHeight": "over150mm",
            "ground": "smooth", "growth": "heavy", "groundSpeed": "fast", "blades": "sharp", "hoursBetweenBreaks": 12.5,
            "fracture": "bentOrNecked", "slipCheck": "withinYear", "storage": "indoors", "climate": "moist", "springLength": "asManual",
            "facings": "good", "slipTest": "doesNotSlip", "whatStruck": "nothing", "rotorAtStrike": "slowed", "damageSeen": "gearboxBroken",
            "jointAngleInWork": "small", "phasing": "notInLine", "tractorPower": "withinRating", "modifications": "notKnown",
              "jams": "partOfTheWork",
            "bladeCondition": "bentOrUnequal", "boltPlace": "yoke", "engineAtJam": "runsOn", "linings": "runIn", "oilFrom": "nowhere",
              "boltHole": "asManual",
            "asks": ["tractorHurt", "oneGradeUp", "clutchInstead", "roughGround", "stuckBolt", "otherMachine"]
          },
          "deck": {
            "frontTip": "60 mm", "rearTip": "90 mm", "bladeSpan": "1.5 m", "hitchHeight": "500 mm", "tailHeight": "480 mm",
              "hitchToTail": "2.2 m",
            "hitchToRotor": "1.1 m", "bladesBelow": "400 mm", "bumps": { "low": "20 mm", "high": "60 mm" },
              "manualFrontBelowRear": "-10 mm",
            "mastHeight": "0.5 m", "topLinkLength": "24 in", "topLinkPinHeight": "0.45 m"
          },
          "costs": {
            "currency": "EUR", "years": 8, "discountRate": "4 %", "hourOfWork": { "low": 20, "expected": 30, "high": 45 },
              "hourOfDowntime": 60, "boltPrice": 1.2,
            "options": [
              { "name": "the same bolt", "kind": "sameBolt", "breaksPerYear": { "low": 6, "expected": 10, "high": 20 }, "boltPrice": 1.5,
                "access": "throughShaftAtGearbox",
                "minutesPerChange": 40, "overloadsPerYear": 4, "failsToProtect": { "low": "1 %", "expected": "5 %", "high": "20 %" },
                  "damage": { "low": 400 } },
              { "name": "a clutch", "kind": "clutch", "outlay": 550, "proceeds": 0, "yearlyService": 10, "serviceMinutes": 60,
                "facingSet": 80,
                "facingSetsPerYear": 0.1, "slipCare": "never", "climate": "moist" }
            ]
          }
        }
        """;

    /// <summary>The smallest case around one member's value, e.g. At("tractor.ptoPower", "\"26 kW\"").</summary>
    public static string At(string path, string value)
    {
        string[] names = path.Split('.');
        string json = "\"" + names[names.Length - 1] + "\": " + value;
        if (names[0] == "element")
        {
            return "{ \"driveline\": [ { \"" + names[1] + "\": \"x\", " + json + " } ] }";
        }

        for (int i = names.Length - 2; i >= 0; i--)
        {
            json = "\"" + names[i] + "\": { " + json + " }";
        }

        return names[0] is "shearBolt" or "slipClutch" or "cutOut" ? "{ \"driveline\": [ { " + json + " } ] }" : "{ " + json + " }";
    }
}
