if (args is ["paired"])
{
    Driveline.Benchmarks.PairedRun.All();
}
else
{
    BenchmarkDotNet.Running.BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
}
