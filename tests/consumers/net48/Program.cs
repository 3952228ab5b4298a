using System;
using System.IO;
using Driveline.Cases;
using Driveline.Cases.Results;
using Driveline.Fasteners;
using Driveline.Protection;
using Driveline.Reports;
using Driveline.ShearBolts;
using UnitsNet;

/// <summary>What a quoting tool on .NET Framework 4.8 does, in C# 7.3: exit 0 when the answers are right.</summary>
internal static class Program
{
    private static int Main(string[] arguments)
    {
        var joint = ShearBoltJoint.ThroughShaft(
            ShearBolt.Of(ScrewThread.Parse("3/8-16 UNC"), SaeJ429.Grade5).With(PlaneThrough.Shank), Length.FromInches(1.25))
                .WithHub(HubState.Free);
        BreakTorque broken = BreakTorque.Of(joint);
        Console.WriteLine("The bolt acts at " + broken.Torque + ".");

        CaseAssessment asked = CaseAssessment.Of(File.ReadAllText(arguments[0]));
        if (!asked.IsGood)
        {
            Console.WriteLine(string.Join(Environment.NewLine, asked.Errors));
            return 2;
        }

        ProtectionVerdict verdict = asked.Verdict();
        using (var json = new MemoryStream())
        {
            VerdictJson.Of(verdict).Write(json);
            Console.WriteLine("JSON of " + json.Length + " bytes.");
        }

        string text = VerdictText.Of(verdict);
        string picture = TorqueLadderPicture.Svg(verdict);
        Console.WriteLine(text.Substring(0, text.IndexOf('\n')));
        bool isRight = verdict.Headline == Headline.Protected && broken.Torque.High.HasValue && picture.Contains("</svg>")
            && text.Contains("stop the engine");
        Console.WriteLine(isRight ? "as expected" : "NOT as expected");
        return isRight ? 0 : 1;
    }
}
