using Driveline.Quantities;

namespace Driveline.Sweeps.Outputs;

/// <summary>An output of a device in closed form: which torque or force, and which of its three values.</summary>
internal readonly record struct ClosedOutput(ClosedKind Kind, BandPoint End);
