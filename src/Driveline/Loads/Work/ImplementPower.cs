using System.Diagnostics.CodeAnalysis;
using Driveline.Provenance;

namespace Driveline.Loads;

/// <summary>Power needs held here: remembered parameters of ASABE D497, and printed powers by machine and width.</summary>
/// <remarks>
/// The D497 parameters are all remembered: its table was not at hand. It is remembered without a row for rotary cutters,
/// tillers, augers and snow blowers, so for those only printed tractor sizes stand here, or nothing: augers and snow blowers
/// have no figure at all and the power must be stated. Powers, widths and ranges stand as printed, in kW, m and %.
/// </remarks>
internal static class ImplementPower
{
    private static readonly Basis D497 = Basis.FromMemory("ASABE D497 rotary power parameters, P = a + b w + c F");

    private static readonly Basis WebGuide = Basis.CommonPractice("general web guide to tractor sizes");

    private static readonly Basis ForumThreads = Basis.CommonPractice("tractor forum threads, a rule of thumb per foot of width");

    private static readonly Basis SilageArticle = Basis.CommonPractice("article by a silage consultant");

    private static readonly Basis TillerSheet = Basis.Published(
        "specification sheet of a line of rotary tillers", "undated", "required PTO power");

    private static readonly Basis MowerConditionerManual = Basis.Published(
        "operator manual, disc mower-conditioner", "undated", "minimum tractor power");

    private static readonly Basis G1250 = Basis.Published("University extension guide G1250, large round balers", "1987", "PTO power");

    private static readonly Basis ForagePaper = Basis.Published(
        "Buckmaster, Sizing Forage Machinery", "undated", "example of a power-limited machine");

