using System.Diagnostics.CodeAnalysis;
using Driveline.Pto;

namespace Driveline.Cases.Members;

/// <summary>A steel by its name, held here or not: a part whose yield strength is stated may be of any.</summary>
internal sealed class StatedSteel
{
    private StatedSteel(SteelGrade? held) => Held = held;

    /// <summary>The steel; null when it is not held here.</summary>
    public SteelGrade? Held { get; }

    /// <summary>Never refuses a name.</summary>
    public static bool TryParse(string? text, [NotNullWhen(true)] out StatedSteel? steel, [NotNullWhen(false)] out string? problem)
    {
        steel = new StatedSteel(ShaftMaterials.TryOf(text, out SteelGrade? held) ? held : null);
        problem = null;
        return true;
    }
}
