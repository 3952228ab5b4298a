namespace Driveline.Fleet.Ledgers;

/// <summary>What a ledger says to a batch; nothing is stored yet.</summary>
/// <param name="Outcome">What became of it.</param>
/// <param name="MissingFrom">The first batch waited for; 0 for none.</param>
/// <param name="MissingThrough">The last of those in a row.</param>
/// <param name="Refusal">Why it was refused; null unless it was.</param>
internal readonly record struct LedgerAnswer(BatchOutcome Outcome, long MissingFrom, long MissingThrough, FleetRefusal? Refusal)
{
    public static LedgerAnswer Of(BatchOutcome outcome) => new(outcome, 0, 0, null);

    public static LedgerAnswer Missing(long from, long through) => new(BatchOutcome.Waiting, from, through, null);

    public static LedgerAnswer Refused(FleetRefusal why) => new(BatchOutcome.Refused, 0, 0, why);
}
