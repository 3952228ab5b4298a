using Orleans.Concurrency;

namespace Driveline.Fleet;

/// <summary>One driveline of a fleet: its case, its monitor, and the batches that came. Its key is its name.</summary>
/// <remarks>A name has 1 to 64 letters, digits, dots, dashes and underscores of ASCII.</remarks>
[Alias("Driveline.Fleet.IDrivelineGrain")]
public interface IDrivelineGrain : IGrainWithStringKey
{
    /// <summary>Registers the driveline. The same registration again changes nothing; another one is refused.</summary>
    /// <param name="registration">Its case, and the period of its samples.</param>
    [Alias("Register")]
    Task<RegistrationAnswer> RegisterAsync(DrivelineRegistration registration);

    /// <summary>Takes a batch. The answer acknowledges it when, and only when, the state with it in is stored.</summary>
    /// <param name="batch">The batch.</param>
    [AlwaysInterleave]
    [Alias("Take")]
    Task<BatchAnswer> TakeAsync(TelemetryBatch batch);

    /// <summary>How it stands; null when it is not registered.</summary>
    [AlwaysInterleave]
    [Alias("Status")]
    Task<DrivelineStatus?> StatusAsync();

    /// <summary>Tells the alarms that are still open, stores the state, and gives it as bytes; null when it is not registered.</summary>
    [Alias("Settle")]
    Task<byte[]?> SettleAsync();

    /// <summary>Forgets the driveline and all its state; open alarms are not told.</summary>
    [Alias("Remove")]
    Task RemoveAsync();
}
