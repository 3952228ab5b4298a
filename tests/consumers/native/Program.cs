using System.Diagnostics;
using Driveline.Cases;
using Driveline.Cases.Results;
using Driveline.Reports;

CaseAssessment asked = CaseAssessment.Of(File.ReadAllBytes(args[0]));
if (!asked.IsGood)
{
    Console.Error.WriteLine(string.Join("\n", asked.Errors));
    return 2;
}

string json = VerdictJson.Of(asked.Verdict(), ResultOptions.Default.WithCase(asked.File)).ToJson();
string picture = TorqueLadderPicture.Svg(asked.Verdict());
TimeSpan sinceStart = DateTime.Now - Process.GetCurrentProcess().StartTime;
Console.WriteLine(json);
Console.Error.WriteLine($"{json.Length} characters of JSON, {picture.Length} of SVG, {sinceStart.TotalMilliseconds:F0} ms after the start");
return 0;
