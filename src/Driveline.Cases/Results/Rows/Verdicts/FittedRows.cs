using Driveline.Chains;
using Driveline.Protection;

namespace Driveline.Cases.Results;

/// <summary>What is fitted against what the manual specifies.</summary>
internal static class FittedRows
{
    public static readonly ShapeOf<ProtectionVerdict> Shape = new ShapeOf<ProtectionVerdict>(
            "fitted", "What is fitted against what the manual specifies: the worst of all devices, then each.")
        .Choice("answer", v => v.FittedAgainstSpecified.Answer, "The worst.")
        .Band("ratio", v => v.FittedAgainstSpecified.Ratio, "Torque of the fitted over that of the specified one.")
        .List("devices", v => v.Comparisons, new ShapeOf<FittedAgainstSpecified>("fittedDevice", "One device against the manual.")
            .Text("name", c => c.Device!.Name, "Name of the device.")
            .MaybeText("specified", SpecifiedOf, "What the manual specifies in its place.")
            .Choice("answer", c => c.Answer, "How they compare.")
            .Band("ratio", c => c.Ratio, "Torque of the fitted over that of the specified one."), "Each, in order from the tractor.");

    private static string? SpecifiedOf(FittedAgainstSpecified comparison) =>
        comparison.Specified is ShearBoltDevice { BreakTorque.Joint.Bolt: { } bolt } ? bolt.ToString() : comparison.Specified?.Name;
}
