using Driveline.Monitoring;
using UnitsNet;

namespace Driveline.Cli.Telemetry;

/// <summary>How a log is watched.</summary>
internal sealed class WatchOptions
{
    /// <summary>The overload level.</summary>
    public required Torque Overload { get; init; }

    /// <summary>From which torque on a peak counts; null for the usual share of the overload level.</summary>
    public Torque? PeaksFrom { get; init; }

    /// <summary>Speed behind over speed before.</summary>
    public double Ratio { get; init; } = 1;

    /// <summary>The time whose highest torque is asked for.</summary>
    public Duration Horizon { get; init; }

    /// <summary>Whether the protection has acted in work.</summary>
    public ActedInWork Acted { get; init; }

    /// <summary>The case; null without one.</summary>
    public CaseInput? Case { get; init; }

    /// <summary>The reference torque of the engine; null for that on the bus.</summary>
    public Torque? Reference { get; init; }

    /// <summary>File of a saved state to go on from.</summary>
    public string? Resume { get; init; }

    /// <summary>File for the state.</summary>
    public string? Save { get; init; }

    /// <summary>True when the clock of the log began anew since the state was saved.</summary>
    public bool ClockIsNew { get; init; }

    /// <summary>Hears each event.</summary>
    public Action<MonitorEvent> Tell { get; init; } = _ => { };

    /// <summary>Watches a log to its end.</summary>
    /// <exception cref="BadInputException">It is no log, or what is to be resumed does not belong to it.</exception>
    public MonitorReport Watch(TextReader reader, Terminal terminal)
    {
        WatchState? state = Resume is { } from ? StateOf(from, terminal) : null;
        var notes = new RowNotes();
        ITelemetry log = TelemetryLog.Open(reader, notes, () => DecoderOf(state));
        var frames = log as CanLog;
        if (frames is null && Reference is not null)
        {
            throw new BadInputException("--reference-torque belongs to a log of CAN frames; this one has torques.");
        }

        var run = new WatchRun(period => Settings(period, frames is not null), Case?.File, notes, Tell);
        if (state is not null)
        {
            run.Resume(state, Resume!);
        }

        if (ClockIsNew)
        {
            run.RestartClock();
        }

        while (log.TryNext(out TorqueSample sample))
        {
            run.Take(in sample, log.Line);
        }

        if (frames?.Decoder is { WithoutReference: > 0 } decoder)
        {
            OfReference(decoder, terminal);
        }

        if (Save is { } target)
        {
            OutFolder.WriteFile(target, run.Save(frames?.Decoder).Write(), "--save");
            return run.Report(Horizon, Acted);
        }

        return run.Finish(Horizon, Acted);
    }

    private static WatchState StateOf(string from, Terminal terminal) => InputFile.Read(
        from, "a state that watch saved", terminal, text => WatchState.Read(text, from), stream =>
        {
            char[] text = new char[WatchState.Longest + 1];
            using var reader = new StreamReader(stream);
            return WatchState.Read(new string(text, 0, reader.ReadBlock(text)), from);
        });

    private EngineTorqueDecoder DecoderOf(WatchState? state)
    {
        EngineTorqueDecoder? heard = null;
        if (state is { Decoder.Length: > 0 } && !EngineTorqueDecoder.TryRestore(state.Decoder, out heard))
        {
            throw new BadInputException("--resume '" + Resume + "' is damaged.");
        }

        return Reference is { } stated ? (heard ?? new EngineTorqueDecoder()).WithReference(stated) : heard ?? new EngineTorqueDecoder();
    }

    private MonitorSettings Settings(Duration period, bool fromEngine)
    {
        MonitorSettings settings = MonitorSettings.Of(Overload, period).WithSpeedRatio(Ratio);
        settings = PeaksFrom is { } threshold ? settings.WithPeaksFrom(threshold) : settings;
        return fromEngine ? settings.WithUpperBoundTorque() : settings;
    }

    private void OfReference(EngineTorqueDecoder decoder, Terminal terminal)
    {
        if (decoder.Reference is null && Save is null)
        {
            throw new BadInputException("The reference torque of the engine (SPN 544) is not in the log; give --reference-torque TORQUE.");
        }

        terminal.Error(FormattableString.Invariant(
            $"{decoder.WithoutReference} messages of the engine came before its reference torque (SPN 544) and were left out."));
    }
}
