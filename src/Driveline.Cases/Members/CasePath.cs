using System.Globalization;

namespace Driveline.Cases.Members;

/// <summary>A step on the way to a place in the file; the whole way is put into words only when somebody asks for it.</summary>
internal sealed class CasePath
{
    private readonly CasePath? owner;
    private readonly string? name;
    private readonly int index;
    private string? words;

    public CasePath(CasePath? owner, string? name, int index)
    {
        this.owner = owner;
        this.name = name;
        this.index = index;
    }

    /// <summary>The file as a whole.</summary>
    public static CasePath Root { get; } = new(null, string.Empty, 0);

    /// <summary>E.g. "driveline[1].shearBolt"; empty for the file as a whole.</summary>
    public override string ToString() => words ??= owner is null ? string.Empty : owner + Step(owner.ToString().Length == 0);

    private string Step(bool isFirst)
    {
        if (name is null)
        {
            return "[" + index.ToString(CultureInfo.InvariantCulture) + "]";
        }

        return IsPlain(name) ? (isFirst ? name : "." + name) : "[\"" + CaseWalk.Shown(name) + "\"]";
    }

    private static bool IsPlain(string name)
    {
        foreach (char c in name)
        {
            if (c is not ((>= 'a' and <= 'z') or (>= 'A' and <= 'Z') or (>= '0' and <= '9') or '_' or '$'))
            {
                return false;
            }
        }

        return name.Length is > 0 and <= 60;
    }
}
