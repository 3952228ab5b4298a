using Driveline.Cases;
using Driveline.Cases.Members;
using Driveline.Quantities;
using Driveline.Sweeps.Factors;
using Driveline.Sweeps.Rows;

namespace Driveline.Sweeps.Reading;

/// <summary>The rows of one factor, for the fact of the case that it varies.</summary>
internal sealed class FactorMembers
{
    /// <summary>What a factor is called in the schema.</summary>
    public const string Name = "factor";

    private const string Wanted = "uniform, normal, lognormal, triangular, pert, values or band";

    private readonly CaseTarget? target;
    private readonly PathMember path;
    private readonly Member[] kinds;
    private readonly FlagMember band;
    private readonly ValuesMember values;

    public FactorMembers(CaseTarget? target, PathProblem? problem, bool isFirst)
    {
        this.target = target;
        Table = new MemberTable(Name, "A fact of the case that varies, and how it is distributed.", Across);
        path = Table.Add(new PathMember("path", problem, isFirst, "Where in the case, as its errors say it.")).Required();
        var uniform = Table.Add(new AmountsMember("uniform", target, 2, false, "Low and high; every value between is equally likely."));
        var normal = Table.Add(new AmountsMember("normal", target, 2, true, "Mean and standard deviation."));
        var lognormal = Table.Add(new AmountsMember("lognormal", target, 2, true, "Mean and standard deviation of the value itself."));
        var triangular = Table.Add(new AmountsMember("triangular", target, 3, false, "Low, most likely and high."));
        var pert = Table.Add(new AmountsMember(
            "pert", target, 3, false, "Low, most likely and high; smooth, with more weight in the middle."));
        values = Table.Add(new ValuesMember("values", target, "Values, each as likely, written as in the case."));
        band = Table.Flag("band", "True for a triangle over low, expected and high of the band that the case states there.");
        kinds = [uniform, normal, lognormal, triangular, pert, values, band];
    }

    public MemberTable Table { get; }

    /// <summary>The factor; null, with errors, when something is wrong.</summary>
    public Factor? FactorOf(CaseObject facts, CaseWalk walk)
    {
        if (kinds.FirstOrDefault(k => facts[k] is not null) is not { } kind || facts[path] is not string name)
        {
            return null;
        }

        if (kind == band)
        {
            return OfBand(facts, walk, name);
        }

        if (kind == values)
        {
            return ((ValuesRead)facts[values]!).Factor(name);
        }

        double[] amounts = (double[])facts[kind]!;
        bool isSpread = ((AmountsMember)kind).IsSpread;
        string? problem = isSpread ? null : Order(amounts);
        if (problem is not null)
        {
            walk.Contradiction(facts, kind, problem);
            return null;
        }

        return kind.Name switch
        {
            "uniform" => Factor.Uniform(name, amounts[0], amounts[1]),
            "normal" => Factor.Normal(name, amounts[0], amounts[1]),
            "lognormal" when amounts[0] > 0 => Factor.Lognormal(name, amounts[0], amounts[1]),
            "lognormal" => Refused(facts, walk, kind, "The mean of a lognormal factor must be above 0."),
            "triangular" => Factor.Triangular(name, amounts[0], amounts[1], amounts[2]),
            _ => Factor.Pert(name, amounts[0], amounts[1], amounts[2]),
        };
    }

    private static Factor? Refused(CaseObject facts, CaseWalk walk, Member member, string message)
    {
        walk.Contradiction(facts, member, message);
        return null;
    }

    private string? Order(double[] amounts)
    {
        string Shown(double si) => QuantityText.Format(si, target!.Member.Quantity!.Range.Dimension);
        return !(amounts[0] < amounts[^1])
            ? "The range is empty: low must be below high; got " + Shown(amounts[0]) + " to " + Shown(amounts[^1]) + "."
            : amounts.Length == 3 && !(amounts[0] <= amounts[1] && amounts[1] <= amounts[2])
                ? "The most likely value must lie within the range " + Shown(amounts[0]) + " to " + Shown(amounts[2]) + "; got "
                    + Shown(amounts[1]) + "."
            : null;
    }

    private Factor? OfBand(CaseObject facts, CaseWalk walk, string name)
    {
        if (facts.Get(band) == false)
        {
            return Refused(facts, walk, band, "\"band\" can only be true; leave it out and state another distribution.");
        }

        return target!.Stated is not QuantityBand { SiBand: { IsBounded: true } si } || !(si.Low < si.High)
            ? Refused(facts, walk, band,
                "The case must state a band there, with a low below a high; "
                    + (target.Stated is QuantityBand stated ? "it states " + stated
                    : "it states none") + ".")
            : Factor.Of(name, new TriangularDistribution(si.Low, si.Expected, si.High));
    }

    private void Across(CaseObject facts, CaseWalk walk)
    {
        Member[] stated = [.. kinds.Where(facts.IsStated)];
        if (stated.Length == 0 && !walk.Errors().Any(e => e.Path.StartsWith(walk.Path + ".", StringComparison.Ordinal)))
        {
            walk.Error(CaseErrorKind.MissingMember, facts.Offset, "A factor needs a distribution: " + Wanted + ".", Wanted, null, null);
        }
        else if (stated.Length > 1)
        {
            walk.NotBelonging(facts, stated[1],
                "A factor has one distribution; \"" + stated[0].Name + "\" is stated already.", Wanted);
        }
    }
}
