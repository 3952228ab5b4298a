using Driveline.Clutches;
using Driveline.Provenance;
using UnitsNet;

namespace Driveline.Tests.Clutches;

public class DiscSpringPublished
{
    // The pack: all forces within 1.3 % of the formula at s = 0.75 h0, but A12.5, A14 and B10 within 2 %,
    // because the table rounds s to 0.01 mm; C125 is a doubtful memory and is not held.
    private static readonly string[] RoundedDeflection = ["DA12.5", "DB10"];

    public static TheoryData<string> Rows()
    {
        var ids = new TheoryData<string>();
        foreach (ReferenceRow row in Table().Where(r => r["id"] != "DC125"))
        {
            ids.Add(row["id"]);
        }

        return ids;
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void DiscSpring_SeriesForce_MatchesPrinted(string id)
    {
        ReferenceRow row = Table().Single(r => r["id"] == id);
        DiscSpring spring = Of(row);
        double s = 0.75 * (row.Number("l0_m") - row.Number("t_m"));
        double newtons = spring.Force(Length.FromMeters(s)).Expected!.Value.Newtons;
        double printed = row.Number("F_printed_N");
        double tolerance = RoundedDeflection.Contains(id) ? 0.02 : 0.013;
        Assert.True(Math.Abs((newtons / printed) - 1) <= tolerance, $"{id}: {newtons} N against {printed} N; {row["source"]}");
    }

    [Theory]
    [MemberData(nameof(Rows))]
    public void Din2093_Entry_IsTheReferenceRow(string id)
    {
        ReferenceRow row = Table().Single(r => r["id"] == id);
        Din2093Spring held = Din2093.Find(row["series"][0], Length.FromMeters(row.Number("De_m")));
        Assert.Equal(row.Number("F_printed_N"), held.PrintedForce.Newtons);
        Close.Within(row.Number("Di_m"), held.Spring.InnerDiameter.Meters, 1e-9);
        Close.Within(row.Number("t_m"), held.Spring.Thickness.Meters, 1e-9);
        Close.Within(row.Number("l0_m"), held.Spring.FreeHeight.Meters, 1e-9);
        string reduced = row["t_reduced_m"].Length > 0 ? "t_reduced_m" : "t_m";
        Close.Within(row.Number(reduced), held.Spring.ReducedThickness.Meters, 1e-9);
        Assert.Equal(row["confidence"].StartsWith("secondary", StringComparison.Ordinal) ? BasisKind.CommonPractice : BasisKind.FromMemory,
            held.Basis.Kind);
    }

    [Fact]
    public void Din2093_HasNoRowBesideTheReference() => Assert.Equal(Rows().Count, Din2093.All.Count);

    [Fact]
    public void DiscSpring_K4OfReducedSprings_MatchesReference()
    {
        foreach (ReferenceRow row in Table().Where(r => r["t_reduced_m"].Length > 0))
        {
            Close.Cite(row["source"]);
            Close.Within(row.Number("K4"), Of(row).Shape.K4, 0.00006);
        }
    }

    [Fact]
    public void K1_RatioTwo_MatchesPrinted()
    {
        Close.Cite("DK1");   // 250/125 mm
        Close.Within(0.69433320, DiscSpringKernel.K1(2), 0.00000002);
    }

    // DBH: flat at 4500 N with 1375 MPa at the upper inner edge: force over stress is free of modulus and K1, and checks K2 and K3.
    [Fact]
    public void ForceOverStress_PrintedSpringPressedFlat_Matches()
    {
        Close.Cite("DBH");
        DiscSpringShape spring = BhandariSpring(206);
        var log = default(NoSteps);
        double stress = -DiscSpringKernel.SigmaIPa(spring, spring.ConeM);
        Close.Within(4500.0 / 1375e6, DiscSpringKernel.ForceN(spring, spring.ConeM, ref log) / stress, 4500.0 / 1375e6 * 1e-6);
    }

    // The book reckons with Almen's own coefficient, 0.62684 where EN 16984 has 0.63010:
    // its forces are 0.52 % above ours, beyond its rounding.
    [Fact]
    public void Force_PrintedSpringPressedFlat_DiffersByTheOldCoefficient()
    {
        Close.Cite("DBH");
        DiscSpringShape spring = BhandariSpring(207);
        var log = default(NoSteps);
        Close.Within(4500, DiscSpringKernel.ForceN(spring, spring.ConeM, ref log), 4500 * 0.0053);
    }

    [Fact]
    public void FrictionFactor_PrintedStack_Matches()
    {
        // DFR: n = 2, wM 0.02, wR 0.03, loading: 1 / 0.95. DP3: 3 in parallel with 3 % an interface: 5000 · 3 · 1.06 = 15900 N,
        // a first-order sum; the standard's quotient 1/(1 - 0.06) gives 15957 N, 0.4 % more.
        Close.Cite("DFR");
        Close.Within(1 / 0.95, DiscPack.FrictionFactor(2, 0.02, 0.03, true), 1e-12);
        Close.Within(1 / 1.05, DiscPack.FrictionFactor(2, 0.02, 0.03, false), 1e-12);
        Close.Within(15900, 5000 * 3 * DiscPack.FrictionFactor(3, 0.03, 0, true), 15900 * 0.004);
    }

    [Theory]
    [InlineData('A', 18, 0.4, "DSR: De/t 18, h0/t 0.4")]
    [InlineData('B', 28, 0.75, "DSR: De/t 28, h0/t 0.75")]
    [InlineData('C', 40, 1.3, "DSR: De/t 40, h0/t 1.3; one page prints 48")]
    public void Din2093_SeriesRatios_AreNearThePrinted(char series, double slenderness, double cone, string source)
    {
        foreach (Din2093Spring held in Din2093.All.Where(s => s.Series == series))
        {
            DiscSpring spring = held.Spring;
            Assert.True(Math.Abs((spring.OuterM / spring.ThicknessM / slenderness) - 1) < 0.2, held + "; " + source);
            Assert.True(Math.Abs(((spring.FreeHeightM - spring.ThicknessM) / spring.ThicknessM / cone) - 1) < 0.35, held + "; " + source);
        }
    }

    private static DiscSpringShape BhandariSpring(double gpa) =>
        new(0.154818478, 0.088467702, 0.002652980, 0.002652980, 0.002652980 + 0.003979470, gpa * 1e9, 0.3);

    private static IEnumerable<ReferenceRow> Table() =>
        ReferenceTable.Read("clutch", "disc-spring-examples.csv").Where(r => r["kind"] == "table");

    private static DiscSpring Of(ReferenceRow row)
    {
        DiscSpring spring = DiscSpring.Of(
            Length.FromMeters(row.Number("De_m")),
            Length.FromMeters(row.Number("Di_m")),
            Length.FromMeters(row.Number("t_m")),
            Length.FromMeters(row.Number("l0_m")));
        return row["t_reduced_m"].Length > 0 ? spring.WithReducedThickness(Length.FromMeters(row.Number("t_reduced_m")))
            : spring;
    }
}
