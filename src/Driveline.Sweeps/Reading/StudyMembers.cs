using Driveline.Cases.Members;

namespace Driveline.Sweeps.Reading;

/// <summary>The rows of a study file, for one case.</summary>
internal sealed class StudyMembers
{
    private readonly StudyCase of;
    private readonly TextMember title;
    private readonly FactorsMember factors;
    private readonly MatrixMember correlation;
    private readonly ObjectMember design;
    private readonly OutputsMember outputs;
    private readonly FlagMember sensitivity;
    private readonly WholeMember rowsPerGroup;
    private readonly DesignMembers designs = new();

    public StudyMembers(StudyCase of)
    {
        this.of = of;
        Study = new MemberTable("study", "A study: what varies in a case, how, and what is computed of each row.");
        Study.Text("$schema", 500, "Where an editor finds the schema; the library does not look it up.");
        title = Study.Text("title", 200, "What the study is, in one line.").Required();
        Study.Text("notes", 20000, "Anything else worth keeping.");
        Study.Add(new CaseMember("case", "The case, or the name of its file beside the study.")).Required();
        factors = Study.Add(new FactorsMember("factors", of, "What varies.")).Required();
        correlation = Study.Add(new MatrixMember("correlation",
            "Correlation of the factors' normal scores: a row of numbers a factor, in their order."));
        design = Study.Object("design", () => designs.Table, "How the rows are chosen.").Required();
        outputs = Study.Add(new OutputsMember("outputs", of, "What is computed of each row, by name.")).Required();
        sensitivity = Study.Flag("sensitivity", "True for first-order and total indices; the design then has n (k + 2) rows.");
        rowsPerGroup = Study.Whole("rowsPerGroup", 1, 1 << 20, "Rows that are computed and written together; left out, by what they cost.");
    }

    public MemberTable Study { get; }

    /// <summary>The study of facts without errors; null, with errors, when they do not go together.</summary>
    public Study? StudyOf(CaseObject facts, CaseWalk walk)
    {
        Factor[] all = [.. ((IReadOnlyList<FactorFacts>)facts[factors]!).Select(f => f.Factor!)];
        Study study = Sweeps.Study.Of(facts.Get(title)!)
            .WithCase(of.File!)
            .WithFactors(all)
            .WithDesign(designs.DesignOf(facts.Get(design)!))
            .WithCaseOutputs([.. (IReadOnlyList<string>)facts[outputs]!])
            .WithSensitivity(facts.Get(sensitivity) ?? false);
        study = facts.Get(rowsPerGroup) is { } rows ? study.WithRowsPerGroup(rows) : study;
        if (facts[correlation] is double[][] matrix)
        {
            if (Factors.Copula.Of(matrix, all.Length, out string? problem) is null)
            {
                walk.Contradiction(facts, correlation, problem!);
                return null;
            }

            var square = new double[all.Length, all.Length];
            for (int k = 0; k < square.Length; k++)
            {
                square[k / all.Length, k % all.Length] = matrix[k / all.Length][k % all.Length];
            }

            study = study.WithCorrelation(square);
        }

        string? wrong = StudyPlan.RowsProblem(study);
        if (wrong is not null)
        {
            walk.Contradiction(facts, design, wrong);
        }

        wrong = StudyPlan.CorrelationProblem(study);
        if (wrong is not null)
        {
            walk.Contradiction(facts, correlation, wrong);
        }

        wrong = StudyPlan.IndicesProblem(study);
        if (wrong is not null)
        {
            walk.Contradiction(facts, sensitivity, wrong);
        }

        return walk.HasErrors ? null : Checked(study, facts, walk);
    }

    private Study? Checked(Study study, CaseObject facts, CaseWalk walk)
    {
        if (StudyPlan.TryOf(study, out _, out string? problem))
        {
            return study;
        }

        walk.Contradiction(facts, factors, problem!);
        return null;
    }
}
