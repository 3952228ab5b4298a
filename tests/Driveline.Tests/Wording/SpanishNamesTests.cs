using System.Text.RegularExpressions;
using Driveline.Clutches;
using Driveline.Fasteners;
using Driveline.Findings;
using Driveline.Loads;
using Driveline.Provenance;
using Driveline.Pto;
using Driveline.Quantities;
using Driveline.ShearBolts;
using Driveline.Wording;

namespace Driveline.Tests.Wording;

/// <summary>What the library names itself has Spanish words; what a case names stays as it is.</summary>
public partial class SpanishNamesTests
{
    [Theory]
    [InlineData("shear bolt", "perno fusible")]
    [InlineData("PTO stub (type 3)", "eje de la toma de fuerza (tipo 3)")]
    [InlineData("1 radial lines", "1 raya radial")]
    [InlineData("3 radial lines", "3 rayas radiales")]
    [InlineData("3 radial lines and \"A325\"", "3 rayas radiales y \"A325\"")]
    [InlineData("1/2-13 UNC unmarked inch bolt", "1/2-13 UNC, perno en pulgadas sin marca")]
    [InlineData("M10 not known", "M10, desconocido")]
    [InlineData("pin 8 mm 6061-T6 aluminium rod", "pasador de 8 mm, barra de aluminio 6061-T6")]
    [InlineData("ISO 898-1:2013, Table 3 (read in three technical pages that agree)",
        "ISO 898-1:2013, tabla 3 (leído en tres páginas técnicas que coinciden)")]
    [InlineData("1/2-13 UNC, ungraded bolt", "1/2-13 UNC, perno sin clase")]
    public void Name_GivenByTheLibrary_IsInSpanish(string name, string words)
    {
        Assert.Equal(words, Texts.Spanish.Name(name));
        Assert.Equal(name, Texts.English.Name(name));
    }

    [Theory]
    [InlineData("")]
    [InlineData("drive tube")]
    [InlineData("Shear bolt of my neighbour")]
    [InlineData(" radial lines")]
    [InlineData("{} radial")]
    [InlineData("SAE 5")]
    [InlineData("ISO 8752 10, steel")]
    public void Name_OfACase_StaysAsItIs(string name) => Assert.Equal(name, Texts.Spanish.Name(name));

    [Theory]
    [InlineData("shear bolt", "El cubo del perno fusible gira sobre su eje.")]
    [InlineData("my pin", "El cubo de «my pin» gira sobre su eje.")]
    public void Name_InASpanishSentence_HasItsArticleWhereTheLibraryGaveIt(string name, string expected) => Assert.Equal(
        expected, Texts.Spanish.Of(Finding.Of("specified.hubTurns", Severity.Note).With("name", name)));

    [Fact]
    public void Name_AtTheBeginningOfASpanishSentence_BeginsWithACapital() => Assert.StartsWith(
        "El eje de la toma de fuerza (tipo 1) recibió", Texts.Spanish.Of(Finding.Of("simulation.overload", Severity.Danger)
            .With("name", "PTO stub (type 1)")), StringComparison.Ordinal);

    [Fact]
    public void Name_EndlessAndNested_StaysAsItIs()
    {
        string nested = string.Concat(Enumerable.Repeat("a (read in ", 100000)) + new string(')', 100000);
        Assert.Equal(nested, Texts.Spanish.Name(nested));
    }

    [Theory]
    [InlineData(300, true)]
    [InlineData(301, false)]
    public void Name_LengthLimit_HasABoundary(int length, bool isPutInWords)
    {
        const string Ending = " radial lines";
        string name = new string('3', length - Ending.Length) + Ending;
        Assert.Equal(isPutInWords, Texts.Spanish.Name(name) != name);
    }

    [Fact]
    public void Facing_Each_HasWords() => Assert.All(Facings.All, f => Assert.NotEqual(f.Name, Texts.Spanish.Name(f.Name)));

    [Fact]
    public void Machine_EachWithPowerFigures_HasWords() =>
        Assert.All(ImplementPower.All, r => Assert.NotEqual(r.ToString(), Texts.Spanish.Name(r.ToString())));

    [Fact]
    public void HeadMark_Each_HasWordsOrIsStamped() => Assert.All(BoltGrades.All.Select(g => g.HeadMark), IsSpanishOrADesignation);

    [Fact]
    public void Material_Each_HasWordsOrIsADesignation()
    {
        Assert.All(RodMaterials.All.Select(m => m.Designation), IsSpanishOrADesignation);
        Assert.All(BoltGrades.All.Select(g => g.Designation), IsSpanishOrADesignation);
        IsSpanishOrADesignation(FastenerMaterial.UnmarkedInchBolt.Name);
        IsSpanishOrADesignation(FastenerMaterial.UnmarkedMetricBolt.Name);
        IsSpanishOrADesignation(FastenerMaterial.NotKnown.Name);
    }

    [Fact]
    public void Source_OfEveryBoltStrength_HasWordsOrIsACitation()
    {
        string[] sources = [.. BoltSources().Distinct().Select(b => b.ToString()[(b.Kind + ": ").Length..])];
        Assert.True(sources.Length > 30, "only " + sources.Length + " sources");
        Assert.All(sources, IsSpanishOrADesignation);
    }

    [Fact]
    public void Source_OfEveryPtoTypeAndStub_HasWordsOrIsACitation()
    {
        IEnumerable<Basis> bases = PtoTypes.All.SelectMany(t => t.Limits.Select(l => l.Basis).Concat(Bases(StubStrength.Of(t).Torque)));
        Assert.All(bases.Select(b => b.Document).Distinct(), IsSpanishOrADesignation);
    }

    private static IEnumerable<Basis> BoltSources()
    {
        foreach (ScrewThread thread in UnifiedThread.All.Cast<ScrewThread>().Concat(MetricThread.All))
        {
            foreach (BoltGrade grade in BoltGrades.All)
            {
                if (!BoltStrength.TryOf(grade, thread, out BoltStrength? strength))
                {
                    continue;
                }

                ShearBolt bolt = ShearBolt.Of(thread, grade);
                foreach (Basis basis in Bases(strength!.TensileLoad).Concat(Bases(ShearPlane.Of(bolt.With(PlaneThrough.Shank)).Load))
                    .Concat(Bases(ShearPlane.Of(bolt.With(PlaneThrough.Thread)).Load)).Append(strength.MinimumTensileLoadBasis))
                {
                    yield return basis;
                }
            }
        }
    }

    private static IEnumerable<Basis> Bases(QuantityBand band) => [band.Basis.Low, band.Basis.Expected, band.Basis.High];

    // A designation or citation has no English function word; anything else must have been put in Spanish.
    private static void IsSpanishOrADesignation(string name) => Assert.DoesNotMatch(EnglishWord(), Texts.Spanish.Name(name));

    [GeneratedRegex(
        @"\b(the|and|of|in|is|it|not|by|for|with|bolt|head|lines|often|rod|page|table|chart|textbook|guess|unmarked|known|power|"
            + @"limit|read|before)\b",
        RegexOptions.IgnoreCase)]
    private static partial Regex EnglishWord();
}
