using System.Globalization;
using Driveline.Quantities;
using FsCheck;
using FsCheck.Fluent;

namespace Driveline.Tests.Quantities;

public class QuantityTextLaws
{
    private static readonly Dimension[] Dimensions = Enum.GetValues<Dimension>().Where(d => d != Dimension.NotKnown).ToArray();

    /// <summary>Logarithmically spread numbers from 1e-9 to 1e9.</summary>
    private static Gen<double> Spread => Gen.Choose(-9000, 9000).Select(e => Math.Pow(10, e / 1000.0));

    [Law]
    public Property Format_AnyValue_ReadsBackExactly() => Prop.ForAll(
        Spread.SelectMany(_ => Gen.Elements(Dimensions), (si, dimension) => (si, dimension)).ToArbitrary(),
        x =>
        {
            string text = QuantityText.Format(x.si, x.dimension);
            return QuantityText.TryParse(text, x.dimension, out double back, out string? problem) && back.Equals(x.si);
        });

    [Law]
    public Property Format_ExtremeValue_ReadsBackExactly() => Prop.ForAll(
        ArbMap.Default.GeneratorFor<NormalFloat>().SelectMany(_ => Gen.Elements(Dimensions), (si, dimension) => (si: si.Get, dimension))
            .ToArbitrary(),
        x => QuantityText.TryParse(QuantityText.Format(x.si, x.dimension), x.dimension, out double back, out _) && back.Equals(x.si));

    [Law]
    public Property Unit_WhicheverIsWritten_GivesTheSameValue() => Prop.ForAll(
        Spread.SelectMany(_ => Gen.Elements(Dimensions.Where(d => d != Dimension.Temperature).ToArray()),
            (si, dimension) => (si, dimension)).ToArbitrary(),
        x => WrittenUnits.Of(x.dimension).All(unit =>
        {
            string text = unit.FromSi(x.si).ToString("R", CultureInfo.InvariantCulture) + " " + unit.Symbol;
            return QuantityText.TryParse(text, x.dimension, out double back, out _) && Math.Abs(back - x.si) <= 1e-12 * x.si;
        }));

    [Law]
    public Property AnyText_GivesAValueOrAProblem() => Prop.ForAll(
        Gen.Elements("1", "2", "/", " ", "-", ",", ".", "e", "¾", "N", "m", "in", "°", "%", "\"", "\u202F", "\0", "kW", "rpm", "(", "²",
            "\uD800").ListOf()
            .SelectMany(_ => Gen.Elements(Dimensions), (parts, dimension) => (text: string.Concat(parts), dimension)).ToArbitrary(),
        x =>
        {
            bool isRead = QuantityText.TryParse(x.text, x.dimension, out double si, out string? problem);
            return isRead ? problem is null && !double.IsNaN(si) && !double.IsInfinity(si) : problem is { Length: > 0 } && si == 0;
        });

    [Fact]
    public void Spellings_OfEachUnit_AreReadInTheirNormalForm()
    {
        foreach (Dimension dimension in Dimensions)
        {
            Assert.Equal(1, WrittenUnits.Of(dimension)[0].Numerator);
            Assert.Equal(1, WrittenUnits.Of(dimension)[0].Denominator);
            foreach (WrittenUnit unit in WrittenUnits.Of(dimension))
            {
                Assert.Equal(unit.Symbol, UnitSpelling.Normal(unit.Symbol));
                Assert.Same(unit, WrittenUnits.Find(dimension, unit.Symbol));
            }
        }
    }
}
