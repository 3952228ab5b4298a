namespace Driveline.Fleet.Silos;

/// <summary>The registration of a driveline as it is stored, once.</summary>
internal sealed class StoredCase : StoredBytes;
