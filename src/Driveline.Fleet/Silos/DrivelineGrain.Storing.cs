using System.Diagnostics;
using Driveline.Fleet.Ledgers;
using Microsoft.Extensions.Logging;

namespace Driveline.Fleet.Silos;

/// <content>Storing the state, and showing how the driveline stands.</content>
internal sealed partial class DrivelineGrain
{
    private static readonly TimeSpan StatusEvery = TimeSpan.FromSeconds(1);

    private Task writing = Task.CompletedTask;
    private long written;
    private long storedThrough;
    private long shownAt;
    private IGrainTimer? showing;

    // One write at a time; each waiter comes back when a write has held its change.
    private async Task StoreAsync(long change)
    {
        while (written < change)
        {
            if (writing.IsCompleted)
            {
                writing = WriteAsync();
            }

            await writing;
        }
    }

    private async Task WriteAsync()
    {
        BatchLedger mine = ledger!;
        long change = changes, through = mine.Through;
        record.State = new StoredLedger { Bytes = mine.Save(desk.Options.StateFormat) };
        await record.WriteStateAsync();
        written = change;
        storedThrough = through;
    }

    // At once, and then at most once a second; what came between is shown a second later.
    private void Report(BatchLedger mine)
    {
        if (shownAt == 0 || Stopwatch.GetElapsedTime(shownAt) > StatusEvery)
        {
            Show(mine);
        }
        else if (showing is null)
        {
            showing = this.RegisterGrainTimer(
                _ =>
                {
                    Show(mine);
                    return Task.CompletedTask;
                },
                new GrainTimerCreationOptions(StatusEvery, Timeout.InfiniteTimeSpan) { Interleave = true });
        }
    }

    private void Show(BatchLedger mine)
    {
        showing?.Dispose();
        showing = null;
        shownAt = Stopwatch.GetTimestamp();
        if (ledger == mine)
        {
            desk.Stands(Status(mine));
        }
    }

    private DrivelineStatus Status(BatchLedger mine) =>
        DrivelineStatus.Of(Name, silo.Name, mine, storedThrough, record.State?.Bytes.Length ?? 0);

    [LoggerMessage(Level = LogLevel.Warning, Message = "The state of {Driveline} was not stored; it is loaded anew.")]
    private partial void NotStored(Exception failed, string driveline);
}
