using System.Diagnostics.CodeAnalysis;
using System.Text.RegularExpressions;

namespace Driveline.Fasteners;

/// <summary>Reads bolt grades as people write them.</summary>
internal static class GradeText
{
    private const int LongestText = 64;

    private static readonly Regex Filler = new(
        @"\b(?:GRADE|GR\.?|PROPERTY|CLASS|CL\.?|TYPE\s*1|BOLTS?|SCREWS?)|[\s\-_]",
        RegexOptions.CultureInvariant);

    private static readonly Regex SaePrefix = new(@"^(?:SAE(?:J429[A-Z]?)?|J429[A-Z]?)(?=[0-9.])", RegexOptions.CultureInvariant);

    private static readonly Regex IsoPrefix = new(
        @"^(?:(?:DIN)?(?:EN)?ISO|DINEN)?(?:8981|35061?)?(?=[0-9][0-9]?\.|A[0-9])|^(?:DIN)?(?:EN)?ISO(?=[0-9])",
        RegexOptions.CultureInvariant);

    public static bool TryParse(string? text, [NotNullWhen(true)] out BoltGrade? grade, [NotNullWhen(false)] out string? problem)
    {
        grade = null;
        if (string.IsNullOrWhiteSpace(text))
        {
            problem = "A bolt grade is needed; got no text. " + Held(BoltGrades.All);
            return false;
        }

        if (text!.Length > LongestText)
        {
            problem = FormattableString.Invariant($"A bolt grade is a text of at most {LongestText} characters; got {text.Length}.");
            return false;
        }

        // The designations themselves need no reading, and a program that starts need not make the patterns.
        grade = BoltGrades.All.FirstOrDefault(g => g.Designation == text || g.Designation == "ISO " + text);
        if (grade is not null)
        {
            problem = null;
            return true;
        }

        string compact = Filler.Replace(text.ToUpperInvariant().Replace(',', '.').Replace('–', '-'), string.Empty);
        string sae = SaePrefix.Replace(compact, string.Empty);
        string iso = IsoPrefix.Replace(compact, string.Empty);
        string astm = compact.StartsWith("ASTM", StringComparison.Ordinal) ? compact.Substring(4) : compact;
        bool saysSae = sae.Length < compact.Length;
        bool saysIso = iso.Length < compact.Length;
        bool saysAstm = astm.Length < compact.Length;
        grade = (!saysIso && !saysAstm ? SaeJ429.All.FirstOrDefault(g => g.Name == sae) : null)
            ?? (!saysSae && !saysAstm ? Iso898.All.Concat(Iso3506.All).FirstOrDefault(g => Key(g) == iso) : null)
            ?? (!saysSae && !saysIso ? AstmBolts.All.FirstOrDefault(g => AstmKeys(g).Contains(astm)) : null);
        problem = grade is null ? NotHeld(text, saysIso, saysAstm) : null;
        return grade is not null;
    }

    private static string Key(BoltGrade grade) => Filler.Replace(grade.Name.ToUpperInvariant(), string.Empty);

    private static string[] AstmKeys(BoltGrade grade)
    {
        string full = Filler.Replace(grade.Designation.Substring("ASTM ".Length).ToUpperInvariant(), string.Empty);
        return grade.Standard == "ASTM F3125" ? [full, "F3125" + full, full + "F3125"] : [full];
    }

    private static string NotHeld(string text, bool saysIso, bool saysAstm)
    {
        string name = Regex.Replace(text.Trim(), @"^(?:SAE\s*)?(?:J429\s*)?(?:(?:grade|gr\.?)\s*)?", string.Empty,
            RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);
        bool isSae = name.Length < text.Trim().Length || text.TrimStart().StartsWith("SAE", StringComparison.OrdinalIgnoreCase);
        return isSae ? "Grade \"" + name + "\" is not in the SAE J429 data held here; held: " + Names(SaeJ429.All) + "."
            : saysIso ? "\"" + text.Trim() + "\" is not in the ISO 898-1 and ISO 3506-1 data held here; held: " + Names(Iso898.All) + ", "
                + Names(Iso3506.All) + "."
            : saysAstm ? "\"" + text.Trim() + "\" is not in the ASTM data held here; " + Held(AstmBolts.All)
            : "\"" + text.Trim() + "\" is not a bolt grade held here; " + Held(BoltGrades.All);
    }

    private static string Names(IEnumerable<BoltGrade> grades) => string.Join(", ", grades.Select(g => g.Name));

    private static string Held(IEnumerable<BoltGrade> grades) => "held: " + string.Join(", ", grades.Select(g => g.Designation)) + ".";
}
