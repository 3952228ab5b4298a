using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Numerics;
using System.Security.Cryptography;
using System.Text;
using Driveline.Cases;
using Driveline.Sweeps.Factors;
using Driveline.Sweeps.Kernels;
using Driveline.Sweeps.Outputs;
using Driveline.Sweeps.Rows;
using Driveline.Sweeps.Sampling;

namespace Driveline.Sweeps;

/// <summary>A study that was checked: its points, its factors in their case, its outputs. Immutable; safe for several threads.</summary>
internal sealed class StudyPlan
{
    /// <summary>Most rows of a study.</summary>
    public const long MostRows = 1L << 32;

    /// <summary>Most rows that variance-based indices are computed of: every output is held in memory.</summary>
    public const long MostRowsForIndices = 1L << 24;

    private StudyPlan(
        Study study, UnitPoints points, Copula? copula, IReadOnlyList<StudyOutput> outputs, CaseRows? rows, CaseKernel? kernel)
    {
        Study = study;
        Points = points;
        Copula = copula;
        Outputs = outputs;
        Rows = rows;
        Kernel = kernel;
        RowsPerGroup = study.RowsPerGroup > 0 ? study.RowsPerGroup : Usual(outputs, kernel is not null);
        Mark = MarkOf(study, outputs, RowsPerGroup, typeof(StudyPlan).Assembly.GetName().Version?.ToString());
    }

    public Study Study { get; }

    public UnitPoints Points { get; }

    public Copula? Copula { get; }

    public IReadOnlyList<StudyOutput> Outputs { get; }

    public CaseRows? Rows { get; }

    /// <summary>Computes the outputs of the case over columns; null when its rows need cases.</summary>
    public CaseKernel? Kernel { get; }

    public int RowsPerGroup { get; }

    public long Count => Points.Count;

    public long Groups => (Count + RowsPerGroup - 1) / RowsPerGroup;

    /// <summary>
    /// What tells this study from another, and from itself as another version of the library computes it; delegates are told by their
    /// names alone.
    /// </summary>
    public string Mark { get; }

    /// <summary>True when the design asks for the ends of the ranges.</summary>
    public bool TakesEnds => Study.Design.Kind is DesignKind.Grid or DesignKind.Morris;

    public static StudyPlan Of(Study study) =>
        TryOf(study, out StudyPlan? plan, out string? problem) ? plan : throw new ArgumentException(problem, nameof(study));

    public static bool TryOf(Study study, [NotNullWhen(true)] out StudyPlan? plan, [NotNullWhen(false)] out string? problem)
    {
        plan = null;
        var targets = new List<CaseTarget>();
        var outputs = new List<StudyOutput>();
        Copula? copula = null;
        problem = study.Factors.Count == 0 ? "A study needs at least one factor; got none."
            : Bind(study, targets, outputs)
            ?? (outputs.Count == 0 ? "A study needs at least one output; got none." : null)
            ?? (Study.Twice(study.Factors.Select(f => f.Name).Concat(outputs.Select(o => o.Name))) is { } twice
                ? "The name \"" + twice + "\" stands twice among row, factors, outputs and error." : null)
            ?? RowsProblem(study) ?? CorrelationProblem(study) ?? IndicesProblem(study);
        if (problem is null && study.Correlation is { } matrix)
        {
            copula = Copula.Of(matrix, study.Factors.Count, out problem);
        }

        if (problem is not null)
        {
            return false;
        }

        CaseRows? rows = study.Case is { } file ? new CaseRows(file, study.Factors, targets) : null;
        CaseKernel? kernel = rows is null ? null
            : CaseKernel.Of(study.Case!, study.Factors, targets, rows, [.. outputs.Select(o => o.OfCase).OfType<CaseOutput>()]);
        plan = new StudyPlan(study, PointsOf(study), copula, outputs, rows, kernel);
        return true;
    }

    /// <summary>Why a design has too many rows; null when it has not.</summary>
    public static string? RowsProblem(Study study)
    {
        int factors = study.Factors.Count;
        Design design = study.Design;
        BigInteger count = design.Kind == DesignKind.Grid ? GridPoints.CountOf(LevelsOf(study))
            : design.Kind == DesignKind.Morris || study.Sensitivity
                ? (BigInteger)design.Size * (factors + (design.Kind == DesignKind.Morris ? 1 : 2))
            : design.Size;
        int dimensions = factors * (study.Sensitivity ? 2 : 1);
        return count > MostRows
            ? "The design has " + count.ToString("N0", CultureInfo.InvariantCulture) + " rows; at most "
                + MostRows.ToString("N0", CultureInfo.InvariantCulture) + " are run."
            : design.Kind == DesignKind.Sobol && dimensions > JoeKuo.Dimensions ? FormattableString.Invariant(
                $"Sobol points have at most {JoeKuo.Dimensions} dimensions here; this study needs {dimensions}.")
            : design.IsMaximin && design.Size > MaximinPoints.MostRows ? FormattableString.Invariant(
                $"A maximin Latin hypercube has at most {MaximinPoints.MostRows} rows; got {design.Size}.")
            : null;
    }

