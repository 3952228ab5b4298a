using Driveline.Clutches;
using Driveline.Provenance;
using static Driveline.Tests.Provenance.DataPage;
using static Driveline.Tests.Provenance.DataRow;

namespace Driveline.Tests.Provenance;

/// <summary>Facings, heat, springs and printed settings of slip clutches.</summary>
internal static class ClutchPages
{
    public static DataPage OfClutches() => DataPage.Of(
            "Slip clutches", "Friction, heat, disc springs, and the torques that documents of machines print.")
        .Table(
            "Facings", "Friction against iron or steel, clean and dry; low / expected / high.",
            "facing | friction | pressure, kPa | stands for long, °C | stands at all, °C | slip power, W/mm²",
            Facings.All.Select(f => DataRow.Of(
                [.. Three(f.Friction(SurfaceState.Dry).Running.Basis), ("limits", f.LimitBasis)],
                f.Name, Band(f.Friction(SurfaceState.Dry).Running, 1),
                Range(f.Limits.LowPressurePa / 1e3, f.Limits.HighPressurePa / 1e3), Number(f.Limits.ContinuousK - 273.15),
                Number(f.Limits.MaximumK - 273.15), Range(f.Limits.LowPowerWPerM2 / 1e6, f.Limits.HighPowerWPerM2 / 1e6))))
        .Table(
            "States of the faces", "Of a moulded organic lining; the shares of the dry friction are the same for all.",
            "state | friction while slipping | friction that starts a slip",
            from state in Enum.GetValues<SurfaceState>()
            let friction = Facings.MouldedLining.Friction(state)
            select DataRow.Of(
                [("slipping", friction.Running.WeakestBasis), ("starting", friction.Breakaway.WeakestBasis)],
                state.ToString(), Band(friction.Running, 1), Band(friction.Breakaway, 1)))
        .Table(
            "Heat", string.Empty, "material | conductivity, W/(m·K) | density, kg/m³ | heat, J/(kg·K)",
            ThermalMaterials.All.Select(m => DataRow.Of(m.Basis, m.Name, Number(m.WPerMK), Number(m.KgPerM3), Number(m.JPerKgK))))
        .Table(
            "Printed settings", "What clutches of such machines are set to; never a setting for another machine.",
            "machine | device | torque, N·m | spring length, mm",
            FactoryTorques.All.Select(t => DataRow.Of(
                t.Torque.Basis, t.Machine, t.Device, Band(t.Torque, 1),
                t.SpringLength is { } length ? Number(length.Millimeters) : string.Empty)))
        .Table(
            "Disc springs", "The force is the printed one at three quarters of the cone's height.",
            "series | outer, mm | inner, mm | thickness, mm | height, mm | force, N",
            Din2093.All.Select(s => DataRow.Of(
                s.Basis, s.Series.ToString(), Number(s.Spring.OuterDiameter.Millimeters), Number(s.Spring.InnerDiameter.Millimeters),
                Number(s.Spring.Thickness.Millimeters), Number(s.Spring.FreeHeight.Millimeters), Number(s.PrintedForce.Newtons))));

    private static (string, Basis)[] Three(Driveline.Quantities.BandBasis band) =>
        [("low", band.Low), ("expected", band.Expected), ("high", band.High)];

    private static string Range(double low, double high) => double.IsNaN(high) ? Number(low)
        : double.IsNaN(low) || low.Equals(high) ? Number(high) : Number(low) + " to " + Number(high);
}
