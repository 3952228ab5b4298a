using Driveline.Quantities;

namespace Driveline.Torsion;

/// <content>The names of the parts. A few are looked through, many are kept in tables.</content>
public sealed partial class TorsionModelBuilder
{
    private const int Few = 24;

    private HashSet<string>? names;
    private Dictionary<string, int>? rotors;

    // Takes the name of a part that was added; many are kept in tables from then on.
    private TorsionModelBuilder Named(string name)
    {
        if (names is not null)
        {
            names.Add(name);
        }
        else if (rotorParts.Count + links.Count + loads.Count > Few)
        {
            names = new HashSet<string>(AllNames(), StringComparer.Ordinal);
            rotors = TorsionModel.Index(rotorParts.ConvertAll(r => r.Name));
        }

        return this;
    }

    private IEnumerable<string> AllNames() => rotorParts.Select(r => r.Name).Concat(links.Select(l => l.Name))
        .Concat(loads.Select(l => l.Name)).Concat(driveName is null ? [] : [driveName]);

    private string Unused(string name)
    {
        Guard.NotBlank(name, "Name of a part", nameof(name));
        return names?.Contains(name) ?? IsAmongFew(name)
            ? throw new ArgumentException("Each part must have a name of its own; \"" + name + "\" is used already.", nameof(name))
            : name;
    }

    private bool IsAmongFew(string name)
    {
        bool isUsed = name == driveName || RotorIndex(name) >= 0;
        for (int l = 0; l < links.Count && !isUsed; l++)
        {
            isUsed = links[l].Name == name;
        }

        for (int l = 0; l < loads.Count && !isUsed; l++)
        {
            isUsed = loads[l].Name == name;
        }

        return isUsed;
    }

    private int RotorIndex(string name)
    {
        if (rotors is not null)
        {
            return rotors.TryGetValue(name, out int index) ? index : -1;
        }

        for (int i = 0; i < rotorParts.Count; i++)
        {
            if (rotorParts[i].Name == name)
            {
                return i;
            }
        }

        return -1;
    }

    private int Rotor(string name, string parameter) => RotorIndex(Guard.NotNull(name, parameter)) is >= 0 and int index
        ? index
        : throw new ArgumentException(
            "There is no rotor \"" + name + "\" yet; there are: " + string.Join(", ", rotorParts.Select(r => r.Name)) + ".", parameter);
}
