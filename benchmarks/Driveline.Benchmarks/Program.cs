if (args is ["paired"])
{
    Driveline.Benchmarks.PairedRun.All();
}
else if (args is ["paired", "monitoring"])
{
    Driveline.Benchmarks.PairedRun.Monitoring();
}
else if (args is ["paired", "case"])
{
    Driveline.Benchmarks.PairedRun.Cases();
}
else if (args is ["loop", "choice"])
{
    Driveline.Benchmarks.Reports.PictureBenchmarks.LoopChoice();
}
else if (args is ["loop", { } stage])
{
    Driveline.Benchmarks.Protection.CaseToVerdictBenchmarks.Loop(stage);
}
else if (args is ["paired", "transients"])
{
    Driveline.Benchmarks.PairedRun.Transients();
}
else if (args is ["paired", "transients", "growth"])
{
    Driveline.Benchmarks.Torsion.TransientGrowth.All();
}
else if (args is ["paired", "pictures"])
{
    Driveline.Benchmarks.PairedRun.Pictures();
}
else if (args is ["paired", "sweeps"])
{
    Driveline.Benchmarks.PairedRun.Sweeps();
}
else if (args is ["threads"])
{
    Driveline.Benchmarks.Sweeps.ThreadFigures.All();
}
else if (args is ["long", var folder])
{
    Driveline.Benchmarks.Sweeps.SweepFigures.Long(folder);
}
else
{
    BenchmarkDotNet.Running.BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
}
