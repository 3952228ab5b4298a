using System.Diagnostics;
using System.Globalization;
using Driveline.Benchmarks.Monitoring;
using Driveline.Benchmarks.Protection;
using Driveline.Benchmarks.Reports;
using Driveline.Benchmarks.ShearBolts;
using Driveline.Benchmarks.Sweeps;
using Driveline.Benchmarks.Torsion;

namespace Driveline.Benchmarks;

/// <summary>Times two methods by turns in one process and prints the median of their ratio with a 95 % interval.</summary>
/// <remarks>Turns cancel what changes on the machine meanwhile. The interval is that of the median by order statistics.</remarks>
internal static class PairedRun
{
    public static void All()
    {
        Monitoring();
        Sweeps();
        var bolts = new BreakTorqueBenchmarks();
        Compare("break torque, 10k: span batch (kernel with empty recorder) over hand-written loop", () => bolts.HandWrittenLoop_10k(),
            () => bolts.SpanBatch_10k(), 50, null);
        var assessment = new AssessmentBenchmarks();
        Compare("assessment of a built chain over the bare comparison", () => assessment.BareComparison(),
            () => (double)assessment.Assessment(), 1000, () => assessment.Assessment());
        Cases();
        Pictures();
        Transients();
    }

    /// <summary>What pictures and a choice cost beside a string builder that writes as many characters by hand.</summary>
    public static void Pictures()
    {
        var pictures = new PictureBenchmarks();
        Compare("ladder picture over a hand-written string builder of as many characters", () => pictures.HandWritten_Ladder(),
            () => pictures.Ladder(), 20, () => pictures.Ladder());
        Compare("simulation picture over a hand-written string builder of as many characters", () => pictures.HandWritten_Simulation(),
            () => pictures.Simulation(), 1, () => pictures.Simulation());
        Compare("choice of 60 bolts with its JSON over a hand-written string builder of as many characters",
            () => pictures.HandWritten_Choice(), () => pictures.Choice(), 1, () => pictures.Choice());
        Processor("ladder picture", () => pictures.Ladder());
        Processor("simulation picture", () => pictures.Simulation());
        Processor("choice of 60 bolts with its JSON", () => pictures.Choice());
    }

    /// <summary>What a transient costs of one by fixed steps.</summary>
    public static void Transients()
    {
        var transient = new TransientBenchmarks();
        Compare("1 s of a four-inertia chain, a model new to the workspace each time (100 runs), over fixed-step RK4",
            () => transient.FixedStep_Study(), () => transient.Transient_Study(), 1, () => transient.Transient_Study());
        Compare("100 runs of one structure as a batch on one thread, each stiffness new, over scalar fixed-step RK4 run by run",
            () => transient.FixedStep_Study(), () => transient.TransientBatch_Study(), 1, () => transient.TransientBatch_Study());
        Compare("the same batch over fixed-step RK4 of eight lanes (two vectors of four)",
            () => transient.FixedStepInLanes_Study(), () => transient.TransientBatch_Study(), 1, null);
        Compare("100 bolts in one driveline as a batch on one thread, over scalar fixed-step RK4 run by run",
            () => transient.FixedStep_Study(), () => transient.TransientBatch_Bolts(), 1, () => transient.TransientBatch_Bolts());
        Compare(
            "100 runs by fixed-step RK4 of eight lanes (two vectors of four) over scalar RK4 (peaks differ by "
                + transient.LaneError().ToString("E1", CultureInfo.InvariantCulture) + ")",
            () => transient.FixedStep_Study(), () => transient.FixedStepInLanes_Study(), 1, null);
        Compare(
            "1 s of a four-inertia chain with a break over fixed-step RK4 at equal peak error (" + WorstPeakError() + ")",
            () => transient.FixedStep_OneSecond(),
            () => transient.Transient_OneSecond(),
            5,
            () => transient.Transient_OneSecond());
    }

