using System.Reflection;
using Driveline.Findings;

namespace Driveline.Tests.Findings;

/// <summary>Every code of a finding that the library declares.</summary>
internal static class FindingCodes
{
    public static IReadOnlyList<string> All { get; } =
    [
        .. typeof(Finding).Assembly.GetTypes()
            .Where(t => t.Name.EndsWith("Findings", StringComparison.Ordinal))
            .SelectMany(t => t.GetFields(BindingFlags.Public | BindingFlags.Static))
            .Where(f => f.IsLiteral && f.FieldType == typeof(string))
            .Select(f => (string)f.GetRawConstantValue()!)
            .Order(StringComparer.Ordinal),
    ];
}
