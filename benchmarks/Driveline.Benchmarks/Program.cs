if (args is ["paired"])
{
    Driveline.Benchmarks.PairedRun.All();
}
else if (args is ["paired", "monitoring"])
{
    Driveline.Benchmarks.PairedRun.Monitoring();
}
else
{
    BenchmarkDotNet.Running.BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
}
