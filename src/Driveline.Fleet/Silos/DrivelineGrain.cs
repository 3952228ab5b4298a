using System.Diagnostics;
using Driveline.Fleet.Ledgers;
using Driveline.Monitoring;
using Microsoft.Extensions.Logging;

namespace Driveline.Fleet.Silos;

/// <inheritdoc cref="IDrivelineGrain"/>
/// <remarks>
/// Calls run by turns and interleave where they wait. A batch changes the ledger at once; one write at a time stores all that has changed
/// since the last one, and each batch is acknowledged after the write that holds it. When a write fails the memory is ahead of the store:
/// this activation answers "busy" from then on and goes, and the next one begins with what is stored.
/// </remarks>
internal sealed partial class DrivelineGrain(
    [PersistentState("case", SiloSetup.Store)] IPersistentState<StoredCase> stored,
    [PersistentState("ledger", SiloSetup.Store)] IPersistentState<StoredLedger> record,
    CaseSettings cases, SiloDesk desk, IAlarmSink sink, ILocalSiloDetails silo, ILogger<DrivelineGrain> log)
    : Grain, IDrivelineGrain, IRemindable, IDisposable
{
    private static readonly TimeSpan Soon = TimeSpan.FromMilliseconds(50);
    private static readonly TimeSpan AfterFailure = TimeSpan.FromMilliseconds(500);

    private readonly CancellationTokenSource stop = new();
    private BatchLedger? ledger;
    private bool isBroken;
    private int pending;
    private long changes;

    private string Name => this.GetPrimaryKeyString();

    public override Task OnActivateAsync(CancellationToken cancellationToken)
    {
        if (stored.RecordExists && stored.State.Bytes.Length > 0)
        {
            Begin(cases.Of(DrivelineRegistration.OfBytes(stored.State.Bytes), out IReadOnlyList<string> problems)
                ?? throw new FleetStateException("The stored case is refused: " + problems[0]));
        }

        return Task.CompletedTask;
    }

    public override async Task OnDeactivateAsync(DeactivationReason reason, CancellationToken cancellationToken)
    {
        await stop.CancelAsync();
        desk.Leaves(Name);
        if (ledger is not null && !isBroken && changes > written)
        {
            try
            {
                await StoreAsync(changes).WaitAsync(cancellationToken);
            }
            catch (Exception failed) when (failed is not OutOfMemoryException)
            {
                NotStored(failed, Name);
            }
        }
    }

    public void Dispose() => stop.Dispose();

    public async Task<RegistrationAnswer> RegisterAsync(DrivelineRegistration registration)
    {
        if (!DrivelineStatus.IsName(Name))
        {
            return Refused("The name must have 1 to 64 letters, digits, dots, dashes and underscores of ASCII; got '" + Name + "'.");
        }

        if (registration.CaseJson.Length > DrivelineRegistration.MostCaseBytes)
        {
            return Refused(FormattableString.Invariant(
                $"The case must have at most {DrivelineRegistration.MostCaseBytes} bytes; got {registration.CaseJson.Length}."));
        }

        byte[] bytes = registration.ToBytes();
        if (ledger is not null)
        {
            return stored.State.Bytes.AsSpan().SequenceEqual(bytes) ? new RegistrationAnswer(false, [])
                : Refused("'" + Name + "' is registered with other facts; remove it first.");
        }

        MonitorSettings? settings = cases.Of(registration, out IReadOnlyList<string> problems);
        if (settings is null)
        {
            return new RegistrationAnswer(false, problems);
        }

        stored.State = new StoredCase { Bytes = bytes };
        await stored.WriteStateAsync();
        Begin(settings);
        return new RegistrationAnswer(true, []);
    }

    public async Task<BatchAnswer> TakeAsync(TelemetryBatch batch)
    {
        long began = Stopwatch.GetTimestamp();
        BatchAnswer answer = await AnswerAsync(batch);
        desk.Answered(answer.Outcome, Stopwatch.GetElapsedTime(began));
        return answer;
    }

    public Task<DrivelineStatus?> StatusAsync() => Task.FromResult(ledger is null ? null : Status(ledger));

    public async Task<byte[]?> SettleAsync()
    {
        if (ledger is not { } mine)
        {
            return null;
        }

        await TellAsync(mine);
        await StoreAsync(changes);
        return mine.Save(StateFormat.Packed);
    }

    public async Task RemoveAsync()
    {
        ledger = null;
        await writing.ConfigureAwait(ConfigureAwaitOptions.SuppressThrowing | ConfigureAwaitOptions.ContinueOnCapturedContext);
        await record.ClearStateAsync();
        await stored.ClearStateAsync();
        await UnremindAsync();
        DeactivateOnIdle();
    }

    private static RegistrationAnswer Refused(string why) => new(false, [why]);

    private void Begin(MonitorSettings settings)
    {
        bool isOld = record.RecordExists && record.State.Bytes.Length > 0;
        ledger = isOld
            ? BatchLedger.Restore(settings, record.State.Bytes, desk.Options.NewestFormat)
            : new BatchLedger(new OverloadMonitor(settings));
        storedThrough = ledger.Through;
        desk.Stands(Status(ledger));
        if (ledger.Outbox.Count > 0)
        {
            TellAgain(TimeSpan.Zero);
        }
    }

    private async Task<BatchAnswer> AnswerAsync(TelemetryBatch batch)
    {
        if (ledger is not { } mine)
        {
            return BatchAnswer.Refuse(0, new FleetRefusal("driveline", "a registered one", Name));
        }

        if (isBroken || pending >= desk.Options.MostBatchesEach || !desk.TryEnter())
        {
            return BatchAnswer.Busy(storedThrough, Soon);
        }

        pending++;
        try
        {
            LedgerAnswer said = mine.Offer(batch);
            switch (said.Outcome)
            {
                case BatchOutcome.Refused:
                    return BatchAnswer.Refuse(storedThrough, said.Refusal!);
                case BatchOutcome.Waiting:
                    return BatchAnswer.Waiting(storedThrough, said.MissingFrom, said.MissingThrough);
                case BatchOutcome.Busy:
                    TellAgain(TimeSpan.Zero);
                    return BatchAnswer.Busy(storedThrough, AfterFailure);
            }

            changes += said.Outcome == BatchOutcome.Taken ? 1 : 0;
            await StoreAsync(changes);
            if (mine.Outbox.Count > 0)
            {
                await TellWithinAsync(mine);
            }

            Report(mine);
            return BatchAnswer.Acknowledge(said.Outcome, storedThrough);
        }
        catch (Exception failed) when (failed is not OutOfMemoryException)
        {
            // Whatever the store said, it may hold this batch or not: only what it gives when it is read again counts.
            isBroken = true;
            desk.Failed();
            NotStored(failed, Name);
            DeactivateOnIdle();
            return BatchAnswer.Busy(storedThrough, AfterFailure);
        }
        finally
        {
            pending--;
            desk.Leave();
        }
    }
}
