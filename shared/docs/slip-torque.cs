#:package Driveline.Sweeps@0.1.0
#:property PublishAot=false
// How widely the slip torque of a clutch spreads when friction and clamp force are known no better than this.
using Driveline.Sweeps;

Study study = Study.Of("Slip torque of a clutch, 250/175 mm, 2 faces")
    .WithFactors(Factor.Uniform("friction", 0.25, 0.45), Factor.Triangular("clampN", 6000, 7200, 8000))
    .WithDesign(Design.Sobol(1 << 20, 7))
    .WithOutputs(StudyOutput.OfColumns("slipTorqueNm", ClosedForm.SlipTorque(2, 0, 1, 0.10625)));
StudyResult result = Sweep.Run(study);
Console.WriteLine($"{result.Rows:N0} rows in {result.Elapsed.TotalSeconds:F2} s");
Console.WriteLine($"90 % of such clutches slip between {result.Quantile("slipTorqueNm", 0.05):F0} and "
    + $"{result.Quantile("slipTorqueNm", 0.95):F0} N·m");
Console.WriteLine($"rank correlation with friction {result.RankCorrelation("slipTorqueNm", "friction"):F2}, "
    + $"with the clamp force {result.RankCorrelation("slipTorqueNm", "clampN"):F2}");
