using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Provenance;
using Driveline.Wording;

namespace Driveline.Tests.Fasteners;

/// <summary>Marks as the trade's identification charts give them: common practice.</summary>
public sealed class HeadMarksTests
{
    public static TheoryData<ReferenceRow> LineRows =>
        ReferenceTable.Where("fasteners", "head-markings.csv", r => r["system"] == "SAE J429 (inch)" && r["lines"] is "3" or "5" or "6");

    [Theory]
    [MemberData(nameof(LineRows))]
    public void RadialLines_EveryRowOfTheTable_IsAmongTheCandidatesWithItsBasis(ReferenceRow row)
    {
        HeadMarkIdentification found = HeadMarks.Identify((int)row.Number("lines"), ScrewThread.Parse("1/2-13 UNC"));
        HeadMarkCandidate candidate = Assert.Single(found.Candidates, c => c.Name == "SAE " + row["grade_or_class"]);
        Assert.Equal(row["confidence"] == "memory" ? BasisKind.FromMemory : BasisKind.CommonPractice, candidate.Basis.Kind);
    }

    [Theory]
    [InlineData(3, "1/2 in", "SAE 5", "three radial lines mean grade 5: lines = grade minus 2")]
    [InlineData(5, "1/2 in", "SAE 7", "five radial lines, 72° apart")]
    [InlineData(6, "1/2 in", "SAE 8", "six radial lines, 60° apart")]
    public void RadialLines_OnAnInchHead_MeanTheGradeMinusTwo(int lines, string size, string grade, string source)
    {
        HeadMarkCandidate first = HeadMarks.Identify(lines, ScrewThread.Parse(size)).Candidates[0];
        Assert.True(first.Name == grade, source);
        Assert.Equal(BasisKind.CommonPractice, first.Basis.Kind);
    }

    [Fact]
    public void ThreeLines_AtHalfAnInch_GivesEveryGradeTheSizeAllowsAndHowToSettleIt()
    {
        HeadMarkIdentification found = HeadMarks.Identify(HeadMark.RadialLines(3), ScrewThread.Parse("1/2 in"));
        Assert.Equal(["SAE 5", "SAE 5.1", "SAE 5.2", "ASTM A449", "ASTM A325"], found.Candidates.Select(c => c.Name));
        Assert.Equal("3 radial lines, 120° apart", found.Candidates[0].HeadMark);

        // SAE J429 Table 1: 120 ksi = 827.4 MPa; HRC 34: 152 ksi = 1048 MPa, printed to 1 ksi.
        Assert.Equal(827.4, found.Candidates[0].Tensile!.Low.Megapascals, 0.05);
        Assert.Equal(1048, found.Candidates[0].Tensile!.High!.Value.Megapascals, 3.45);
        Finding several = Assert.Single(found.Findings, f => f.Code == FastenerFindings.SeveralGradesFitTheMark);
        Assert.Contains("SAE 5.2", several.Parameter("grades")!.Text!, StringComparison.Ordinal);
        Assert.Contains(found.Findings, f => f.Code == FastenerFindings.CoarseThreadAssumed);
    }

    [Theory]
    [InlineData("1/2-13 UNC", LineSpacing.UpsideDownT, "SAE 5.1")]
    [InlineData("1/2-13 UNC", LineSpacing.Grouped, "SAE 5.2")]
    [InlineData("No. 10-24 UNC", LineSpacing.NotKnown, "SAE 5.1")]
    public void ThreeLines_SpacingOrSizeThatSettles_GivesOneGrade(string thread, LineSpacing spacing, string grade)
    {
        HeadMarkIdentification found = HeadMarks.Identify(HeadMark.RadialLines(3, spacing), ScrewThread.Parse(thread));
        Assert.Equal(grade, Assert.Single(found.Candidates).Name);
        Assert.Empty(found.Findings);
    }

