using System.Collections.Concurrent;
using System.Globalization;
using Driveline.Protection;

namespace Driveline.Tests.Cases;

/// <summary>Work done under another culture, and the demos' verdicts worked out there from their files on.</summary>
internal static class ForeignCulture
{
    private static readonly ConcurrentDictionary<string, Lazy<Dictionary<string, ProtectionVerdict>>> Known = new(StringComparer.Ordinal);

    public static T In<T>(string culture, Func<T> work)
    {
        Assert.NotEqual("1.5", 1.5.ToString(CultureInfo.GetCultureInfo(culture)));   // the culture must differ for this to prove anything
        CultureInfo before = CultureInfo.CurrentCulture;
        CultureInfo beforeUi = CultureInfo.CurrentUICulture;
        try
        {
            CultureInfo.CurrentCulture = CultureInfo.GetCultureInfo(culture);
            CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo(culture);
            return work();
        }
        finally
        {
            CultureInfo.CurrentCulture = before;
            CultureInfo.CurrentUICulture = beforeUi;
        }
    }

    public static IReadOnlyDictionary<string, ProtectionVerdict> Verdicts(string culture) => Known.GetOrAdd(
        culture,
        c => new Lazy<Dictionary<string, ProtectionVerdict>>(
            () => In(c, () => DemoCases.Names.ToDictionary(n => n, DemoCases.VerdictAnew)))).Value;
}
