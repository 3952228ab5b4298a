using Driveline.Fasteners;
using Driveline.Pto;
using Driveline.ShearBolts;
using static Driveline.Tests.Provenance.DataPage;
using static Driveline.Tests.Provenance.DataRow;

namespace Driveline.Tests.Provenance;

/// <summary>Shear of bolts, pins and rods, and the steel of shafts.</summary>
internal static class BoltPages
{
    public static DataPage OfShear() => DataPage.Of(
            "Shear over tensile strength",
            "The ratio κ of τ = κ · R_m by kind of bolt and by what lies in the shear plane, with the section it applies to. The classes "
                + "are those of `ShearClass`; a grade names its own.")
        .Table(
            "Ratios", "Low / expected / high.", "kind of bolt | plane | ratio | section of low, expected, high | least yield over tensile",
            from kind in Enum.GetValues<ShearClass>()
            from plane in new[] { PlaneThrough.Shank, PlaneThrough.Thread }
            let ratio = ShearRatios.Of(kind, plane)
            select DataRow.Of(
                ratio.Ratio.Basis, kind.ToString(), plane.ToString(), Band(ratio.Ratio, 1),
                string.Join(", ", new[] { ratio.LowArea, ratio.ExpectedArea, ratio.HighArea }.Distinct()),
                Number(ShearRatios.YieldToTensile(kind))));

    public static DataPage OfMaterials() => DataPage.Of(
            "Pins, rods and steels", "What may stand in a bolt's place, and what shafts are made of, in the units of the source.")
        .Table(
            "Rods and bolts without a grade", string.Empty,
            "material | values | tensile | yield | shear | tensile strength, MPa: low / expected / high",
            RodMaterials.All.Select(m => DataRow.Of(
                [("printed", m.PublishedTensile.Basis), ("low", m.Tensile.Basis.Low), ("high", m.Tensile.Basis.High)],
                m.Designation, m.ValueKind.ToString(), Printed(m.PublishedTensile), Printed(m.PublishedYield), Printed(m.PublishedShear),
                Band(m.Tensile, 1e6))))
        .Table(
            "Spring pins and dowels", "Their standards print a least shear load and no greatest one.",
            "pin | diameter, mm | least load | shear planes",
            SpringPin.All.Select(p => DataRow.Of(
                p.PublishedLoad.Basis, p.Designation, Number(p.DiameterM * 1e3), Printed(p.PublishedLoad), Number(p.PublishedPlanes))))
        .Table(
            "Shaft steels", "One textbook value each, no assured minimum.", "steel | yield, MPa | tensile strength, MPa",
            SteelGrade.All.Select(s => DataRow.Of(s.Basis, s.Name, Band(s.Yield, 1e6), Band(s.Tensile, 1e6))));
}
