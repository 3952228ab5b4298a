using Driveline.Quantities;

namespace Driveline.Monitoring;

/// <content>How what goes on is ended: at the end of a log, in a pause, or by itself.</content>
public sealed partial class OverloadMonitor
{
    /// <summary>Says that the clock of the samples begins anew with the next one, which may have any time.</summary>
    /// <remarks>
    /// Without it a sample before the last one taken is late and left out, however many come: so a batch that is sent twice counts once.
    /// </remarks>
    public void RestartClock() => gate.RestartClock();

    /// <summary>Ends what is going on at the last sample, as at the end of a log; the number of events written.</summary>
    /// <remarks>Feeding may go on: nothing reaches from the last sample to the next.</remarks>
    /// <exception cref="ArgumentException">Too little room for events.</exception>
    public int Finish(Span<MonitorEvent> events)
    {
        CheckRoom(events);
        int written = 0;
        Cut(0, last.TimeS, events, ref written);
        gate.End();
        if (MonitorInstruments.AreHeard)
        {
            MonitorInstruments.Tell(Counts, Counts, events.Slice(0, written));
        }

        return written;
    }

    /// <summary>Ends what is going on at the last sample, and adds the events to a list.</summary>
    /// <exception cref="ArgumentNullException">The list is missing.</exception>
    public void Finish(ICollection<MonitorEvent> events)
    {
        Guard.NotNull(events, nameof(events));
        var room = new MonitorEvent[MostEventsPerSample];
        int written = Finish(room);
        for (int k = 0; k < written; k++)
        {
            events.Add(room[k]);
        }
    }

    private MonitorEvent Gap(double durationS) => new(
        MonitorEventKind.Gap, last.TimeS, durationS, double.NaN, double.NaN, double.NaN, double.NaN, atEngagement: false, isCut: false);

    // Nobody knows what went on in a pause: all that was going on ended before it.
    private void Cut(double pauseS, double nextS, Span<MonitorEvent> events, ref int written)
    {
        if (engagement.Cut(last.TimeS))
        {
            events[written++] = engagement.Event(isCut: true);
        }

        if (slips.Cut())
        {
            EndSlip(true, events, ref written);
        }

        if (overload.Cut(last.TimeS))
        {
            EndOverload(true, events, ref written);
        }

        if (thermometer.Cut(last.TimeS, pauseS))
        {
            events[written++] = thermometer.Event(isCut: true);
        }

        trips.Cut(nextS);
        peaks.Cut();
        lastSlip = double.NaN;
    }

    private void EndSlip(bool isCut, Span<MonitorEvent> events, ref int written)
    {
        slipTorques.Add(engagement.TurnedS, slips.AngleRad, slips.EnergyJ);
        events[written++] = slips.Event(isCut);
    }

    private void EndOverload(bool isCut, Span<MonitorEvent> events, ref int written)
    {
        overloads++;
        events[written++] = new MonitorEvent(
            MonitorEventKind.Overload, overload.StartS, overload.DurationS, overload.Peak, double.NaN, double.NaN, double.NaN,
                overloadAtEngagement, isCut);
    }
}
