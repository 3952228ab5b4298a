using Driveline.Cases;
using Driveline.Quantities;

namespace Driveline.Sweeps;

/// <summary>A study: factors that vary, a design that says how, and what is computed of each row. Immutable.</summary>
/// <remarks>
/// With a case, factors are paths into it and outputs may be named, such as "assess.guardMargin"; with delegates, neither is needed.
/// Whether it can be run is checked when it is run, and by <see cref="Problem"/>.
/// </remarks>
/// <example>
/// <code>
/// Study study = Study.Of("Slip torque")
///     .WithFactors(Factor.Uniform("friction", 0.25, 0.45), Factor.Uniform("clampN", 6000, 8000))
///     .WithDesign(Design.Sobol(4096, seed: 7))
///     .WithOutputs(StudyOutput.Of("slipTorqueNm", row =&gt; 2 * row[0] * row[1] * 0.10625))
///     .WithSensitivity(true);
/// StudyResult result = Sweep.Run(study);
/// </code>
/// </example>
public sealed class Study
{
    private static readonly string[] OwnColumns = ["row", "error"];

    private Study(string title)
    {
        Title = title;
        Factors = [];
        Outputs = [];
        Design = Design.Sobol(1024, 0);
    }

    private Study(Study from)
    {
        Title = from.Title;
        Case = from.Case;
        Factors = from.Factors;
        Correlation = from.Correlation;
        Design = from.Design;
        Outputs = from.Outputs;
        Sensitivity = from.Sensitivity;
        NamedOutputs = from.NamedOutputs;
        RowsPerGroup = from.RowsPerGroup;
    }

    /// <summary>What it is, in one line.</summary>
    public string Title { get; private set; }

    /// <summary>The case whose facts vary; null when only delegates are asked.</summary>
    public CaseFile? Case { get; private set; }

    /// <summary>What varies, in order.</summary>
    public IReadOnlyList<Factor> Factors { get; private set; }

    /// <summary>How the rows are chosen.</summary>
    public Design Design { get; private set; }

    /// <summary>What is computed, in order; those of the case by name come first.</summary>
    public IReadOnlyList<StudyOutput> Outputs { get; private set; }

    /// <summary>True when variance-based indices are wanted: the design then has n (k + 2) rows.</summary>
    public bool Sensitivity { get; private set; }

    /// <summary>Rows that are computed and written together; 0 to let the outputs decide.</summary>
    public int RowsPerGroup { get; private set; }

    /// <summary>Why it cannot be run; null when it can.</summary>
    public string? Problem => StudyPlan.TryOf(this, out _, out string? problem) ? null : problem;

    internal double[][]? Correlation { get; private set; }

    internal IReadOnlyList<string> NamedOutputs { get; private set; } = [];

    /// <summary>A study of that title; it needs factors and outputs.</summary>
    /// <exception cref="ArgumentException">No title.</exception>
    public static Study Of(string title) => new(Guard.NotBlank(title, "Title", nameof(title)));

    /// <summary>The same study of a case; factors are then paths into it.</summary>
    /// <exception cref="ArgumentNullException">The case is missing.</exception>
    public Study WithCase(CaseFile file) => Changed(s => s.Case = Guard.NotNull(file, nameof(file)));

    /// <summary>The same study with other factors.</summary>
    /// <exception cref="ArgumentException">No factor, or a name that stands twice.</exception>
    public Study WithFactors(params Factor[] factors)
    {
        Factor[] copy = [.. Guard.NotNull(factors, nameof(factors))];
        return copy.Length == 0 ? throw new ArgumentException("A study needs at least one factor; got none.", nameof(factors))
            : Twice(copy.Select(f => f.Name)) is { } twice
                ? throw new ArgumentException("The factor \"" + twice + "\" stands twice.", nameof(factors))
            : Changed(s => s.Factors = Array.AsReadOnly(copy));
    }

    /// <summary>The same study with correlated factors.</summary>
    /// <param name="matrix">Correlation of the normal scores, a row and a column a factor; symmetric, positive definite.</param>
    /// <exception cref="ArgumentException">It is no such matrix.</exception>
    public Study WithCorrelation(double[,] matrix)
    {
        Guard.NotNull(matrix, nameof(matrix));
        double[][] rows = [.. Enumerable.Range(0, matrix.GetLength(0)).Select(
            i => Enumerable.Range(0, matrix.GetLength(1)).Select(j => matrix[i, j]).ToArray())];
        return Sweeps.Factors.Copula.Of(rows, rows.Length, out string? problem) is null
            ? throw new ArgumentException(problem, nameof(matrix)) : Changed(s => s.Correlation = rows);
    }

    /// <summary>The same study with another design.</summary>
    /// <exception cref="ArgumentNullException">The design is missing.</exception>
    public Study WithDesign(Design design) => Changed(s => s.Design = Guard.NotNull(design, nameof(design)));

    /// <summary>The same study with other outputs.</summary>
    /// <exception cref="ArgumentException">No output, or a name that stands twice.</exception>
    public Study WithOutputs(params StudyOutput[] outputs)
    {
        StudyOutput[] copy = [.. Guard.NotNull(outputs, nameof(outputs))];
        return Twice(copy.Select(f => f.Name)) is { } twice
            ? throw new ArgumentException("The output \"" + twice + "\" stands twice.", nameof(outputs))
            : Changed(s => s.Outputs = Array.AsReadOnly(copy));
    }

    /// <summary>The same study with outputs of the case by name, e.g. "assess.guardMargin", before the others.</summary>
    /// <exception cref="ArgumentNullException">A name is missing.</exception>
    public Study WithCaseOutputs(params string[] names)
    {
        string[] copy = [.. Guard.NotNull(names, nameof(names))];
        return Changed(s => s.NamedOutputs = copy);
    }

    /// <summary>The same study with or without variance-based indices.</summary>
    public Study WithSensitivity(bool isWanted) => Changed(s => s.Sensitivity = isWanted);

    /// <summary>The same study with so many rows in a group; it changes the bytes of a Parquet file.</summary>
    /// <exception cref="ArgumentOutOfRangeException">It is not from 1 to 1,048,576.</exception>
    public Study WithRowsPerGroup(int rows) =>
        Changed(s => s.RowsPerGroup = Guard.Within(rows, 1, 1 << 20, "Rows of a group", nameof(rows)));

    /// <inheritdoc/>
    public override string ToString() => Title;

    internal static string? Twice(IEnumerable<string> names) =>
        OwnColumns.Concat(names).GroupBy(n => n, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1)?.Key;

    private Study Changed(Action<Study> change)
    {
        var changed = new Study(this);
        change(changed);
        return changed;
    }
}
