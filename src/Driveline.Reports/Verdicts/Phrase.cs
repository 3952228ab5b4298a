using Driveline.Findings;
using Driveline.Reports.Documents;
using Driveline.Wording;

namespace Driveline.Reports.Verdicts;

/// <summary>Renders the texts of a report in one language and unit system.</summary>
internal sealed class Phrase
{
    private readonly Texts texts;

    public Phrase(Texts texts, DisplayUnits units)
    {
        this.texts = texts;
        Units = units;
    }

    public DisplayUnits Units { get; }

    public Language Language => texts.Language;

    /// <summary>Starts a text with parameters.</summary>
    public static Finding Code(string code) => Finding.Of(code, Severity.Note);

    /// <summary>The text of a code.</summary>
    public string Of(string code) => texts.Of(code, Units);

    /// <summary>The text of a finding, or of a code with parameters.</summary>
    public string Of(Finding finding) => texts.Of(finding, Units);

    /// <summary>True when there is a text of that code.</summary>
    public bool Has(string code) => texts.Codes.Contains(code);

    /// <summary>A name as one printable line: in the language when the library gave it, as it is when the case did.</summary>
    public string Name(string? name) => texts.Name(CleanText.Name(name));

    /// <summary>Words of the library itself, e.g. what a step of a sum is, in the language.</summary>
    public string Words(string words) => texts.Name(words);

    /// <summary>A name with a capital where it begins a sentence.</summary>
    public string Capital(string? name)
    {
        string clean = Name(name);
        return char.ToUpperInvariant(clean[0]) + clean.Substring(1);
    }

    /// <summary>The unit of torque shown.</summary>
    public string TorqueUnit => Units == DisplayUnits.UsCustomary ? "lb·ft" : "N·m";

    /// <summary>One newton metre in the unit of torque shown.</summary>
    public double TorquePerNm => TorqueShown.PerNm(Units);

    /// <summary>A quantity with its unit.</summary>
    public string Quantity(double si, QuantityKind kind) => QuantityWords.Of(si, kind, Units, texts);

    /// <summary>A plain number.</summary>
    public string Number(double value, string format) => QuantityWords.Number(value, format, texts);

    /// <summary>A torque without its unit; +∞ as "no known end".</summary>
    public string Number(double newtonMeters)
    {
        string words = Quantity(newtonMeters, QuantityKind.Torque);
        return double.IsPositiveInfinity(newtonMeters) ? Of("report.ladder.open") : words.Substring(0, words.LastIndexOf(' '));
    }
}
