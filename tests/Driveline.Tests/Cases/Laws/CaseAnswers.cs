using System.Text;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Cases.Results;
using Driveline.Choosing;
using Driveline.Loads;
using Driveline.Monitoring;
using Driveline.Protection;
using UnitsNet;

namespace Driveline.Tests.Cases;

/// <summary>What the commands answer to one case, each worked out when it is asked for, the cheap ones first.</summary>
internal sealed class CaseAnswers
{
    private readonly Lazy<string>[] answers;

    private CaseAnswers(CaseFile file, MappedCase mapped, RememberedRuns runs)
    {
        WorkMeter meter = runs.Meter();
        var asked = new Lazy<CaseQuestion>(() => CaseQuestion.Of(mapped, meter));
        var simulated = new Lazy<CaseSimulation>(() => CaseSimulation.Of(
            mapped, file.IsStated("strike") ? SimulatedEvent.Strike : SimulatedEvent.Engagement, meter));
        answers =
        [
            .. new Action<Stream>[]
            {
                json => VerdictJson.Of(ProtectionCheck.Run(mapped.Stated!)).Write(json),
                json => Clutches(mapped, json),
                json => Choice(file, mapped.Stated!, json),
                json => Advice(mapped, asked.Value, meter, json),
                json => Watched(file, json),
                json => Loads(simulated.Value, json),
                json => SimulationJson.Of(simulated.Value).Write(json),
            }.Select(write => new Lazy<string>(() => Text(write))),
        ];
    }

    /// <summary>The answers to a case; null when it is refused.</summary>
    public static CaseAnswers? Of(string json, RememberedRuns runs) =>
        CaseReader.Read(json) is { IsRead: true, Case: { } file } && MappedCase.Of(file) is { Stated: not null } mapped
            ? new CaseAnswers(file, mapped, runs) : null;

    /// <summary>True when a command answers otherwise; the last, which costs most, is asked only on demand.</summary>
    public bool DifferFrom(CaseAnswers other, bool inAll) =>
        answers.Zip(other.answers).SkipLast(inAll ? 0 : 1).Any(pair => pair.First.Value != pair.Second.Value);

    private static void Clutches(MappedCase mapped, Stream json)
    {
        foreach (CaseClutch clutch in mapped.Clutches)
        {
            ClutchJson.Of(clutch.Review()).Write(json);
        }
    }

    private static void Choice(CaseFile file, ProtectionQuestion question, Stream json) => ChoiceJson.Of(
        BoltChoice.For(question, CaseChoice.TermsOf(file)), CaseChoice.SettingsOf(question), ResultOptions.Default).Write(json);

    private static void Advice(MappedCase mapped, CaseQuestion asked, WorkMeter meter, Stream json)
    {
        ProtectionVerdict verdict = ProtectionCheck.Run(asked.Question!);
        VerdictJson.Of(verdict).Write(json);
        if (CaseAdvice.Of(mapped, asked, verdict, meter).Advice is { } advice)
        {
            AdviceJson.Of(advice).Write(json);
        }
    }

    // What the parts carry; the span of what nobody stated costs many runs more.
    private static void Loads(CaseSimulation simulation, Stream json)
    {
        using var text = new StreamWriter(json);
        foreach (SimulatedLoad load in simulation.Check?.Loads ?? [])
        {
            text.WriteLine(load + " " + load.WithProtection + " " + load.WithoutProtection);
        }
    }

    // Torque that swings a hundred times between 0 and 900 N·m.
    private static void Watched(CaseFile file, Stream json)
    {
        CaseWatch watch = CaseWatch.Of(MonitorSettings.Of(Torque.FromNewtonMeters(1000), Duration.FromSeconds(0.1)), file);
        watch.Feed([.. Enumerable.Range(0, 200).Select(k => new TorqueSample(0.1 * k, 50, k % 2 * 900))]);
        MonitorJson.Of(watch.Finish(Duration.FromHours(10), ActedInWork.NotKnown)).Write(json);
    }

    private static string Text(Action<Stream> write)
    {
        using var json = new MemoryStream();
        write(json);
        return Encoding.UTF8.GetString(json.ToArray());
    }
}