    /// <summary>What a case costs from JSON to the JSON of its verdict, and the stages of it as shares of the whole.</summary>
    public static void Cases()
    {
        var cases = new CaseToVerdictBenchmarks();
        void Stage(string name, Func<double> stage) => Compare(
            name + " over case JSON to verdict JSON", () => cases.CaseToVerdict(), stage, 20, () => stage());
        Stage("the whole again", () => cases.CaseToVerdict());
        Stage("the tokens of both alone, read and copied by System.Text.Json", () => cases.TokensAlone());
        Stage("read", () => cases.Read() ? 1 : 0);
        Stage("map", () => cases.Map() ? 1 : 0);
        Stage("map and judge", () => cases.MapAndJudge());
        Stage("write", () => cases.Write());
        Processor("case JSON to verdict JSON", () => cases.CaseToVerdict());
    }

    /// <summary>What studies cost.</summary>
    public static void Sweeps()
    {
        SweepFigures.Kernels(Processor);
        ThreadFigures.All();
    }

    /// <summary>What a monitor and its rainflow counting cost over loops written by hand.</summary>
    public static void Monitoring()
    {
        var rainflow = new RainflowBenchmarks();
        Compare("rainflow, 10k: span count over hand-written turning-point and stack counter", () => rainflow.HandWritten_10k(),
            () => rainflow.SpanCount_10k(), 1, () => rainflow.SpanCount_10k());
        Compare("rainflow in classes, 10k: stream over hand-written loop", () => rainflow.HandWrittenInClasses_10k(),
            () => rainflow.Stream_10k(), 1, () => rainflow.Stream_10k());
        var monitor = new OverloadMonitorBenchmarks();
        (int loop, int events) = monitor.EventsOfOnePass();
        Compare(
            $"monitor, 10k, {events} events: over the minimal state machine as a plain loop ({loop} events)", () => monitor.PlainLoop_10k(),
            () => monitor.Monitor_10k(), 1, () => monitor.Monitor_10k());
    }

    private static string WorstPeakError() => TransientBenchmarks.PeakErrors(TransientBenchmarks.EqualSteps).Max()
        .ToString("E1", CultureInfo.InvariantCulture);

    private static void Compare(string name, Func<double> baseline, Func<double> tried, int inner, Action? measured)
    {
        PairedRatio ratio = PairedRatio.Of(baseline, tried, inner);
        Console.WriteLine(string.Format(
            CultureInfo.InvariantCulture,
            "{0}: median ratio {1:F3} [{2:F3}, {3:F3}], median {4:F0} ns{5}{6}",
            name, ratio.Median, ratio.Low, ratio.High, ratio.Nanoseconds,
            measured is null ? string.Empty : ", " + Allocated(measured) + " B",
            double.IsNaN(ratio.Sink) ? "!" : string.Empty));
    }

    // What others do on the machine meanwhile does not count; what the collector does for it does.
    private static void Processor(string name, Action measured)
    {
        const int Batches = 21;
        const int Calls = 1000;
        using var process = Process.GetCurrentProcess();
        var micros = new double[Batches];
        for (int batch = -2; batch < Batches; batch++)
        {
            process.Refresh();
            TimeSpan before = process.TotalProcessorTime;
            for (int k = 0; k < Calls; k++)
            {
                measured();
            }

            process.Refresh();
            micros[Math.Max(0, batch)] = (process.TotalProcessorTime - before).TotalMicroseconds / Calls;
        }

        Array.Sort(micros);
        int half = (int)Math.Ceiling(0.98 * Math.Sqrt(Batches));
        Console.WriteLine(string.Format(
            CultureInfo.InvariantCulture,
            "{0}: median processor time {1:F0} µs [{2:F0}, {3:F0}], {4} B",
            name, micros[Batches / 2], micros[(Batches / 2) - half], micros[(Batches / 2) + half], Allocated(measured)));
    }

    private static string Allocated(Action measured)
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        for (int k = 0; k < 1000; k++)
        {
            measured();
        }

        return ((GC.GetAllocatedBytesForCurrentThread() - before) / 1000).ToString(CultureInfo.InvariantCulture);
    }
}
