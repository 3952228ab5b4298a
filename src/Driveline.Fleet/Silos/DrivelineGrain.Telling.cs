using Driveline.Fleet.Ledgers;
using Microsoft.Extensions.Logging;

namespace Driveline.Fleet.Silos;

/// <content>Telling alarms: after they are stored, until the sink has taken them.</content>
/// <remarks>
/// A batch is acknowledged after its alarms were told, or after a while with a reminder set: whatever dies, either the sender sends the
/// batch again or the reminder comes, and both bring the driveline back with its open alarms.
/// </remarks>
internal sealed partial class DrivelineGrain
{
    private const string Reminder = "alarms";

    private static readonly TimeSpan RemindEvery = TimeSpan.FromMinutes(1);
    private static readonly TimeSpan Again = TimeSpan.FromSeconds(1);

    private Task telling = Task.CompletedTask;
    private IGrainTimer? again;
    private bool isReminded;

    public Task ReceiveReminder(string reminderName, TickStatus status)
    {
        isReminded = true;
        return ledger is { } mine ? TellAsync(mine) : UnremindAsync();
    }

    private async Task TellWithinAsync(BatchLedger mine)
    {
        Task told = TellAsync(mine);
        await Task.WhenAny(told, Task.Delay(desk.Options.TellWithin, CancellationToken.None));
        if (mine.Outbox.Count > 0 && !isReminded)
        {
            isReminded = true;
            await this.RegisterOrUpdateReminder(Reminder, RemindEvery, RemindEvery);
        }
    }

    private Task TellAsync(BatchLedger mine)
    {
        if (telling.IsCompleted)
        {
            telling = TellAllAsync(mine);
        }

        return telling;
    }

    private async Task TellAllAsync(BatchLedger mine)
    {
        try
        {
            while (mine.Outbox.TakeWhile(alarm => alarm.Sequence <= storedThrough).ToArray() is { Length: > 0 } open)
            {
                FleetAlarm[] alarms = [.. open.Select(a => new FleetAlarm(new AlarmId(Name, a.Sequence, a.Index), a.Event))];
                await sink.DeliverAsync(alarms, stop.Token);
                mine.Told(alarms.Length);
                changes++;
                desk.Told(alarms);
            }

            if (isReminded && mine.Outbox.Count == 0)
            {
                await UnremindAsync();
            }
        }
        catch (Exception failed) when (failed is not OutOfMemoryException)
        {
            NotTold(failed, Name);
            TellAgain(Again);
        }
    }

    private void TellAgain(TimeSpan after)
    {
        again?.Dispose();
        again = this.RegisterGrainTimer(
            async _ =>
            {
                if (ledger is { } mine && !isBroken)
                {
                    await TellAsync(mine);
                }
            },
            new GrainTimerCreationOptions(after, Timeout.InfiniteTimeSpan) { Interleave = true });
    }

    private async Task UnremindAsync()
    {
        if (await this.GetReminder(Reminder) is { } reminder)
        {
            await this.UnregisterReminder(reminder);
        }

        isReminded = false;
    }

    [LoggerMessage(Level = LogLevel.Warning, Message = "Alarms of {Driveline} were not taken; they are told again.")]
    private partial void NotTold(Exception failed, string driveline);
}
