using Driveline.Protection;

namespace Driveline.Cases.Results;

/// <summary>A protective device, as the verdict sees it.</summary>
internal static class DeviceRows
{
    public static readonly ShapeOf<InVerdict<DeviceCheck>> Shape = new ShapeOf<InVerdict<DeviceCheck>>("device", "A protective device.")
        .Text("name", d => d.Check.Device.Name, "Name.")
        .Choice("kind", d => d.Check.Device.Kind, "What it is.")
        .Choice("quiet", d => d.Check.Quiet, "Does it stay quiet in normal work?")
        .Band("tripTorqueNm", d => d.Check.TripAtPto, "Torque at the PTO at which it acts.")
        .Band("runningTorqueNm", d => d.AtPto(d.Check.Device, d.Check.Device.Running), "The same in running work, once it has moved.")
        .Margin("margin", d => d.Check.Margin, "Lowest torque at which it acts over the highest of normal work.")
        .Number("fatigueHoursAtLeast", d => d.Check.Device.NeverLetsGo ? null : d.Check.Fatigue?.Hours,
            "Hours of work that it lasts at least under repeated peaks; \"unbounded\" when they do not tire it.")
        .Choice("afterTrip", d => d.Check.Device.AfterTrip, "What it does once it has acted.");
}
