// Docs example: begin
using Driveline.Chains;
using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;
using Driveline.Reports;
using Driveline.ShearBolts;
using Driveline.Wording;
using UnitsNet;

// Docs example: pause
namespace Driveline.Cli.Tests.Examples;

/// <summary>The example of the page on own data, compiled; a test keeps both the same.</summary>
internal static class OwnDataExample
{
    public static void Run(TextWriter console)
    {
        // Docs example: go on
        // the batch on the shelf, by its certificate; a house grade would be FastenerMaterial.Own(name, behavesLike, band)
        FastenerMaterial batch = FastenerMaterial.Certified(
            "certificate 3.1, heat 47113", ShearClass.Quenched88, Pressure.FromMegapascals(880));
        ShearBolt bolt = ShearBolt.Of(ScrewThread.Parse("M10"), batch).With(PlaneThrough.Shank);
        ShearBoltJoint joint = ShearBoltJoint.ThroughShaft(bolt, Length.FromMillimeters(35)).WithHub(HubState.Free);
        TorqueBand tube = TorqueBand.AtLeast(Torque.FromNewtonMeters(2400), Basis.Given("tube maker's sheet"));
        TorqueBand work = TorqueBand.Exactly(Torque.FromNewtonMeters(600), Basis.Given("our log"));
        ProtectionQuestion question = ProtectionQuestion
            .About(DrivelineChain.Of(Part.Shaft("drive tube").WithDamageTorque(tube), ShearBoltDevice.Of("bolt", joint)))
            .WithWork(WorkPeak.Stated(work));

        // a caution of the house, after those of the library
        Caution signed = Caution.Of("ourShop.signed", Basis.Given("our terms of 2026"));
        ProtectionVerdict verdict = ProtectionCheck.Run(question, ProtectionPolicy.Default.WithCaution(signed));

        // a language of one's own: what it leaves out stays in English
        Texts german = Texts.English.InLanguage("de", new Dictionary<string, string>
        {
            ["ourShop.signed"] = "Erst mit Unterschrift der Werkstatt gültig.",
            ["caution.stopAndKeyOut"] = "Vor jedem Handgriff: Zapfwelle aus, Motor aus, Schlüssel ab, Stillstand abwarten.",
            ["quantity.decimalSign"] = ",",
        });
        VerdictWords words = VerdictWords.Of(verdict, german, DisplayUnits.Metric);
        console.WriteLine($"{batch}: {batch.Tensile}");
        console.WriteLine($"The bolt acts at {verdict.Trip}.");
        console.WriteLine(words.Cautions()[0]);
        console.WriteLine(words.Cautions()[^1]);

        // Docs example: end
    }
}