    [Fact]
    public void ThreeLines_OverOneInch_LeavesOutGradesNotMadeThere()
    {
        string[] names = [.. HeadMarks.Identify(3, ScrewThread.Parse("1-1/4-7 UNC")).Candidates.Select(c => c.Name)];
        Assert.Equal(["SAE 5", "ASTM A449", "ASTM A325", "ASTM A325 before 2014"], names);
    }

    [Fact]
    public void NoMark_OnAnInchHead_MayBeAnythingWithoutAMaximum()
    {
        HeadMarkIdentification found = HeadMarks.Identify(HeadMark.None, ScrewThread.Parse("1/2-13 UNC"));
        Assert.Equal(["SAE 2", "SAE 1", "ASTM A307 A", "ungraded bolt"], found.Candidates.Select(c => c.Name));
        Assert.Null(found.Candidates[^1].Tensile!.High);
        Assert.Contains(found.Findings, f => f.Code == FastenerFindings.UnmarkedHasNoMaximum && f.Severity == Severity.Warning);
        Finding several = Assert.Single(found.Findings, f => f.Code == FastenerFindings.SeveralGradesFitTheMark);
        Assert.Equal(double.PositiveInfinity, several.Parameter("high")!.Value);
    }

    [Fact]
    public void NoMark_OnAMetricHead_IsLikely46Or58() =>
        Assert.Equal(
            ["ISO 4.6", "ISO 5.8", "ISO 4.8", "ISO 5.6", "ISO 3.6", "ungraded bolt"],
            HeadMarks.Identify(string.Empty, ScrewThread.Parse("M12")).Candidates.Select(c => c.Name));

    [Theory]
    [InlineData("8.8", "M12", "ISO 8.8")]
    [InlineData("10,9", "M12", "ISO 10.9")]
    [InlineData("A2-70", "M12", "A2-70")]
    [InlineData("307A", "1/2 in", "ASTM A307 A")]
    [InlineData("BD", "1/2 in", "ASTM A354 BD")]
    [InlineData("18-8", "1/2 in", "18-8 or 316 stainless inch bolt")]
    [InlineData("7T", "M12", "7T (old JIS)")]
    [InlineData("08.8", "M12", "ISO 8.8")]
    public void Text_OnTheHead_NamesTheGrade(string text, string thread, string grade) =>
        Assert.Equal(grade, Assert.Single(HeadMarks.Identify(text, ScrewThread.Parse(thread)).Candidates).Name);

    [Fact]
    public void Text_WithALeadingZero_SaysThatTheHeadLimitsTension() =>
        Assert.Contains(
            HeadMarks.Identify("08.8", ScrewThread.Parse("M12x1.25")).Findings, f => f.Code == FastenerFindings.HeadLimitsTension);

    [Theory]
    [InlineData("A2-70", "M12")]
    [InlineData("304", "1/2 in")]
    public void Stainless_OnTheHead_IsWarnedOf(string text, string thread) =>
        Assert.Contains(
            HeadMarks.Identify(text, ScrewThread.Parse(thread)).Findings, f => f.Code == FastenerFindings.StainlessScattersWidely);

    [Theory]
    [InlineData(9, null)]
    [InlineData(12, null)]
    [InlineData(0, "L9")]
    public void NineLinesOrMore_AreNeverAFuse(int lines, string? text)
    {
        HeadMark mark = text is null ? HeadMark.RadialLines(lines) : HeadMark.OfText(text);
        HeadMarkIdentification found = HeadMarks.Identify(mark, ScrewThread.Parse("1/2-13 UNC"));
        Assert.Contains(found.Findings, f => f.Code == FastenerFindings.NeverAFuse && f.Severity == Severity.Danger);
        HeadMarkCandidate only = Assert.Single(found.Candidates);
        Assert.Equal(180, only.Tensile!.Low.KilopoundsForcePerSquareInch, 6);
        Assert.Null(only.Tensile.High);
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(4)]
    [InlineData(7)]
    [InlineData(8)]
    public void Lines_OfNoGradeHeld_GiveNoCandidatesAndAFinding(int lines)
    {
        HeadMarkIdentification found = HeadMarks.Identify(lines, ScrewThread.Parse("1/2-13 UNC"));
        Assert.Empty(found.Candidates);
        Assert.Equal(FastenerFindings.MarkNotHeld, Assert.Single(found.Findings).Code);
    }

