using Driveline.Chains;
using Driveline.Findings;
using Driveline.Protection;
using Driveline.Provenance;

namespace Driveline.Cases.Results;

/// <summary>Where the doubt about the torques of the devices comes from.</summary>
internal static class DoubtRows
{
    private static readonly ShapeOf<TorqueDoubt> Source = new ShapeOf<TorqueDoubt>("doubtSource", "One source of the doubt.")
        .Text("code", d => d.Code, "Stable code.")
        .Words("text", (d, texts, units) => texts.Of(d.Code, units), "It in words.")
        .Number("times", d => d.HighOverLow, "How many times wider it makes the band, high over low; \"unbounded\" leaves an end open.")
        .Number("share", d => d.Share, "Its share of what is bounded, 0 to 1, by the logarithm of times; null when it leaves an end open.")
        .Maybe("basis", d => d.Basis, BasisRows.Shape, "The weaker basis of its ends; null when it is a fact nobody told.")
        .MaybeText("settledBy", d => d.SettledBy, "Code of the measurement that narrows it; null when none is named.");

    private static readonly ShapeOf<KeyValuePair<BasisKind?, double>> OfBasis =
        new ShapeOf<KeyValuePair<BasisKind?, double>>("doubtOfBasis", "How much of what is bounded rests on one kind of basis.")
            .MaybeChoice("kind", p => p.Key, "The kind; null for facts nobody told.")
            .Number("share", p => p.Value, "Share of what is bounded, 0 to 1.");

    private static readonly ShapeOf<ProtectiveDevice> Device = new ShapeOf<ProtectiveDevice>(
            "deviceDoubt", "The doubt about the torque of a device, from the lowest at which it acts in work to the highest it needs.")
        .Text("name", d => d.Name, "Name.")
        .Number("lowestNm", d => d.Running?.SiBand.Low, "Lowest torque at which it acts in work, at its own place.")
        .Number("highestNm", d => d.Breakaway?.SiBand.High, "Highest torque that it first needs, at its own place.")
        .List("sources", d => d.Doubts(), Source, "Its sources, the widest first: to know the first narrows the band most.")
        .List("byBasis", d => ByBasis(d.Doubts()), OfBasis, "The bounded sources by their basis.");

    public static readonly ShapeOf<ProtectionVerdict> Shape = new ShapeOf<ProtectionVerdict>(
            "doubt", "Where the doubt about the torques of the devices comes from.")
        .List("devices", v => [.. v.Question.Chain.Devices], Device, "Every device, in order from the tractor.");

    private static IReadOnlyList<KeyValuePair<BasisKind?, double>> ByBasis(IReadOnlyList<TorqueDoubt> doubts) =>
    [
        .. doubts.Where(d => !d.IsOpen).GroupBy(d => d.Basis?.Kind)
            .Select(g => new KeyValuePair<BasisKind?, double>(g.Key, g.Sum(d => d.Share!.Value)))
            .OrderByDescending(p => p.Value),
    ];
}
