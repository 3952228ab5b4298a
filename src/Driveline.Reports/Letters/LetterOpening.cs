using Driveline.Advice;
using Driveline.Findings;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Letters;

/// <summary>
/// How a letter begins and ends: day, reference, machine, whom it goes to, what he wrote; and who signs. Only what is stated.
/// </summary>
internal static class LetterOpening
{
    private const int MostWords = 45;
    private const int FewestWords = 12;

    public static void Add(LetterHead head, Phrase phrase, List<ReportBlock> blocks)
    {
        string[] lines =
        [
            Day(head.Date, phrase), Said("letter.reference", head.Reference, phrase),
            Said("letter.machine", head.Machine, phrase), Said("letter.serial", head.Serial, phrase),
        ];
        Add(string.Join(" ", lines.Where(l => l.Length > 0)), blocks);
        Add(Said("letter.to", head.To, phrase), blocks);
    }

    /// <summary>What the owner wrote: after the word whether the machine may be used, which nothing keeps waiting.</summary>
    public static void AddOwnWords(LetterHead head, Phrase phrase, List<ReportBlock> blocks) => Add(Quoted(head.OwnWords, phrase), blocks);

    public static void Close(LetterHead head, Phrase phrase, List<ReportBlock> blocks) =>
        Add(Said("letter.from", head.From, phrase), blocks);

    /// <summary>The head of the letter's page: the caller's, and what it leaves out from the letter.</summary>
    public static ReportHead HeadOf(LetterHead letter, ReportOptions options)
    {
        var phrase = new Phrase(options.Texts, options.Units);
        ReportHead head = options.Head;
        string machine = string.Join(" ", new[] { letter.Machine, letter.Serial }.Where(t => !string.IsNullOrWhiteSpace(t)));
        string day = Day(letter.Date, phrase);
        return ReportHead.Empty
            .WithDealer(head.Dealer ?? letter.From)
            .WithCustomer(head.Customer ?? letter.To)
            .WithMachine(head.Machine ?? (machine.Length > 0 ? machine : null))
            .WithDate(head.Date ?? (day.Length > 0 ? day.TrimEnd('.') : null))
            .WithNumber(head.Number ?? letter.Reference);
    }

    private static void Add(string line, List<ReportBlock> blocks)
    {
        if (line.Length > 0)
        {
            blocks.Add(ReportBlock.Paragraph(line));
        }
    }

    private static string Day(DateTime? date, Phrase phrase) => date is not { } day ? string.Empty
        : phrase.Of(Phrase.Code("letter.date")
            .With("day", QuantityKind.Count, day.Day)
            .With("month", phrase.Of(FormattableString.Invariant($"month.{day.Month}")))
            .With("year", QuantityKind.Count, day.Year));

    private static string Said(string code, string? text, Phrase phrase) =>
        CleanText.Label(text) is { } label ? phrase.Of(Phrase.Code(code).With("text", label)) : string.Empty;

    // As much as is read at a glance, to the end of a sentence where one is near.
    private static string Quoted(string? words, Phrase phrase)
    {
        string[] all = CleanText.Line(words ?? string.Empty).Split([' '], StringSplitOptions.RemoveEmptyEntries);
        if (all.Length == 0)
        {
            return string.Empty;
        }

        int count = Math.Min(all.Length, MostWords);
        int end = all.Length <= MostWords ? count : Array.FindLastIndex(all, count - 1, w => w[w.Length - 1] is '.' or '!' or '?') + 1;
        string quoted = string.Join(" ", all.Take(end >= FewestWords ? end : count));
        return phrase.Of(Phrase.Code("letter.wrote").With("text", all.Length > MostWords && end < FewestWords ? quoted + " …" : quoted));
    }
}
