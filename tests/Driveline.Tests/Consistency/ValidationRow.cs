using System.Text.RegularExpressions;

namespace Driveline.Tests.Consistency;

/// <summary>One row that was run: what it checks, against which source, and how far off it was.</summary>
/// <param name="Capability">What is checked.</param>
/// <param name="Test">Class and method.</param>
/// <param name="Kind">How.</param>
/// <param name="Source">The printed source: document, edition, table or page, and the copy in which it was read.</param>
/// <param name="Comparisons">Numbers compared.</param>
/// <param name="Deviation">Largest share by which one was off; null when no number was compared as such.</param>
internal sealed partial record ValidationRow(
    string Capability, string Test, ValidationKind Kind, string Source, int Comparisons, double? Deviation)
{
    /// <summary>Whether the source can be looked up: a standard's number, an edition, a year, a table or an example.</summary>
    public bool IsNamed => Document().IsMatch(Source);

    [GeneratedRegex(@"\b(ISO|EN|DIN|ASTM|SAE|ASME|ANSI|NASA|NIST|VDI|BS|AISC|ACI|AS) ?[A-Z]*[ -]?\d"
        + @"|\b(18|19|20)\d\d\b|\bed\."
        + @"|\b(Table|Ex|Example|Fig|Sample Problem|Handbook,|pp\.|p\.) ?\d|SciPy \d|Comprehensive Spring Design")]
    private static partial Regex Document();
}
