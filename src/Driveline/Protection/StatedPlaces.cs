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
    private readonly Func<string, string[]> byCode;

    private StatedPlaces(string?[] byNode, IReadOnlyDictionary<SeenDefect, string[]> defects, Func<string, string[]> byCode)
    {
        this.byNode = byNode;
        this.defects = defects;
        this.byCode = byCode;
    }

    public static StatedPlaces None { get; } = new([], new Dictionary<SeenDefect, string[]>(), _ => []);

    /// <summary>The places of a question.</summary>
    /// <param name="byNode">Of each position of the chain, such as "driveline[2]"; null where it has none.</param>
    /// <param name="defects">Of the defects that somebody has seen.</param>
    /// <param name="byCode">Of what no element carries, by the code of a finding that rests on it.</param>
    public static StatedPlaces Of(
        string?[] byNode, IReadOnlyDictionary<SeenDefect, string[]> defects, Func<string, string[]> byCode) =>
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

        List<string>? more = null;
        for (int k = 0; k < byNode.Length && finding.AllParameters.Length > 0; k++)
        {
            if (byNode[k] is { } place && chain.Nodes[k].Element is { } element && Names(finding, element.Name))
            {
                AddTo(ref more, finding, place);
            }
        }

        foreach (string place in byCode(finding.Code))
        {
            AddTo(ref more, finding, place);
        }

        return more is null ? finding : finding.WithBecause([.. finding.Because, .. more]);
    }

    /// <summary>What a device says of itself, with its place, unless it named one.</summary>
    public Finding NameDevice(DrivelineChain chain, int node, Finding finding)
    {
        string[] own = OfNode(chain, node);
        return finding.Because.Count > 0 || own.Length == 0 ? finding : finding.WithBecause([.. own, .. OfCode(finding.Code)]);
    }

    private string[] OfNode(DrivelineChain chain, int node) =>
        byNode.Length == chain.Nodes.Length && byNode[node] is { } place ? [place] : [];

    private string[] OfCode(string code) => byCode(code);

    private static bool Names(Finding finding, string name)
    {
        foreach (FindingParameter parameter in finding.AllParameters)
        {
            if (parameter.Text == name && Array.IndexOf(Naming, parameter.Name) >= 0)
            {
                return true;
            }
        }

        return false;
    }

    private static void AddTo(ref List<string>? more, Finding finding, string place)
    {
        if (!finding.Because.Contains(place) && more?.Contains(place) != true)
        {
            (more ??= []).Add(place);
        }
    }
}
