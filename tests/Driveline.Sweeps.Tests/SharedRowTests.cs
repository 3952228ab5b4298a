using Driveline.Cases;
using Driveline.Cases.Members;
using Driveline.Protection;
using Driveline.Sweeps.Rows;

namespace Driveline.Sweeps.Tests;

/// <summary>Rows share what no factor touches; each must be what its case is alone.</summary>
public class SharedRowTests
{
    private static readonly double[] Shares = [1, 0.97, 1.01, 0.5, 1.3];

    public static TheoryData<string> Cases =>
    [
        "thornbeck-bolt-right", "thornbeck-unmarked", "dunmarsh-clutch-well-set", "dunmarsh-clutch-rusted", "wickerby-clutch-too-hot",
        "saltmere-spreader-pin", "fenwick-auger-plain-bolt", "cranley-baler-flywheel",
        "orchard-row-electric-switch", "millbrook-feed-auger", "cold-beck-snow-blower",
    ];

    [Theory]
    [MemberData(nameof(Cases))]
    public void Row_OfAnyNumber_IsItsCaseAlone(string name)
    {
        CaseFile file = CaseReader.Read(File.ReadAllBytes(TestStudies.CaseFile(name))).Case!;
        string[] paths = [.. Numbers(file.Facts, string.Empty)];
        Assert.NotEmpty(paths);
        Assert.All(paths, path => AssertRows(file, [path], Shares));
    }

    [Fact]
    public void Row_OfManyFacts_IsItsCaseAlone()
    {
        CaseFile file = CaseReader.Read(File.ReadAllBytes(TestStudies.CaseFile("thornbeck-bolt-right"))).Case!;
        AssertRows(file, ["driveline[2].shearBolt.shaftDiameter", "driveline[3].efficiency", "driveline[1].damagedAt"], Shares);
        AssertRows(file, ["work.steadyPeak", "tractor.ptoPower", "work.peaksPerHour"], Shares);
    }

    [Theory]
    [InlineData("hub", "free", "seized", "stiff", "free")]
    [InlineData("grade", "SAE 5", "SAE 8", "unmarked", "SAE 2")]
    [InlineData("holeFit", "tight", "worn", "tight", "worn")]
    public void Row_OfAWord_IsItsCaseAlone(string member, params string[] words)
    {
        CaseFile file = CaseReader.Read(File.ReadAllBytes(TestStudies.CaseFile("thornbeck-bolt-right"))).Case!;
        string path = "driveline[2].shearBolt." + member;
        CaseTarget.TryFind(file, path, out CaseTarget? target, out _);
        object[] facts = [.. words.Select(w => CaseTargetOf(file.With(path, "\"" + w + "\"").Case!, path).Stated!)];
        var rows = new CaseRows(file, [Factor.OfChoices(path, words, facts)], [target!]);
        var patch = new CasePatch(file, [target!]);
        for (int k = 0; k < words.Length; k++)
        {
            AssertSame(rows, patch, [[k]], [facts[k]]);
        }
    }

    private static void AssertRows(CaseFile file, string[] paths, double[] shares)
    {
        CaseTarget[] targets = [.. paths.Select(p => CaseTargetOf(file, p))];
        double[] stated = [.. targets.Select(SiOf)];
        var rows = new CaseRows(file, [.. paths.Select(p => Factor.Values(p, 1, 2))], targets);
        var patch = new CasePatch(file, targets);
        for (int k = 0; k < shares.Length; k++)
        {
            double[] values =
                [.. stated.Select((s, d) => targets[d].IsWhole ? Math.Max(1, s + k - 1) : s * shares[(k + d) % shares.Length])];
            object?[] facts = [.. values.Select((v, d) => targets[d].Member.OfSi(v))];
            if (facts.All(f => f is not null))
            {
                AssertSame(rows, patch, [.. values.Select(v => new[] { v })], facts!);
            }
        }
    }

    private static void AssertSame(CaseRows rows, CasePatch patch, double[][] columns, object[] facts)
    {
        CaseAssessment? row = rows.Asked(columns, 0, new CaseScratch(columns.Length), out string? problem);
        CaseFile? alone = patch.With(facts, out string? wrong);
        if (alone is null || CaseAssessment.Of(alone) is not { IsGood: true } expected)
        {
            Assert.Null(row);
            Assert.Equal(wrong ?? problem, problem);
            return;
        }

        ProtectionVerdict found = row!.Verdict();
        ProtectionVerdict wanted = expected.Verdict();
        Assert.Equal(wanted.ToString(), found.ToString());
        Assert.Equal(wanted.GuardMargin, found.GuardMargin);
        Assert.Equal(wanted.WorkMargin, found.WorkMargin);
        Assert.Equal(wanted.Trip, found.Trip);
        Assert.Equal(wanted.WorkPeak, found.WorkPeak);
        Assert.Equal(wanted.Standing.State, found.Standing.State);
        Assert.Equal(wanted.AsSpecified.Answer, found.AsSpecified.Answer);
        Assert.Equal(wanted.Findings, found.Findings);
        Assert.Equal(wanted.Parts.Select(p => p.ToString()), found.Parts.Select(p => p.ToString()));
    }

    private static CaseTarget CaseTargetOf(CaseFile file, string path) =>
        CaseTarget.TryFind(file, path, out CaseTarget? target, out PathProblem? problem) ? target
            : throw new ArgumentException(problem.Message, nameof(path));

    private static double SiOf(CaseTarget target) => target.Stated switch
    {
        Quantities.QuantityBand band => band.SiBand.Low,
        int whole => whole,
        double si => si,
        object other => Convert.ToDouble(other, System.Globalization.CultureInfo.InvariantCulture),
        _ => throw new InvalidOperationException(target.Member.Name),
    };

    private static IEnumerable<string> Numbers(CaseObject facts, string path) => facts.Table.Members.SelectMany(m => (m, facts[m]) switch
    {
        (_, null) => [],
        (ObjectMember inner, _) => Numbers(facts.Get(inner)!, path + m.Name + "."),
        (ListMember list, _) => facts.Get(list)
            .SelectMany((item, k) => Numbers(item, FormattableString.Invariant($"{path}{m.Name}[{k}]."))),
        (_, Quantities.QuantityBand or double or int) when m.Quantity is not null || m is WholeMember { Name: not "format" } =>
            [path + m.Name],
        _ => Array.Empty<string>(),
    });
}
