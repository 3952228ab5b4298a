using Driveline.Findings;
using Driveline.Quantities;

namespace Driveline.Chains;

/// <summary>One element of a driveline, in order from the tractor. Torques are meant at the element's own input.</summary>
public abstract class Element
{
    private protected Element(string name) => Name = Guard.NotBlank(name, "Name of an element", nameof(name));

    /// <summary>Name by which people know it, e.g. "drive tube".</summary>
    public string Name { get; }

    /// <summary>Where its facts stand; null when nobody has told.</summary>
    public virtual FactPlace? Place => null;

    /// <inheritdoc/>
    public override string ToString() => Name;
}
