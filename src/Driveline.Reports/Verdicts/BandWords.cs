using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Reports.Verdicts;

/// <summary>A torque band in words: "1200 to 2000 N·m, most likely 1500".</summary>
internal static class BandWords
{
    public static string Of(TorqueBand? band, Phrase phrase)
    {
        if (band is null)
        {
            return phrase.Of("band.notKnown");
        }

        double low = band.Low.NewtonMeters;
        double? expected = band.Expected?.NewtonMeters;
        double? high = band.High?.NewtonMeters;
        string code = high is { } top ? (top.Equals(low) ? "band.exactly" : "band.between")
            : expected is not null ? "band.openWithExpected"
            : low > 0 ? "band.open"
            : "band.nothing";
        Finding words = Phrase.Code(code)
            .With("value", phrase.Number(low))
            .With("low", phrase.Number(low))
            .With("expected", phrase.Number(expected ?? double.PositiveInfinity))
            .With("high", phrase.Number(high ?? double.PositiveInfinity))
            .With("unit", phrase.TorqueUnit);
        return phrase.Of(words);
    }
}
