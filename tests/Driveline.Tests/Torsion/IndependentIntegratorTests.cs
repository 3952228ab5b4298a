using System.Globalization;
using Driveline.Torsion;

namespace Driveline.Tests.Torsion;

/// <summary>Transients against shared/reference/torsion/transients.csv: another author's equations, another method.</summary>
public class IndependentIntegratorTests
{
    private static readonly string[] WithFriction = ["c04", "c05", "c06", "c07", "c08", "c11"];

    public static TheoryData<string> Cases
    {
        get
        {
            var data = new TheoryData<string>();
            foreach (string name in ReferenceTable.Read("torsion", "transients.csv").Select(r => r.Cells).Select(r => r[0]).Distinct())
            {
                data.Add(name);
            }

            return data;
        }
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Transient_AgainstIndependentIntegration_Agrees(string name)
    {
        TransientResult result = ReferenceModels.Run(name);
        bool friction = WithFriction.Contains(name);
        double torqueTolerance = friction ? 1e-6 : 1e-8;
        double timeTolerance = friction ? 1e-7 : 1e-9;
        int checks = 0;
        var wrong = new List<string>();
        foreach (IReadOnlyList<string> row in ReferenceTable.Read("torsion", "transients.csv").Select(r => r.Cells)
            .Where(r => r[0] == name))
        {
            double expected = double.Parse(row[3], CultureInfo.InvariantCulture);
            (double actual, double tolerance) = row[1] switch
            {
                "event" => (EventTime(result, row[2]), timeTolerance),
                "peak" => (result.Peak(row[2]).Own!.Value.NewtonMeters, torqueTolerance * expected),
                "reversePeak" => (result.ReversePeak(row[2]).Own!.Value.NewtonMeters, torqueTolerance * Math.Max(expected, 1)),
                "final" when row[2] == "heat" => (HeatOf(result, name), torqueTolerance * expected),
                "final" => (result.Speed(row[2]).RadiansPerSecond, torqueTolerance * 56.5),
                _ => (expected, 1e9),
            };
            checks++;
            if (!(Math.Abs(actual - expected) <= tolerance))
            {
                wrong.Add(FormattableString.Invariant(
                    $"{row[1]} {row[2]}: expected {expected:R}, got {actual:R}, off {actual - expected:E2}"));
            }
        }

        Assert.True(wrong.Count == 0, string.Join("; ", wrong) + "; events "
            + string.Join(", ", Enumerable.Range(0, result.EventCount).Select(i => result.Event(i))));
        Assert.True(checks >= 3);
        Assert.True(Math.Abs(result.EnergyImbalance) < (friction ? 1e-10 : 1e-11), "imbalance " + result.EnergyImbalance);
    }

    private static double HeatOf(TransientResult result, string name) =>
        result.SlipEnergy(name switch { "c04" => "s2", "c07" => "clutch", "c08" => "f", _ => "s1" }).Joules;

    private static double EventTime(TransientResult result, string label)
    {
        int number = label[^1] - '0';
        TransientEventKind kind = label[..^1] switch
        {
            "broke" => TransientEventKind.Broke,
            "slip" => TransientEventKind.SlipStarted,
            "stuck" => TransientEventKind.SlipEnded,
            "overrun" => TransientEventKind.OverrunStarted,
            "drives" => TransientEventKind.OverrunEnded,
            "parted" => TransientEventKind.FacesParted,
            "met" => TransientEventKind.FacesMet,
            "yield" => TransientEventKind.Yielding,
            "rest" => TransientEventKind.YieldingEnded,
            "swung" => TransientEventKind.SwungBack,
            "limited" => TransientEventKind.DriveLimited,
            _ => TransientEventKind.NotKnown,
        };
        return Enumerable.Range(0, result.EventCount).Select(i => result.Event(i)).Where(e => e.Kind == kind)
            .ElementAt(number - 1).Time.Seconds;
    }
}
