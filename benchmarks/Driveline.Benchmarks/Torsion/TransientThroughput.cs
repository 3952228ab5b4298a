using BenchmarkDotNet.Attributes;
using Driveline.Torsion;
using UnitsNet;

namespace Driveline.Benchmarks.Torsion;

/// <summary>Two hundred one-second transients on one and on two threads, a workspace each.</summary>
[MemoryDiagnoser]
public class TransientThroughput
{
    private const int Runs = 200;

    private readonly TorsionStart start = TransientBenchmarks.Model();
    private readonly TransientWorkspace[] workspaces = [new(), new()];

    [Params(1, 2)]
    public int Threads { get; set; }

    [Benchmark(OperationsPerInvoke = Runs)]
    public void Transient_OneSecond() => Parallel.For(0, Threads, new ParallelOptions { MaxDegreeOfParallelism = Threads }, t =>
    {
        for (int i = 0; i < Runs / Threads; i++)
        {
            Transient.Run(start, Duration.FromSeconds(1), workspaces[t]);
        }
    });
}
