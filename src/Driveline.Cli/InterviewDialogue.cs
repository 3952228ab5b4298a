using System.Globalization;
using Driveline.Findings;
using Driveline.Reports.Documents;
using Driveline.Wording;

namespace Driveline.Cli;

/// <summary>
/// Says and reads the lines of a talk: an answer by its number or its name; q stops, b takes back, l lists what was answered.
/// </summary>
internal sealed class InterviewDialogue(TextReader input, TextWriter output, Language language, int columns)
{
    private bool isBack;

    public Texts Texts { get; } = Texts.In(language);

    public bool IsStopped { get; private set; }

    /// <summary>What was answered so far, for l.</summary>
    public Func<IEnumerable<string>> Told { get; set; } = () => [];

    /// <summary>True once after the owner took back an answer.</summary>
    public bool TakesBack()
    {
        bool was = isBack;
        isBack = false;
        return was;
    }

    public void Line() => output.WriteLine();

    public void Say(string code) => SayText(Texts.Of(code));

    public void SayText(string text) => Say(text, string.Empty);

    /// <summary>The number of the answer, 0 or an empty line for not known; null when the owner stops or goes back.</summary>
    public int? Choice(IReadOnlyList<string> answers, IReadOnlyList<string> names, bool orNotKnown)
    {
        for (int k = 0; k < answers.Count; k++)
        {
            Item(k + 1, answers[k]);
        }

        if (orNotKnown)
        {
            Item(0, Texts.Of("interview.notKnown"));
        }

        int least = orNotKnown ? 0 : 1;
        while (Read() is { } line)
        {
            if (line.Length == 0 && orNotKnown)
            {
                return 0;
            }

            int named = names.ToList().FindIndex(n => string.Equals(n, line, StringComparison.OrdinalIgnoreCase)) + 1;
            if (named > 0)
            {
                return named;
            }

            if (int.TryParse(line, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number >= least
                && number <= answers.Count)
            {
                return number;
            }

            SayText(Texts.Of(Finding.Of("interview.notAnAnswer", Severity.Note)
                .With("text", CleanText.Name(line))
                .With("least", QuantityKind.Count, least)
                .With("most", QuantityKind.Count, answers.Count)));
        }

        return null;
    }

    /// <summary>Whether the owner says yes; an empty line is a no; null when he stops or goes back.</summary>
    public bool? YesOrNo() => Read() is { } line
        ? line.Length > 0 && Texts.Of("interview.yes").StartsWith(line, StringComparison.OrdinalIgnoreCase) : null;

    /// <summary>A line as written; null when the owner stops or goes back.</summary>
    public string? Written() => Read();

    // The end of the input stops the talk as q does.
    private string? Read()
    {
        output.Write("> ");
        output.Flush();
        string? line = input.ReadLine()?.Trim();
        if (line is null || string.Equals(line, "q", StringComparison.OrdinalIgnoreCase))
        {
            IsStopped = true;
            return null;
        }

        if (string.Equals(line, "l", StringComparison.OrdinalIgnoreCase))
        {
            foreach (string one in Told())
            {
                Say(one, "  - ");
            }

            return Read();
        }

        isBack = string.Equals(line, "b", StringComparison.OrdinalIgnoreCase);
        return isBack ? null : line;
    }

    private void Item(int number, string text) => Say(text, FormattableString.Invariant($"{number,4}. "));

    private void Say(string text, string first)
    {
        string indent = first;
        foreach (string line in WrappedText.Lines(text, columns - first.Length))
        {
            output.WriteLine(indent + line);
            indent = new string(' ', first.Length);
        }
    }
}