    private static readonly PowerRow[] Rows =
    [
        PowerRow.Parameters("baler", "small rectangular", MachineKind.SmallSquareBaler, 2, 0, 1, 35, D497, LoadsFindings.PowerMoreInStraw),
        PowerRow.Parameters("baler", "large rectangular", MachineKind.Other, 4, 0, 1.3, 35, D497),
        PowerRow.Parameters("baler", "large round, variable chamber", MachineKind.RoundBaler, 4, 0, 1.1, 50, D497),
        PowerRow.Parameters("baler", "large round, fixed chamber", MachineKind.RoundBaler, 2.5, 0, 1.8, 50, D497),
        PowerRow.Parameters("beet harvester", "", MachineKind.Other, 0, 4.2, 0, 50, D497, LoadsFindings.PowerDraftOnTop),
        PowerRow.Parameters("combine", "small grains", MachineKind.Other, 20, 0, 3.6, 50, D497, LoadsFindings.PowerFeedIsNotGrain,
            LoadsFindings.PowerLessWhenPtoDriven),
        PowerRow.Parameters("combine", "corn", MachineKind.Other, 35, 0, 1.6, 30, D497, LoadsFindings.PowerFeedIsGrain,
            LoadsFindings.PowerLessWhenPtoDriven),
        PowerRow.Parameters("cotton stripper", "", MachineKind.Other, 0, 1.9, 0, 20, D497),
        PowerRow.Parameters("feed mixer", "", MachineKind.FeedMixer, 0, 0, 2.3, 50, D497),
        PowerRow.Parameters("forage blower", "", MachineKind.Other, 0, 0, 0.9, 20, D497),
        PowerRow.Parameters("flail harvester", "direct cut", MachineKind.Other, 10, 0, 1.1, 40, D497),
        PowerRow.Parameters("forage harvester", "corn silage", MachineKind.Other, 6, 0, 3.3, 40, D497, LoadsFindings.PowerFeedIsDryMatter,
            LoadsFindings.PowerMoreForShortCut),
        PowerRow.Parameters("forage harvester", "wilted alfalfa", MachineKind.Other, 6, 0, 4, 40, D497, LoadsFindings.PowerFeedIsDryMatter),
        PowerRow.Parameters("forage harvester", "direct cut", MachineKind.Other, 6, 0, 5.7, 40, D497, LoadsFindings.PowerFeedIsDryMatter),
        PowerRow.Parameters("forage wagon", "", MachineKind.Other, 0, 0, 0.3, 40, D497),
        PowerRow.Parameters("grinder mixer", "", MachineKind.Other, 0, 0, 4, 50, D497),
        PowerRow.Parameters("manure spreader", "", MachineKind.Spreader, 0, 0, 0.2, 50, D497),
        PowerRow.Parameters("mower", "cutterbar", MachineKind.Other, 0, 1.2, 0, 25, D497),
        PowerRow.Parameters("mower", "disk", MachineKind.Other, 0, 5, 0, 30, D497),
        PowerRow.Parameters("mower", "flail", MachineKind.FlailMower, 0, 10, 0, 40, D497),
        PowerRow.Parameters("mower-conditioner", "cutterbar", MachineKind.Other, 0, 4.5, 0, 30, D497),
        PowerRow.Parameters("mower-conditioner", "disk", MachineKind.Other, 0, 8, 0, 30, D497),
        PowerRow.Parameters("potato harvester", "", MachineKind.Other, 0, 10.7, 0, 30, D497, LoadsFindings.PowerDraftOnTop),
        PowerRow.Parameters("rake", "side delivery", MachineKind.Other, 0, 0.4, 0, 50, D497),
        PowerRow.Parameters("rake", "rotary", MachineKind.Other, 0, 2, 0, 50, D497),
        PowerRow.Parameters("tub grinder", "alfalfa hay", MachineKind.Other, 5, 0, 3.8, 50, D497),
        PowerRow.Parameters("windrower/swather", "small grain", MachineKind.Other, 0, 1.3, 0, 40, D497),
        PowerRow.Range("rotary cutter (brush cutter)", "4 ft", MachineKind.RotaryCutter, PowerMeaning.TractorPtoAdvised, 11.9, 18.6, 1.219,
            false, WebGuide),
        PowerRow.Range("rotary cutter (brush cutter)", "5 ft", MachineKind.RotaryCutter, PowerMeaning.TractorPtoAdvised, 14.9, 22.4, 1.524,
            false, WebGuide),
        PowerRow.Range(
            "rotary cutter", "rule of thumb", MachineKind.RotaryCutter, PowerMeaning.TractorPtoAdvised, 3, 3.7, 0.305, true, ForumThreads),
        PowerRow.Range(
            "finish mower", "rule of thumb", MachineKind.Other, PowerMeaning.TractorPtoAdvised, 2.2, 3.7, 0.305, true, ForumThreads),
        PowerRow.Range(
            "rotary tiller", "41 in", MachineKind.RotaryTiller, PowerMeaning.TractorPtoAdvised, 11.2, 13.4, 1.041, false, TillerSheet),
        PowerRow.Range(
            "rotary tiller", "49 in", MachineKind.RotaryTiller, PowerMeaning.TractorPtoAdvised, 13.4, 14.9, 1.245, false, TillerSheet),
        PowerRow.Range(
            "rotary tiller", "57 in", MachineKind.RotaryTiller, PowerMeaning.TractorPtoAdvised, 25.4, 28.3, 1.448, false, TillerSheet),
        PowerRow.Range(
            "rotary tiller", "73 in", MachineKind.RotaryTiller, PowerMeaning.TractorPtoAdvised, 33.6, 41, 1.854, false, TillerSheet),
        PowerRow.Range(
            "disc mower", "1980s practice", MachineKind.Other, PowerMeaning.TractorInstalled, 20.6, 24.3, 1, true, SilageArticle),
        PowerRow.Range(
            "disc mower triple", "present practice", MachineKind.Other, PowerMeaning.TractorInstalled, 29.4, 33.1, 1, true, SilageArticle),
        PowerRow.Range("mower-conditioner, disc", "13 ft", MachineKind.Other, PowerMeaning.TractorInstalled, 75, 0, 3.962, false,
            MowerConditionerManual),
        PowerRow.Range("mower-conditioner, disc", "16 ft", MachineKind.Other, PowerMeaning.TractorInstalled, 93, 0, 4.877, false,
            MowerConditionerManual),
        PowerRow.Range(
            "round baler", "expandable chamber", MachineKind.RoundBaler, PowerMeaning.TractorPtoAdvised, 22.4, 89.5, 0, false, G1250),
        PowerRow.Range("round baler", "ground roll", MachineKind.RoundBaler, PowerMeaning.TractorPtoAdvised, 22.4, 0, 0, false, G1250),
        PowerRow.Range(
            "small square baler", "", MachineKind.SmallSquareBaler, PowerMeaning.TractorPtoAdvised, 26.1, 26.1, 0, false, WebGuide),
        PowerRow.Range(
            "disc mower-conditioner", "9 ft", MachineKind.Other, PowerMeaning.TractorInstalled, 37.3, 37.3, 2.743, false, ForagePaper),
    ];

    /// <summary>Every row, the parameters first.</summary>
    public static IReadOnlyList<PowerRow> All { get; } = Array.AsReadOnly(Rows);

    /// <summary>The rows of a kind of machine; empty when none is held.</summary>
    public static IReadOnlyList<PowerRow> For(MachineKind kind) => [.. Rows.Where(r => r.Kind == kind)];

    /// <summary>The row of a machine and variant, ignoring case.</summary>
    /// <exception cref="ArgumentException">None is held by those names; the message lists what is held.</exception>
    public static PowerRow Of(string machine, string variant) => TryOf(machine, variant, out PowerRow? row)
        ? row!
        : throw new ArgumentException(
            "No power is held for \"" + machine + "\", variant \"" + variant + "\"; held: " + string.Join("; ", All) + ".",
                nameof(machine));

    /// <summary>The row of a machine and variant, ignoring case; false when none is held.</summary>
    public static bool TryOf(string? machine, string? variant, [NotNullWhen(true)] out PowerRow? row)
    {
        row = Array.Find(Rows, r => Same(r.Machine, machine) && Same(r.Variant, variant));
        return row is not null;
    }

    private static bool Same(string held, string? asked) =>
        string.Equals(held, asked?.Trim() ?? string.Empty, StringComparison.OrdinalIgnoreCase);
}
