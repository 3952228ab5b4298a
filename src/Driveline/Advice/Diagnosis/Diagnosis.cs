using Driveline.Findings;
using Driveline.Protection;
using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Advice;

/// <summary>From a complaint to causes with reasons, the next check, and remedies.</summary>
/// <remarks>
/// P(cause | all) ∝ P(cause | symptom) · Π P(fact | cause) · Π model factors, made to add to 1. One main cause is taken to be at
/// work and facts to be independent given it. What the symptom says itself (a bolt that breaks is a shear bolt) is in its row of
/// P(cause | symptom) already and counts once. The ranking is worth more than the second digit, and a fault that is seen is worth
/// mending where another is likelier. The next check has the largest
/// expected information about the cause, H(C) − Σ_a P(a) H(C | a), per effort. Immutable.
/// </remarks>
public sealed class Diagnosis
{
    private IReadOnlyList<FactQuestion>? open;
    private IReadOnlyList<Caution>? cautions;

    /// <summary>The chance the first cause must have, and its lead over the second one with a name, before it counts as known.</summary>
    private const double Enough = 0.5;
    private const double Lead = 2.5;
    private const double LeastBits = 0.01;
    private const double Telling = 1.25;
    private const double AskingMinutes = 5;

    // Below this chance at the start a cause is not one of the symptom's own.
    private const double Listed = 0.03;

    private readonly double[] chances;

    private Diagnosis(Complaint complaint)
    {
        Complaint = complaint;
        LikelihoodTable table = LikelihoodTable.Held;
        Fact[] facts = [.. complaint.Facts
            .Where(f => f.Answer != Fact.NotKnown && !table.Implied(complaint.Symptom).Contains(f))
            .OrderBy(f => f.Question, StringComparer.Ordinal)];
        double[] prior = table.Prior(complaint.Symptom);
        var logs = new double[AdviceCodes.Causes];
        for (int c = 0; c < logs.Length; c++)
        {
            logs[c] = !MachineFit.Has((Cause)c, complaint) ? double.NegativeInfinity : Math.Log(prior[c])
                + facts.Sum(f => Math.Log(table.Likelihood(f.Question, f.Answer)[c]))
                + complaint.Model.Factors.Sum(m => Math.Log(m.On((Cause)c)));
        }

        chances = Normalised(logs);
        Fact[] told = [.. facts, .. table.Implied(complaint.Symptom)];
        Basis = complaint.Model.Factors.Count == 0 ? LikelihoodTable.Basis : Basis.Weakest(LikelihoodTable.Basis, complaint.Model.Basis);
        Causes = [.. Enumerable.Range(0, chances.Length)
            .OrderByDescending(c => chances[c])
            .Select(c => new LikelyCause(
                (Cause)c, new Probability(chances[c], Basis), IsSeen(c, prior, told), Reasons(c, prior, facts, true).AsReadOnly(),
                    Reasons(c, prior, facts, false).AsReadOnly()))];
        Next = Best(facts);
        IReadOnlyList<Cause> pool = Advice.Remedies.Pool(Causes[0].Cause, complaint);
        Pooled = [.. Causes.Select(c => c.Cause).Where(pool.Contains)];
        Remedies = Advice.Remedies.For(Causes, IsEnoughKnown, IsOneKnown, complaint);
    }

    /// <summary>The complaint.</summary>
    public Complaint Complaint { get; }

    /// <summary>Every cause, likeliest first; their probabilities add to 1.</summary>
    public IReadOnlyList<LikelyCause> Causes { get; }

    /// <summary>
    /// True when the likeliest cause, with those that the same remedy cures, has a chance of one half or more and 2.5 times that of the
    /// next one with a name; else check first.
    /// </summary>
    public bool IsEnoughKnown => IsKnown(Pooled);

    /// <summary>The likeliest cause and, where another is as good for its remedy, those too, likeliest first.</summary>
    public IReadOnlyList<Cause> Pooled { get; }

    // Of what only one cause bears: a stronger bolt, or leaving it as it is.
    private bool IsOneKnown => IsKnown([Causes[0].Cause]);

    /// <summary>What to find out next; null when nothing in the catalogue would tell more.</summary>
    public NextCheck? Next { get; }

    /// <summary>Every question that is not answered and would tell something here, in the order of the catalogue.</summary>
    public IReadOnlyList<FactQuestion> Open => open ??=
        [.. FactQuestion.All.Where(q => q.Place != CheckPlace.NotKnown && IsOpen(q) && Information(q, out _) >= LeastBits)];

    /// <summary>What to do: the cure of the likeliest cause once known, then free habits, then the rest, a stronger bolt last.</summary>
    public IReadOnlyList<Remedy> Remedies { get; }

    /// <summary>The cautions that go with every advice, and those of the next check and the remedies.</summary>
    public IReadOnlyList<Caution> Cautions => cautions ??= [.. Caution.All.Where(c => Caution.Always.Contains(c)
        || (Next?.Question.Cautions.Contains(c) ?? false) || Remedies.Any(r => r.Caution == c))];

