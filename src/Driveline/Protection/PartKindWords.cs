using Driveline.Chains;

namespace Driveline.Protection;

/// <summary>Stable codes of part kinds, for texts and files.</summary>
internal static class PartKindWords
{
    public static string CodeOf(PartKind kind)
    {
        string name = kind.ToString();
        return char.ToLowerInvariant(name[0]) + name.Substring(1);
    }
}
