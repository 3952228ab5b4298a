using Driveline.Findings;

namespace Driveline.Tests.Findings;

/// <summary>Each part of a finding, and what every way of making one keeps.</summary>
public class FindingPartsTests
{
    private static readonly Finding Whole = Finding.Whole(
        "made.up", Severity.Danger, Bars.Guards, Measurements.HubTurn, ["a.path", "b"],
        FindingParameter.Of("name", "bolt"), new FindingParameter("trip", QuantityKind.Torque, 950, null));

    [Fact]
    public void Whole_Made_HasEveryPart()
    {
        Assert.Equal("made.up", Whole.Code);
        Assert.Equal(Severity.Danger, Whole.Severity);
        Assert.Equal(Bars.Guards, Whole.Bars);
        Assert.Equal(Measurements.HubTurn, Whole.SettledBy);
        Assert.Equal(["a.path", "b"], Whole.Because);
        Assert.Equal(["name", "trip"], Whole.Parameters.Select(p => p.Name));
        Assert.Equal(Whole.Parameters, Whole.AllParameters);
        Assert.Equal(950, Whole.Parameter("trip")!.Value);
        Assert.Equal("bolt", Whole.Parameter("name")!.Text);
        Assert.Null(Whole.Parameter("Name"));
    }

    // Each changes one part and keeps the others.
    [Fact]
    public void Changed_OnePart_KeepsTheOthers()
    {
        Assert.Equal(Whole, Whole.As(Severity.Note).As(Severity.Danger));
        Assert.Equal(Severity.Note, Whole.As(Severity.Note).Severity);
        Assert.Equal(Whole, Whole.Barring(Bars.Quiet).Barring(Bars.Guards));
        Assert.Equal(Bars.Quiet, Whole.Barring(Bars.Quiet).Bars);
        Assert.Equal(Whole, Whole.WithSettledBy(Measurements.FreeHub).WithSettledBy(Measurements.HubTurn));
        Assert.Equal(Whole, Whole.WithBecause("c").WithBecause("a.path", "b"));
        Finding more = Whole.With("more", "text").With("most", QuantityKind.Number, double.PositiveInfinity);
        Assert.Equal(["name", "trip", "more", "most"], more.Parameters.Select(p => p.Name));
        Assert.Equal(["a.path", "b"], more.Because);
        Assert.Equal(2, Whole.Parameters.Count);
    }

    [Fact]
    public void Made_OfACodeAlone_HasNeitherFactsNorMeasurement()
    {
        Finding plain = Finding.Of("made.up", Severity.Note);
        Assert.Empty(plain.Because);
        Assert.Empty(plain.Parameters);
        Assert.Null(plain.SettledBy);
        Assert.Null(plain.Parameter("name"));
        Assert.Empty(Finding.NotKnown("made.up").Parameters);
        Assert.Empty(Finding.NotKnown("made.up").Because);
    }

    [Theory]
    [InlineData("bolt.madeUpNotKnown", Bars.Both)]
    [InlineData("bolt.madeUp", Bars.Nothing)]
    public void Named_Part_IsItsParameterAndBarsByItsCode(string code, Bars bars)
    {
        Finding named = Finding.Named(code, Severity.Warning, "clutch");
        Assert.Equal(Finding.Of(code, Severity.Warning).With("name", "clutch"), named);
        Assert.Equal(bars, named.Bars);
    }

    // Of the facts named, those that are told at the place; all of them when none is; the place itself when none is named.
    [Fact]
    public void At_APlace_TellsThePathsOfItsFacts()
    {
        FactPlace place = FactPlace.Of("driveline[2].shearBolt", ["hub", "grade"]);
        Finding finding = Finding.Of("made.up", Severity.Note).WithBecause("hub", "radius").Barring(Bars.Quiet);
        Assert.Equal(["driveline[2].shearBolt.hub"], finding.At(place).Because);
        Assert.Equal(
            ["driveline[2].shearBolt.radius"], Finding.Of("made.up", Severity.Note).WithBecause("radius").At(place).Because);
        Assert.Equal(["driveline[2].shearBolt"], Finding.Of("made.up", Severity.Note).At(place).Because);
        Assert.Equal(Bars.Quiet, finding.At(place).Bars);
        Assert.Same(finding, finding.At(null));
        Finding kept = finding.At(place).With("more", "text");
        Assert.Equal(["driveline[2].shearBolt.hub"], kept.Because);
    }

    [Fact]
    public void Lists_AskedTwice_AreTheSame()
    {
        Assert.Same(Whole.Parameters, Whole.Parameters);
        Finding placed = Whole.At(FactPlace.Of("driveline[2].shearBolt", ["b"]));
        Assert.Same(placed.Because, placed.Because);
    }

    [Theory]
    [InlineData(Bars.Nothing, Bars.Both, false)]
    [InlineData(Bars.Guards, Bars.Guards, true)]
    [InlineData(Bars.Guards, Bars.Quiet, false)]
    [InlineData(Bars.Quiet, Bars.Both, true)]
    [InlineData(Bars.Both, Bars.Quiet, true)]
    [InlineData(Bars.Both, Bars.Nothing, false)]
    public void IsBarring_Questions_AsksForAnyOfThem(Bars bars, Bars asked, bool barring) =>
        Assert.Equal(barring, Whole.Barring(bars).IsBarring(asked));

    [Fact]
    public void Made_OfNothing_IsRefused()
    {
        Assert.Throws<ArgumentException>(() => Finding.Of(" ", Severity.Note));
        Assert.Throws<ArgumentException>(() => Finding.NotKnown(" "));
        Assert.Throws<ArgumentException>(() => Whole.WithSettledBy(" "));
        Assert.Throws<ArgumentNullException>(() => Whole.WithBecause(null!));
        Assert.Throws<ArgumentNullException>(() => Whole.With("more", null!));
        Assert.Throws<ArgumentException>(() => Whole.With("more", QuantityKind.Torque, double.NaN));
        Assert.Throws<ArgumentException>(() => Whole.With("more", QuantityKind.Text, 1));
    }

    // The paths given are copied: what a caller does to its array afterwards changes nothing.
    [Fact]
    public void WithBecause_ArrayChangedLater_KeepsWhatWasTold()
    {
        string[] paths = ["a", "b"];
        Finding finding = Whole.WithBecause(paths);
        paths[0] = "c";
        Assert.Equal(["a", "b"], finding.Because);
    }

    [Fact]
    public void Equals_Object_IsTrueOfTheSameAlone()
    {
        Assert.True(Whole.Equals((object)Whole.As(Severity.Danger)));
        Assert.False(Whole.Equals("made.up"));
        Assert.False(Whole.Equals((object?)null));
        Assert.Equal(Whole.GetHashCode(), Whole.As(Severity.Danger).GetHashCode());
        Assert.NotEqual(Whole.GetHashCode(), Whole.With("more", "text").GetHashCode());
    }
}
