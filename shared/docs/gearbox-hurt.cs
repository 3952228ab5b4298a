#:package Driveline.Sweeps@0.1.0
#:property PublishAot=false
// How often is the gearbox hurt, over stumps of any strength and any bolt that may be in the box? Rows go to gearbox-hurt.parquet.
using Driveline.Sweeps;

string path = args.Length > 0 ? args[0] : "shared/cases/ravensmoor-how-often.study.json";
StudyReadResult read = StudyReader.ReadFile(path);
if (!read.IsRead)
{
    Console.Error.WriteLine(string.Join("\n", read.Errors));
    return 2;
}

SweepOptions options = SweepOptions.Default.WithResume(true).WithProgress(p => Console.Error.WriteLine(p));
StudyResult result = Sweep.RunTo(read.Study, "gearbox-hurt.parquet", options, CancellationToken.None);
string[] answers = ["Yes", "Maybe", "No", "NotKnown"];
foreach (string answer in answers)
{
    Console.WriteLine($"gearbox hurt: {answer,-8} {result.ShareOf("simulate.damaged[main gearbox]", answer):P1}");
}

return 0;
