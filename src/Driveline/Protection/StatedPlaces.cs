using Driveline.Chains;
using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Protection;

/// <summary>Where the facts of a question are stated, as paths that its findings name as their cause; empty when nobody told.</summary>
internal sealed class StatedPlaces
{
    private static readonly string[] Naming = ["name", "device", "inertia", "other"];

    private readonly string?[] byNode;
    private readonly IReadOnlyDictionary<SeenDefect, string[]> defects;
    private readonly Dictionary<string, string[]> byCode;

    private StatedPlaces(string?[] byNode, IReadOnlyDictionary<SeenDefect, string[]> defects, Dictionary<string, string[]> byCode)
    {
        this.byNode = byNode;
        this.defects = defects;
        this.byCode = byCode;
    }

    public static StatedPlaces None { get; } = new([], new Dictionary<SeenDefect, string[]>(), []);

    /// <summary>The places of a question.</summary>
    /// <param name="byNode">Of each position of the chain, such as "driveline[2]"; null where it has none.</param>
    /// <param name="defects">Of the defects that somebody has seen.</param>
    /// <param name="byCode">Of what no element carries, by the code of a finding that rests on it.</param>
    public static StatedPlaces Of(
        string?[] byNode, IReadOnlyDictionary<SeenDefect, string[]> defects, Dictionary<string, string[]> byCode) =>
        new(Guard.NotNull(byNode, nameof(byNode)), Guard.NotNull(defects, nameof(defects)), Guard.NotNull(byCode, nameof(byCode)));

    /// <summary>The places of a defect; those of its device when nobody told it by itself.</summary>
    public string[] OfDefect(SeenDefect defect, DrivelineChain chain, ProtectiveDevice? device) =>
        defects.TryGetValue(defect, out string[]? told) ? told
            : device is not null ? [.. OfCode(StandingRules.CodeOf(defect)), .. OfNode(chain, chain.IndexOf(device))]
            : [];

    /// <summary>A finding with the places of the elements it names and of what else it rests on, beside those its maker named.</summary>
    public Finding Name(DrivelineChain chain, Finding finding)
    {
        if (byNode.Length != chain.Nodes.Length)
        {
            return finding;
        }

        string?[] names = [.. Naming.Select(n => finding.Parameter(n)?.Text)];
        IEnumerable<string> elements = Enumerable.Range(0, byNode.Length)
            .Where(k => chain.Nodes[k].Element is { } element && names.Contains(element.Name)).SelectMany(k => OfNode(chain, k));
        string[] places = [.. finding.Because.Concat(elements).Concat(OfCode(finding.Code)).Distinct()];
        return places.Length > finding.Because.Count ? finding.WithBecause(places) : finding;
    }

    /// <summary>What a device says of itself, with its place, unless it named one.</summary>
    public Finding NameDevice(DrivelineChain chain, int node, Finding finding)
    {
        string[] own = OfNode(chain, node);
        return finding.Because.Count > 0 || own.Length == 0 ? finding : finding.WithBecause([.. own, .. OfCode(finding.Code)]);
    }

    private string[] OfNode(DrivelineChain chain, int node) =>
        byNode.Length == chain.Nodes.Length && byNode[node] is { } place ? [place] : [];

    private string[] OfCode(string code) => byCode.TryGetValue(code, out string[]? places) ? places : [];
}
