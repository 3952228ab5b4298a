using System.Globalization;
using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Driveline.Cases.Members;
using Driveline.Quantities;

namespace Driveline.Cases;

/// <summary>
/// A case as it was read: one tractor, one implement and the driveline between them. Facts that are not known are left out.
/// </summary>
/// <remarks>
/// Immutable; equality compares the facts. Its questions are asked by the types beside it; its facts are changed by <see cref="With"/>,
/// which reads the changed text, so that a case is good however it came about.
/// </remarks>
public sealed class CaseFile : IEquatable<CaseFile>
{
    private static readonly JsonSerializerOptions Readable =
        new() { WriteIndented = true, Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    private readonly byte[] utf8;

    internal CaseFile(CaseObject facts, byte[] utf8)
    {
        Facts = facts;
        this.utf8 = utf8;
    }

    /// <summary>Nothing stated.</summary>
    public static CaseFile Empty { get; } = CaseReader.Read("{}").Case!;

    /// <summary>What the case is, in one line. Null when not known.</summary>
    public string? Title => Facts.Get(CaseFileMembers.Title);

    /// <summary>The day for which the case is stated; ages and intervals count to it. Null when not known.</summary>
    public DateTime? Date => Facts.Get(CaseFileMembers.Date);

    internal CaseObject Facts { get; }

    /// <summary>The case with other facts of the same table, already checked.</summary>
    internal CaseFile WithFacts(CaseObject facts) => new(facts, utf8);

    /// <summary>True when the case states a member of its own, such as "strike" or "driveline".</summary>
    /// <exception cref="ArgumentException">A case has no such member; the message lists those it has.</exception>
    public bool IsStated(string member) => Facts[CaseFileMembers.Table.Find(Guard.NotNull(member, nameof(member)))
        ?? throw new ArgumentException(
            "\"" + member + "\" is not a member of a case; it may have "
                + string.Join(", ", CaseFileMembers.Table.Members.Select(m => m.Name)) + ".", nameof(member))] is not null;

    /// <summary>The case with one value changed, added or taken away: its text is edited and read again.</summary>
    /// <param name="path">
    /// Where, as errors say it, e.g. "work.steadyPeak" or "driveline[1].shearBolt.grade". Objects on the way are made where they are
    /// missing.
    /// </param>
    /// <param name="json">The value as JSON text, e.g. "\"SAE 5\"" or "{ \"low\": 2 }"; null to take it away.</param>
    /// <returns>The case, or everything that is wrong with it.</returns>
    /// <exception cref="ArgumentException">
    /// The path is none, or leads through something that is no object; or the value is not JSON.
    /// </exception>
    public CaseReadResult With(string path, string? json)
    {
        string[] steps = Guard.NotBlank(path, "Path", nameof(path)).Replace("[", ".[").Split('.');
        JsonNode root = JsonNode.Parse(utf8)!;
        JsonNode? at = root;
        for (int k = 0; k < steps.Length - 1 && at is not null; k++)
        {
            at = Child(at, steps[k]) ?? (json is null ? null : Made(at, steps[k], path));
        }

        if (at is not null)
        {
            Put(at, steps[steps.Length - 1], json is null ? null : Parsed(json), path);
        }

        return CaseReader.Read(Encoding.UTF8.GetBytes(root.ToJsonString(Readable)));
    }

    /// <inheritdoc/>
    public bool Equals(CaseFile? other) => other is not null && Facts.Equals(other.Facts);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as CaseFile);

    /// <inheritdoc/>
    public override int GetHashCode() => Facts.GetHashCode();

    /// <summary>How many facts are stated.</summary>
    public override string ToString() => Facts.ToString();

    private static JsonNode? Child(JsonNode at, string step) => at switch
    {
        JsonArray list when Index(step) is { } index && index < list.Count => list[index],
        JsonObject owner when owner.TryGetPropertyValue(step, out JsonNode? value) => value,
        _ => null,
    };

    private static JsonObject Made(JsonNode at, string step, string path)
    {
        var made = new JsonObject();
        Put(at, step, made, path);
        return made;
    }

    private static void Put(JsonNode at, string step, JsonNode? value, string path)
    {
        if (at is JsonObject owner && Index(step) is null)
        {
            owner.Remove(step);
            if (value is not null)
            {
                owner[step] = value;
            }
        }
        else if (at is JsonArray list && Index(step) is { } index && index < list.Count)
        {
            list.RemoveAt(index);
            if (value is not null)
            {
                list.Insert(index, value);
            }
        }
        else
        {
            throw new ArgumentException(
                "The path \"" + path + "\" leads nowhere in this case: there is no \"" + step + "\".", nameof(path));
        }
    }

    private static JsonNode Parsed(string json)
    {
        try
        {
            return JsonNode.Parse(json)
                ?? throw new ArgumentException("A value must not be null; leave the member out when it is not known.", nameof(json));
        }
        catch (JsonException notJson)
        {
            throw new ArgumentException("A value must be JSON text, such as \"\\\"SAE 5\\\"\"; got: " + json, nameof(json), notJson);
        }
    }

    private static int? Index(string step) => step.Length > 2 && step[0] == '['
        && int.TryParse(step.Trim('[', ']'), NumberStyles.None, CultureInfo.InvariantCulture, out int index) ? index : null;
}
