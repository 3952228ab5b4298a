using System.Globalization;

namespace Driveline.Fleet;

/// <summary>What a driveline answers to a batch. Immutable.</summary>
[GenerateSerializer, Immutable, Alias("Driveline.Fleet.BatchAnswer")]
public sealed class BatchAnswer
{
    internal BatchAnswer(
        BatchOutcome outcome, long through, long missingFrom, long missingThrough, TimeSpan retryAfter, FleetRefusal? refusal)
    {
        Outcome = outcome;
        AcknowledgedThrough = through;
        MissingFrom = missingFrom;
        MissingThrough = missingThrough;
        RetryAfter = retryAfter;
        Refusal = refusal;
    }

    /// <summary>What became of the batch.</summary>
    [Id(0)]
    public BatchOutcome Outcome { get; }

    /// <summary>All batches up to this number are stored; 0 when none is, or it is not known here.</summary>
    [Id(1)]
    public long AcknowledgedThrough { get; }

    /// <summary>The first batch that is waited for; 0 when none is.</summary>
    [Id(2)]
    public long MissingFrom { get; }

    /// <summary>The last of those that are waited for in a row.</summary>
    [Id(3)]
    public long MissingThrough { get; }

    /// <summary>How long to wait before sending again; zero unless <see cref="BatchOutcome.Busy"/>.</summary>
    [Id(4)]
    public TimeSpan RetryAfter { get; }

    /// <summary>Why it was refused; null unless it was.</summary>
    [Id(5)]
    public FleetRefusal? Refusal { get; }

    /// <summary>True when the batch need not be sent again: it was taken, now or before.</summary>
    public bool IsAcknowledged => Outcome is BatchOutcome.Taken or BatchOutcome.Repeated;

    /// <inheritdoc/>
    public override string ToString()
    {
        string text = string.Create(CultureInfo.InvariantCulture, $"{Outcome}, stored through {AcknowledgedThrough}");
        return Refusal is { } why ? why.ToString()
            : MissingFrom == 0 ? text
            : string.Create(CultureInfo.InvariantCulture, $"{text}, waiting for {MissingFrom} to {MissingThrough}");
    }

    internal static BatchAnswer Busy(long through, TimeSpan retryAfter) => new(BatchOutcome.Busy, through, 0, 0, retryAfter, null);

    internal static BatchAnswer Refuse(long through, FleetRefusal why) => new(BatchOutcome.Refused, through, 0, 0, TimeSpan.Zero, why);

    internal static BatchAnswer Acknowledge(BatchOutcome outcome, long through) => new(outcome, through, 0, 0, TimeSpan.Zero, null);

    internal static BatchAnswer Waiting(long through, long missingFrom, long missingThrough) =>
        new(BatchOutcome.Waiting, through, missingFrom, missingThrough, TimeSpan.Zero, null);
}