    [Theory]
    [InlineData("XYZ", "1/2-13 UNC", FastenerFindings.MarkNotHeld)]
    [InlineData("8.8", "1/2-13 UNC", FastenerFindings.MarkOfOtherThreads)]
    [InlineData("9.8", "M20x1.5", FastenerFindings.MarkNotHeld)]
    public void Text_OfNoGradeHeldAtTheThread_GivesNoCandidatesAndAFinding(string text, string thread, string code)
    {
        HeadMarkIdentification found = HeadMarks.Identify(text, ScrewThread.Parse(thread));
        Assert.Empty(found.Candidates);
        Assert.Equal(code, Assert.Single(found.Findings).Code);
    }

    [Fact]
    public void Lines_OnAMetricHead_BelongToInchBolts()
    {
        HeadMarkIdentification found = HeadMarks.Identify(3, ScrewThread.Parse("M12x1.75"));
        Assert.Empty(found.Candidates);
        Assert.Equal(FastenerFindings.MarkOfOtherThreads, Assert.Single(found.Findings).Code);
    }

    [Theory]
    [InlineData("A449", "ASTM A449", "agree: the text settles the lines")]
    [InlineData("KX", "SAE 5", "a maker's mark says nothing of the grade")]
    public void LinesAndText_Together_NarrowTheGrade(string text, string first, string reason) =>
        Assert.True(
            HeadMarks.Identify(HeadMark.RadialLines(3, LineSpacing.Even).WithText(text),
                ScrewThread.Parse("1/2-13 UNC")).Candidates[0].Name == first, reason);

    [Fact]
    public void LinesAndText_ThatDisagree_KeepBoth()
    {
        string[] names =
            [.. HeadMarks.Identify(
            HeadMark.RadialLines(6, LineSpacing.Even).WithText("307A"), ScrewThread.Parse("1/2-13 UNC")).Candidates.Select(c => c.Name)];
        Assert.Equal(["ASTM A307 A", "SAE 8", "ASTM A354 BD"], names);
    }

    [Theory]
    [InlineData(-1)]
    [InlineData(25)]
    public void Lines_ImpossibleCount_IsRefused(int lines)
    {
        var thrown = Assert.Throws<ArgumentOutOfRangeException>(() => HeadMark.RadialLines(lines));
        Assert.Contains("Number of radial lines must be from 0 to 24", thrown.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Findings_EveryCode_HasAnEnglishText()
    {
        string[] codes = [.. typeof(FastenerFindings).GetFields().Select(f => (string)f.GetRawConstantValue()!)];
        Assert.Equal(8, codes.Length);
        Assert.All(codes, c => Assert.Contains(c, Texts.English.Codes));
    }

    [Fact]
    public void Findings_OfEveryKind_LeaveNoParameterOpen()
    {
        ScrewThread inch = ScrewThread.Parse("1/2 in");
        ScrewThread metric = ScrewThread.Parse("M12");
        Finding[] findings =
        [
            .. HeadMarks.Identify(3, inch).Findings, .. HeadMarks.Identify(4, inch).Findings, .. HeadMarks.Identify(9, inch).Findings,
            .. HeadMarks.Identify(3, metric).Findings, .. HeadMarks.Identify(string.Empty, metric).Findings,
            .. HeadMarks.Identify("08.8", metric).Findings, .. HeadMarks.Identify("A2-70", metric).Findings,
        ];
        Assert.Equal(8, findings.Select(f => f.Code).Distinct().Count());
        Assert.All(findings, f => Assert.DoesNotContain('{', Texts.English.Of(f)));
    }
}
