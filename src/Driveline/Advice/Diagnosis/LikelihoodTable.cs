using System.Globalization;
using System.Text;
using Driveline.Provenance;

namespace Driveline.Advice;

/// <summary>The table behind the advice: how often causes stand behind symptoms, and how often answers are heard under causes.</summary>
/// <remarks>Read once from the embedded file likelihoods.csv, whose head explains its lines. A line that does not fit is refused.</remarks>
internal sealed class LikelihoodTable
{
    private const double Unlisted = 0.02;
    private static readonly Lazy<LikelihoodTable> Embedded = new(ReadEmbedded);

    private readonly double[][] priors = new double[AdviceCodes.Symptoms][];
    private readonly Dictionary<string, double[]> likelihoods = new(StringComparer.Ordinal);
    private readonly Dictionary<string, FactQuestion> questions = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Symptom[]> only = new(StringComparer.Ordinal);
    private readonly List<string[]> implied = [];
    private readonly HashSet<string> shown = new(StringComparer.Ordinal);

    private LikelihoodTable(IReadOnlyList<FactQuestion> asked)
    {
        Questions = asked;
        foreach (FactQuestion question in asked)
        {
            questions.Add(question.Code, question);
        }
    }

    /// <summary>The table held in the library.</summary>
    public static LikelihoodTable Held => Embedded.Value;

    /// <summary>Basis of every number in it.</summary>
    public static Basis Basis { get; } = Basis.CommonPractice("likelihoods an experienced eye would give; nobody has counted them");

    public IReadOnlyList<FactQuestion> Questions { get; }

    public FactQuestion? Find(string code) => questions.TryGetValue(code, out FactQuestion? question) ? question : null;

    /// <summary>True when the question makes sense for the complaint.</summary>
    public bool MakesSense(string question, Symptom symptom) => !only.TryGetValue(question, out Symptom[]? symptoms)
        || Array.IndexOf(symptoms, symptom) >= 0;

    /// <summary>What the complaint itself says: pairs of question and answer.</summary>
    public IEnumerable<Fact> Implied(Symptom symptom) =>
        implied.Where(row => SymptomOf(row, row[1]) == symptom).Select(row => Fact.Of(row[2], row[3]));

    /// <summary>True when the answer is the fault itself, seen by whoever gave it.</summary>
    public bool Shows(Fact fact, Cause cause) => shown.Contains(fact.Question + "." + fact.Answer + "." + cause);

    /// <summary>P(cause | symptom) by cause; adds to 1. A symptom that is not known leaves every cause the same chance.</summary>
    public double[] Prior(Symptom symptom) => priors[(int)symptom];

    /// <summary>P(answer | cause) by cause.</summary>
    public double[] Likelihood(string question, string answer) => likelihoods[question + "." + answer];

    internal static LikelihoodTable Read(TextReader reader)
    {
        var rows = new List<string[]>();
        while (reader.ReadLine() is { } line)
        {
            if (line.Length > 0 && line[0] != '#')
            {
                rows.Add(line.Split(','));
            }
        }

        string[][] bases = [.. rows.Where(r => r[0] == "base")];
        LikelihoodTable table = new([.. rows.Where(r => r[0] == "ask").Select(r => new FactQuestion(
            r[1], PlaceOf(r), Number(r, 3), [.. bases.Where(b => b[1] == r[1]).Select(b => b[2])]))]);
        for (int s = 0; s < table.priors.Length; s++)
        {
            table.priors[s] = [.. Enumerable.Repeat(s == 0 ? 1 : Unlisted, AdviceCodes.Causes)];
        }

        foreach (string[] row in bases)
        {
            table.likelihoods.Add(row[1] + "." + row[2], [.. Enumerable.Repeat(Number(row, 3), AdviceCodes.Causes)]);
        }

        foreach (string[] row in rows)
        {
            table.Apply(row);
        }

        table.Normalise();
        return table;
    }

    private static LikelihoodTable ReadEmbedded()
    {
        using Stream stream = typeof(LikelihoodTable).Assembly.GetManifestResourceStream("advice/likelihoods.csv")!;
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return Read(reader);
    }

    private static CheckPlace PlaceOf(string[] row) => row[2] switch
    {
        "desk" => CheckPlace.Desk,
        "standstill" => CheckPlace.Standstill,
        "seat" => CheckPlace.Seat,
        _ => throw Bad(row, "the place must be desk, standstill or seat"),
    };

    private static double Number(string[] row, int column) =>
        row.Length == column + 1 && double.TryParse(row[column], NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            && value > 0
            ? value
            : throw Bad(row, "its last column must be a number above 0");

    private static Cause CauseOf(string[] row, string code) =>
        AdviceCodes.TryCause(code, out Cause cause) ? cause : throw Bad(row, "'" + code + "' is not a cause");

    private static Symptom SymptomOf(string[] row, string code) =>
        AdviceCodes.TrySymptom(code, out Symptom symptom) ? symptom : throw Bad(row, "'" + code + "' is not a symptom");

    private static FormatException Bad(string[] row, string why) =>
        new("Line '" + string.Join(",", row) + "' of the likelihood table: " + why + ".");

    private void Apply(string[] row)
    {
        switch (row[0])
        {
            case "prior":
                double weight = Number(row, 3);
                priors[(int)SymptomOf(row, row[1])][(int)CauseOf(row, row[2])] = weight;
                break;
            case "implies" when row.Length == 4 && likelihoods.ContainsKey(row[2] + "." + row[3]):
                SymptomOf(row, row[1]);
                implied.Add(row);
                break;
            case "shows" when row.Length == 4 && likelihoods.ContainsKey(row[1] + "." + row[2]):
                shown.Add(row[1] + "." + row[2] + "." + CauseOf(row, row[3]));
                break;
            case "only" when row.Length == 3 && questions.ContainsKey(row[1]):
                only.Add(row[1], [.. row[2].Split('+').Select(s => SymptomOf(row, s))]);
                break;
            case "factor":
                double times = Number(row, 4);
                if (!likelihoods.TryGetValue(row[1] + "." + row[2], out double[]? answer))
                {
                    throw Bad(row, "no such answer");
                }

                foreach (string cause in row[3].Split('+'))
                {
                    answer[(int)CauseOf(row, cause)] *= times;
                }

                break;
            case "ask":
            case "base" when questions.ContainsKey(row[1]):
                break;
            default:
                throw Bad(row, "it must be a prior, or speak of a question that is asked");
        }
    }

    private void Normalise()
    {
        foreach (double[] prior in priors)
        {
            double sum = prior.Sum();
            for (int c = 0; c < prior.Length; c++)
            {
                prior[c] /= sum;
            }
        }

        foreach (FactQuestion question in Questions)
        {
            for (int c = 0; c < AdviceCodes.Causes; c++)
            {
                double sum = question.Answers.Sum(a => likelihoods[question.Code + "." + a][c]);
                foreach (string answer in question.Answers)
                {
                    likelihoods[question.Code + "." + answer][c] /= sum;
                }
            }
        }
    }
}
