using Driveline.Chains;
using Driveline.Protection;

namespace Driveline.Cases.Results;

/// <summary>What an element carried in a run.</summary>
internal static class SimulatedLoadRows
{
    public static readonly ShapeOf<SimulatedLoad> Shape = new ShapeOf<SimulatedLoad>(
            "peakTorque", "The highest torque that a part or device carried, at its own place, N·m.")
        .Text("name", l => l.Element.Name, "Name.")
        .Text("kind", l => KindOf(l.Element), "What it is: a kind of part or of device.")
        .Flag("isDevice", l => l.Element is ProtectiveDevice, "True for a protective device.")
        .Number("withProtection", l => l.WithProtection?.NewtonMeters, "With the devices as fitted.")
        .Number("withoutProtection", l => l.WithoutProtection?.NewtonMeters, "When no device can act.")
        .Band("damagedAtNm", l => l.DamagedAt, "Torque that damages it.")
        .Choice("damagedWithProtection", l => l.DamagedWith, "Is it damaged with the devices as fitted?")
        .Choice("damagedWithoutProtection", l => l.DamagedWithout, "Is it damaged when no device can act?");

    private static string KindOf(Element element) =>
        element is ProtectiveDevice device ? device.Kind.ToString() : ((Part)element).Kind.ToString();
}
