using Driveline.Findings;
using Driveline.Reports.Documents;
using Driveline.Wording;

namespace Driveline.Reports.Verdicts;

/// <summary>Renders the texts of a report in one language and unit system.</summary>
internal sealed class Phrase
{
    private readonly Texts texts;

    public Phrase(Texts texts, UnitSystem units)
    {
        this.texts = texts;
        Units = units;
    }

    public UnitSystem Units { get; }

    /// <summary>Starts a text with parameters.</summary>
    public static Finding Code(string code) => Finding.Of(code, Severity.Note);

    /// <summary>The text of a code.</summary>
    public string Of(string code) => texts.Of(code);

    /// <summary>The text of a finding, or of a code with parameters.</summary>
    public string Of(Finding finding) => texts.Of(finding, Units);

    /// <summary>True when there is a text of that code.</summary>
    public bool Has(string code) => texts.Codes.Contains(code);

    /// <summary>A name from a case, printable and with a capital where it begins a sentence.</summary>
    public static string Capital(string name)
    {
        string clean = CleanText.Name(name);
        return char.ToUpperInvariant(clean[0]) + clean.Substring(1);
    }

    /// <summary>The unit of torque shown.</summary>
    public string TorqueUnit => Units == UnitSystem.UsCustomary ? "lbf·ft" : "N·m";

    /// <summary>A torque without its unit; +∞ as "no known end".</summary>
    public string Number(double newtonMeters)
    {
        string words = QuantityWords.Of(newtonMeters, QuantityKind.Torque, Units);
        int blank = words.LastIndexOf(' ');
        return double.IsPositiveInfinity(newtonMeters) ? Of("report.ladder.open") : words.Substring(0, blank);
    }
}