    /// <summary>Weakest basis of what was used.</summary>
    public Basis Basis { get; }

    /// <summary>The diagnosis of a complaint.</summary>
    public static Diagnosis Of(Complaint complaint) => new(Guard.NotNull(complaint, nameof(complaint)));

    /// <summary>How likely a cause is.</summary>
    public Probability ProbabilityOf(Cause cause) => Causes.First(c => c.Cause == cause).Probability;

    private bool IsKnown(IReadOnlyList<Cause> pool)
    {
        double chance = pool.Sum(c => chances[(int)c]);
        return Causes[0].Cause != Cause.NotKnown && chance >= Enough && chance >= Lead * Causes
            .First(c => c.Cause != Cause.NotKnown && !pool.Contains(c.Cause)).Probability.Value;
    }

    private static double[] Normalised(double[] logs)
    {
        double top = logs.Max();
        double[] chances = [.. logs.Select(l => Math.Exp(l - top))];
        double sum = chances.Sum();
        return [.. chances.Select(c => c / sum)];
    }

    private static double Entropy(IEnumerable<double> chances) => -chances.Where(p => p > 0).Sum(p => p * Math.Log(p)) / Math.Log(2);

    // What the fact does to this cause against the average of all others, weighted as the symptom weighs them.
    private static double FactorOn(int cause, double[] prior, Func<int, double> likelihood)
    {
        double others = 0;
        double weight = 0;
        for (int c = 0; c < prior.Length; c++)
        {
            if (c != cause)
            {
                others += prior[c] * likelihood(c);
                weight += prior[c];
            }
        }

        return likelihood(cause) * weight / others;
    }

    private static double DangerOf(CheckPlace place) => place switch
    {
        CheckPlace.Desk => 1,
        CheckPlace.Standstill => 1.5,
        CheckPlace.Seat => 4,
        _ => double.PositiveInfinity,
    };

    // What people judge from the circumstances is no more than a reason; a fault is seen when an answer is the fault itself.
    private static bool IsSeen(int cause, double[] prior, Fact[] facts) =>
        prior[cause] >= Listed && Array.Exists(facts, f => LikelihoodTable.Held.Shows(f, (Cause)cause));

    private List<Reason> Reasons(int cause, double[] prior, Fact[] facts, bool isFor)
    {
        LikelihoodTable table = LikelihoodTable.Held;
        IEnumerable<Reason> ofFacts = facts.Select(f => new Reason(
            Finding.Of(f.Code, Severity.Note), FactorOn(cause, prior, c => table.Likelihood(f.Question, f.Answer)[c])));

        // A number that is about other causes is a reason for them, not one against this.
        IEnumerable<Reason> ofModel = Complaint.Model.Factors.Where(m => m.On((Cause)cause) != 1)
            .Select(m => new Reason(m.Finding, FactorOn(cause, prior, c => m.On((Cause)c))));
        return [.. ofFacts.Concat(ofModel)
            .Where(r => isFor ? r.Factor >= Telling : r.Factor <= 1 / Telling)
            .OrderByDescending(r => Math.Abs(Math.Log(r.Factor)))
            .ThenBy(r => r.Finding.Code, StringComparer.Ordinal)];
    }

    private NextCheck? Best(Fact[] facts)
    {
        NextCheck? best = null;
        foreach (FactQuestion question in FactQuestion.All)
        {
            // Danger is counted as effort; a place that is not known is never proposed.
            double effort = (question.Minutes + AskingMinutes) * DangerOf(question.Place);
            if (double.IsInfinity(effort) || !IsOpen(question))
            {
                continue;
            }

            double bits = Information(question, out Cause[] moved);
            if (bits >= LeastBits && (best is null || bits / effort > best.Bits / best.Effort))
            {
                best = new NextCheck(question, bits, effort, moved);
            }
        }

        return best;
    }

    private bool IsOpen(FactQuestion question) => MachineFit.Asks(question.Code, Complaint.Machine)
        && LikelihoodTable.Held.MakesSense(question.Code, Complaint.Symptom)
        && Complaint.Facts.Concat(LikelihoodTable.Held.Implied(Complaint.Symptom)).All(f => f.Question != question.Code);

    private double Information(FactQuestion question, out Cause[] moved)
    {
        var moves = new double[chances.Length];
        double rest = 0;
        foreach (string answer in question.Answers)
        {
            double[] likelihood = LikelihoodTable.Held.Likelihood(question.Code, answer);
            double heard = 0;
            for (int c = 0; c < chances.Length; c++)
            {
                heard += chances[c] * likelihood[c];
            }

            rest += heard * Entropy(chances.Select((p, c) => p * likelihood[c] / heard));
            for (int c = 0; c < chances.Length; c++)
            {
                moves[c] += Math.Abs((chances[c] * likelihood[c]) - (chances[c] * heard));
            }
        }

        moved = [.. Enumerable.Range(0, moves.Length).OrderByDescending(c => moves[c]).Take(3).Select(c => (Cause)c)];
        return Math.Max(0, Entropy(chances) - rest);
    }
}
