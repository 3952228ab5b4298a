namespace Driveline.Fleet.Silos;

/// <summary>The state of a driveline as it is stored, with each batch.</summary>
internal sealed class StoredLedger : StoredBytes;