    /// <summary>Why factors of a design cannot be correlated; null when they can, or are not.</summary>
    public static string? CorrelationProblem(Study study) => study.Correlation is null ? null : study.Design.Kind switch
    {
        DesignKind.Grid => "A grid holds every combination of its levels, so that its factors are independent; "
            + "take away correlation, or take a design of kind sobol, random or latinHypercube.",
        DesignKind.Morris => "Elementary effects step one factor and leave the others where they are; of correlated ones they mean "
            + "nothing. Take away correlation, or take a design of kind sobol, random or latinHypercube.",
        _ => null,
    };

    /// <summary>Why variance-based indices cannot be given; null when they can, or are not wanted.</summary>
    public static string? IndicesProblem(Study study) => !study.Sensitivity ? null
        : study.Correlation is not null
            ? "First-order and total indices share out the variance among independent factors; of correlated ones they mean nothing. "
                + "Take away correlation or sensitivity; rank correlation is given in any case."
        : study.Design.Kind is DesignKind.Grid or DesignKind.Morris || study.Design.IsMaximin
            ? "First-order and total indices need a design of kind sobol, random or plain latinHypercube."
        : study.Design.Size * (study.Factors.Count + 2L) > MostRowsForIndices ? FormattableString.Invariant(
            $"Indices are computed of at most {MostRowsForIndices} rows; this study has {study.Design.Size * (study.Factors.Count + 2L)}.")
        : null;

    private static int[] LevelsOf(Study study) => [.. study.Factors.Select(f => f.Distribution.Levels > 0 ? f.Distribution.Levels
        : (int)Math.Min(study.Design.Size, int.MaxValue))];

    private static UnitPoints PointsOf(Study study)
    {
        Design design = study.Design;
        int k = study.Factors.Count;
        int dimensions = study.Sensitivity ? 2 * k : k;
        UnitPoints points = design.Kind switch
        {
            DesignKind.Grid => new GridPoints(
                LevelsOf(study), [.. study.Factors.Select(f => f.Distribution.Levels > 0)], (long)GridPoints.CountOf(LevelsOf(study))),
            DesignKind.Random => new RandomPoints(dimensions, design.Size, design.Seed),
            DesignKind.LatinHypercube when design.IsMaximin => new MaximinPoints(k, (int)design.Size, design.Seed),
            DesignKind.LatinHypercube => new LatinPoints(dimensions, design.Size, design.Seed),
            DesignKind.Morris => new MorrisPoints(k, design.Size, design.Levels, design.Seed),
            _ => new SobolPoints(dimensions, design.Size, design.IsScrambled ? design.Seed : null),
        };
        return study.Sensitivity ? new SaltelliPoints(points) : points;
    }

    private static string? Bind(Study study, List<CaseTarget> targets, List<StudyOutput> outputs)
    {
        if (study.Case is not { } file)
        {
            outputs.AddRange(study.Outputs);
            return study.NamedOutputs.Count == 0 ? null : "Outputs by name need a case; the study has none.";
        }

        if (CaseAssessment.Of(file) is { IsGood: false } bad)
        {
            return "The case contradicts itself: " + bad.Errors[0];
        }

        foreach (Factor factor in study.Factors)
        {
            if (!CaseTarget.TryFind(file, factor.Name, out CaseTarget? target, out PathProblem? problem))
            {
                return factor.Name + ": " + problem.Message;
            }

            if (factor.Words is not null && factor.Choices is null)
            {
                return factor.Name + ": words are read into a case by a study file only; give numbers, or change the case yourself.";
            }

            targets.Add(target);
        }

        foreach (string name in study.NamedOutputs)
        {
            if (!CaseOutputs.TryFind(file, name, out CaseOutput? output, out string? problem, out _))
            {
                return problem;
            }

            outputs.Add(StudyOutput.Of(output));
        }

        outputs.AddRange(study.Outputs);
        return null;
    }

    private static int Usual(IReadOnlyList<StudyOutput> outputs, bool isClosed) => (isClosed ? OutputCost.ClosedForm
        : outputs.Max(o => o.OfCase?.Row.Cost ?? OutputCost.ClosedForm)) switch
    {
        OutputCost.Simulation or OutputCost.WholeSimulation => 64,
        OutputCost.Case => 4096,
        _ => 65536,
    };

    /// <summary>The mark of a study as a version of the library computes it.</summary>
    public static string MarkOf(Study study, IReadOnlyList<StudyOutput> outputs, int rowsPerGroup, string? version)
    {
        var text = new StringBuilder();
        text.Append(version).Append('\n');
        text.Append(study.Title).Append('\n').Append(study.Design).Append('\n').Append(study.Sensitivity).Append('\n').Append(rowsPerGroup);
        foreach (Factor factor in study.Factors)
        {
            text.Append('\n').Append(factor).Append(' ').AppendJoin('|', factor.Words ?? []);
        }

        foreach (double[] row in study.Correlation ?? [])
        {
            text.Append('\n').AppendJoin(' ', row.Select(v => v.ToString("R", CultureInfo.InvariantCulture)));
        }

        text.Append('\n').AppendJoin('\n', outputs.Select(o => o.Name)).Append('\n');
        text.Append(study.Case is { } file ? CaseWriter.ToJson(file) : string.Empty);
        return Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.ToString())))[..32];
    }
}
