using System.Collections;
using System.Reflection;
using Driveline.Cases;
using Driveline.Tests.Cases;
using UnitsNet;

namespace Driveline.Tests.Consistency;

/// <summary>What a result prints is the same on every machine.</summary>
public class ResultWordsTests
{
    private const int Deepest = 6;

    [Theory]
    [InlineData("millbrook-feed-auger")]
    [InlineData("dunmarsh-clutch-well-set")]
    [InlineData("ravensmoor-rock")]
    public void Results_InAnotherCulture_PrintTheSame(string demo)
    {
        object[] all = [.. ResultsOf(demo)];
        string[] here = [.. all.Select(o => o.ToString()!)];
        Assert.True(here.Length > 100, here.Length + " objects");
        Assert.Equal(here, ForeignCulture.In("de-DE", () => all.Select(o => o.ToString()!).ToArray()));
        Assert.All(all.Zip(here), r => Assert.NotEqual(r.First.GetType().FullName, HasQuantity(r.First) ? r.Second : null));
    }

    private static HashSet<object> ResultsOf(string demo)
    {
        CaseAssessment asked = CaseAssessment.Of(DemoCases.Read(demo));
        var seen = new HashSet<object>(ReferenceEqualityComparer.Instance);
        foreach (object result in new object[] { asked.Verdict(), asked.Settings(), asked.Simulation(), asked.Advice() })
        {
            Walk(result, 0, seen);
        }

        return seen;
    }

    private static void Walk(object result, int depth, HashSet<object> seen)
    {
        if (result is IEnumerable list and not string)
        {
            foreach (object? item in list)
            {
                if (item is not null)
                {
                    Walk(item, depth + 1, seen);
                }
            }
        }
        else if (depth <= Deepest && IsOurs(result) && seen.Add(result))
        {
            foreach (object value in Readable(result).Select(p => Value(p, result)).OfType<object>())
            {
                Walk(value, depth + 1, seen);
            }
        }
    }

    private static bool HasQuantity(object of) => Readable(of).Any(p => (Nullable.GetUnderlyingType(p.PropertyType) ?? p.PropertyType)
        .IsAssignableTo(typeof(IQuantity)));

    private static IEnumerable<PropertyInfo> Readable(object of) => of.GetType().GetProperties(BindingFlags.Public | BindingFlags.Instance)
        .Where(p => p.GetIndexParameters().Length == 0);

    private static bool IsOurs(object value) => value is not string && value.GetType() is { IsClass: true } type
        && type.Namespace?.StartsWith("Driveline", StringComparison.Ordinal) == true;

    private static object? Value(PropertyInfo property, object of)
    {
        try
        {
            return property.GetValue(of);
        }
        catch (TargetInvocationException)
        {
            return null;
        }
    }
}
