using Driveline.Provenance;
using Driveline.Quantities;

namespace Driveline.Tests.Provenance;

/// <summary>A row of a table of numbers, with where each of them comes from.</summary>
internal sealed class DataRow
{
    private DataRow(IReadOnlyList<(string Of, Basis Basis)> sources, IReadOnlyList<string> cells)
    {
        Sources = sources;
        Cells = cells;
    }

    /// <summary>What each source is the source of.</summary>
    public IReadOnlyList<(string Of, Basis Basis)> Sources { get; }

    public IReadOnlyList<string> Cells { get; }

    public static DataRow Of(Basis basis, params string[] cells) => new([("all", basis)], cells);

    public static DataRow Of(BandBasis basis, params string[] cells) =>
        new([("low", basis.Low), ("expected", basis.Expected), ("high", basis.High)], cells);

    public static DataRow Of(IReadOnlyList<(string Of, Basis Basis)> sources, params string[] cells) => new(sources, cells);

    /// <summary>A printed number with its unit.</summary>
    public static string Printed(Sourced? number) => number is null
        ? string.Empty : DataPage.Number(number.Value) + (number.Unit == "1" ? string.Empty : " " + number.Unit);

    /// <summary>Low, expected and high of a band in a unit that is so many of SI; one number where all are the same.</summary>
    public static string Band(QuantityBand? band, double perUnit) => band is null
        ? string.Empty
        : string.Join(" / ", new[] { band.SiBand.Low, band.SiBand.Expected, band.SiBand.High }.Distinct()
            .Select(v => DataPage.Number(v / perUnit)));
}
