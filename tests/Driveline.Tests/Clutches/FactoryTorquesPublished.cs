using System.Globalization;
using Driveline.Clutches;
using Driveline.Findings;
using Driveline.Provenance;

namespace Driveline.Tests.Clutches;

public class FactoryTorquesPublished
{
    [Theory]
    [InlineData("LP28", "conveyor drive, stationary")]
    [InlineData("LP39", "rotary rake, 3.5 to 4.6 m")]
    [InlineData("LP40", "small square baler, joint size 3")]
    [InlineData("LP41", "small square baler, joint size 4")]
    [InlineData("LP45", "round baler pickup")]
    [InlineData("LP47", "fertilizer spreader, twin disc")]
    public void FactoryTorque_Row_IsThePrintedOne(string id, string machine)
    {
        double[] ends = Values(id);
        FactoryTorque held = FactoryTorques.All.Single(t => t.Machine == machine);
        Close.Within(ends[0], held.Torque.Low.NewtonMeters, 1e-9);
        Close.Within(ends[^1], held.Torque.High!.Value.NewtonMeters, 1e-9);
        Assert.Equal(BasisKind.Published, held.Torque.WeakestBasis.Kind);
    }

    [Fact]
    public void FactoryTorques_HaveNoRowBesideThose() => Assert.Equal(6, FactoryTorques.All.Count);

    [Theory]
    [InlineData("LP40", 41.4)]
    [InlineData("LP41", 39.9)]
    public void FactoryTorque_SpringLength_IsThePrintedOne(string id, double mm) =>
        Assert.Contains(FactoryTorques.All, t => t.SpringLength is { } length && Math.Abs(length.Millimeters - mm) < 1e-9
            && t.Torque.Low.NewtonMeters.Equals(Values(id)[0]));

    // Where printed practices disagree, a step shows their range.
    [Theory]
    [InlineData("clutch.service.runIn.loosen", "LP16", "LP15", 1.0)]
    [InlineData("clutch.service.runIn.when", "LP18", "LP19", 1.0)]
    [InlineData("clutch.service.runIn.slip", "LP13", "LP14", 1.0)]
    [InlineData("clutch.service.wear.replace", "LP10", "LP09", 1e-3)]
    [InlineData("clutch.service.wear.new", "LP08", "LP08", 1e-3)]
    [InlineData("clutch.service.wear.gap", "LP22", "LP22", 1e-3)]
    [InlineData("clutch.service.lever.adjust", "LP23", "LP25", 1.0)]
    public void ServiceStep_Range_SpansThePrintedPractices(string code, string lowId, string highId, double perUnit)
    {
        ServiceStep step = ServiceProcedure.All.SelectMany(p => p.Steps).Single(s => s.Code == code);
        Close.Within(Values(lowId)[0] * perUnit, Value(step, "low"), 1e-3 * perUnit);
        Close.Within(Values(highId)[^1] * perUnit, Value(step, "high"), 1e-3 * perUnit);
    }

    [Fact]
    public void RunInSpeed_IsThePrintedOne()
    {
        Close.Cite("LP17");
        ServiceStep step = ServiceProcedure.RunIn.Steps.Single(s => s.Code == "clutch.service.runIn.slip");
        Close.Within(Values("LP17")[0], Value(step, "speed") * 30 / Math.PI, 1e-9);
    }

    private static double Value(ServiceStep step, string name) => step.Parameters.Single((FindingParameter p) => p.Name == name).Value;

    private static double[] Values(string id) => ReferenceTable.Read("pto", "limiter-practice.csv").Single(r => r["id"] == id)["value_SI"]
        .Split('-').Select(v => double.Parse(v, CultureInfo.InvariantCulture)).ToArray();
}
