#:package Driveline.Sweeps@0.1.0
#:property PublishAot=false
// Which fact should be measured better? Draws the pictures of studies.md. Run it where the repository is, or name a study file.
using Driveline.Reports;
using Driveline.Sweeps;

string path = args.Length > 0 ? args[0] : "shared/cases/thornbeck-scatter.study.json";
StudyReadResult read = StudyReader.ReadFile(path);
if (!read.IsRead)
{
    Console.Error.WriteLine(string.Join("\n", read.Errors));
    return 2;
}

StudyResult result = Sweep.Run(read.Study);
foreach (SensitivityIndex index in result.Sensitivity.Where(i => i.Output == "assess.workMargin").OrderByDescending(i => i.Total))
{
    Console.WriteLine($"{index.Factor,-40} alone {index.First:F3}, with others {index.Total:F3}");
}

File.WriteAllText("which-factor.svg", StudyPicture.Tornado(result, "assess.workMargin"));
ReportOptions phone = ReportOptions.Default.WithPictureWidth(360);
File.WriteAllText("which-factor-narrow.svg", StudyPicture.Tornado(result, "assess.workMargin", phone));
return 0;
