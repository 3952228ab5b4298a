using System.Collections;
using System.Reflection;
using Driveline.Cases;
using Driveline.Cases.Questions;
using Driveline.Cases.TorsionModels;
using Driveline.Chains;
using Driveline.Choosing;
using Driveline.Clutches;
using Driveline.Fasteners;
using Driveline.Monitoring;
using Driveline.Pto;
using Driveline.ShearBolts;
using Driveline.Tests.Cases;
using Driveline.Tests.Consistency.Rules;
using UnitsNet;

namespace Driveline.Tests.Consistency;

/// <summary>A list that is asked for twice is computed once: a property of a result is a field to whoever reads it in a loop.</summary>
public class StoredResultsTests
{
    private const int MostOfAList = 2;

    // A neighbour's verdict has neighbours of its own, and so on.
    private const int Deepest = 6;

    [Theory]
    [InlineData("millbrook-feed-auger")]
    [InlineData("larkfield-soft-bolts")]
    [InlineData("dunmarsh-clutch-well-set")]
    [InlineData("ravensmoor-rock")]
    public void Results_ListAskedForTwice_IsTheSameList(string demo)
    {
        CaseAssessment asked = CaseAssessment.Of(DemoCases.Read(demo));
        var computed = new SortedSet<string>(StringComparer.Ordinal);
        var seen = new HashSet<object>(SeenObjects.Comparer);
        object[] results = [asked.Verdict(), asked.Settings(), asked.Simulation(), asked.Advice()];
        foreach (object result in asked.Verdict().Devices.Any(d => d.Device is ShearBoltDevice) ? [.. results, asked.Choice()] : results)
        {
            Walk(result, 0, seen, computed);
        }

        Assert.Empty(computed);
    }

    [Theory]
    [InlineData("millbrook-feed-auger")]
    [InlineData("larkfield-soft-bolts")]
    [InlineData("dunmarsh-clutch-well-set")]
    [InlineData("ravensmoor-rock")]
    public void Results_ListCastToWhatHoldsIt_CannotBeChanged(string demo)
    {
        CaseAssessment asked = CaseAssessment.Of(DemoCases.Read(demo));
        object[] results = [asked, asked.Verdict(), asked.Settings(), asked.Simulation(), asked.Advice(), asked.Clutches()];
        string[] changeable = [.. results.SelectMany(ChangeableLists.In).Distinct().Order(StringComparer.Ordinal)];
        Assert.True(changeable.Length == 0, string.Join(Environment.NewLine, changeable));
    }

    [Fact]
    public void Objects_ListCastToWhatHoldsIt_CannotBeChanged()
    {
        CaseAssessment bolts = CaseAssessment.Of(DemoCases.Read("millbrook-feed-auger"));
        MonitorSettings settings = MonitorSettings.Of(Torque.FromNewtonMeters(900), Duration.FromSeconds(0.1));
        StatedBolt bolt = StatedBolt.OfPin(Length.FromMillimeters(10));
        string model = Path.Combine(AppContext.BaseDirectory, "cases", "stopped-rotor.model.json");
        object[] objects =
        [
            bolts.Choice(), CaseInterview.From(bolts.File!), CaseReader.Read("{ \"titel\": 1 }"), TorsionModelReader.Read("{}"),
            TorsionModelReader.Read(File.ReadAllText(model)).Model!.Run(),
            CaseWatch.Of(settings).Report(Duration.FromHours(5), ActedInWork.Never), StubStrength.Of(PtoType.Of(1)), bolt,
            CutOutClutch.Of(CutOutKind.NotKnown), HeadMark.RadialLines(3).Identify(ScrewThread.Parse("1/2-13 UNC")),
            StockFile.Parse("sku,designation,grade\nA,M10,8.8\nB,what,8.8"),
        ];
        string[] changeable = [.. objects.SelectMany(ChangeableLists.In).Distinct().Order(StringComparer.Ordinal)];
        Assert.True(changeable.Length == 0, string.Join(Environment.NewLine, changeable));
    }

    private static void Walk(object result, int depth, HashSet<object> seen, SortedSet<string> computed)
    {
        if (result is IEnumerable list)
        {
            foreach (object? item in list.Cast<object?>().Take(MostOfAList))
            {
                if (item is not null && IsOurs(item))
                {
                    Walk(item, depth + 1, seen, computed);
                }
            }

            return;
        }

        if (depth > Deepest || !IsOurs(result) || !seen.Add(result))
        {
            return;
        }

        foreach (PropertyInfo property in result.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance))
        {
            if (property.GetIndexParameters().Length > 0 || SeenObjects.Value(property, result) is not { } value)
            {
                continue;
            }

            if (value is IEnumerable and not string && !ReferenceEquals(value, SeenObjects.Value(property, result)))
            {
                computed.Add(property.DeclaringType!.Name + "." + property.Name);
            }

            Walk(value, depth + 1, seen, computed);
        }
    }

    private static bool IsOurs(object value) => value is not string && value.GetType() is { IsClass: true, IsPublic: true } type
        && type.Namespace?.StartsWith("Driveline", StringComparison.Ordinal) == true;
}
