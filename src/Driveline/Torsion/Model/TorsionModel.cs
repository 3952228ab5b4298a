using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Torsion;

/// <summary>An immutable torsional model: rotors, shafts, couplings, loads, obstacles and a drive.</summary>
/// <remarks>Built by <see cref="TorsionModelBuilder"/>; safe for many threads. Start a run with <see cref="TurningAt"/>.</remarks>
public sealed class TorsionModel
{
    // A few names are looked through faster than a table of them is made.
    private const int Few = 16;

    private readonly Dictionary<string, int>? rotors;
    private readonly Dictionary<string, int>? links;
    private readonly List<RotorPart> rotorParts;
    private readonly List<LinkPart> linkParts;
    private readonly LoadPart[] loadParts;
    private IReadOnlyList<string>? rotorNames;
    private IReadOnlyList<string>? elementNames;

    private TorsionModel(TorsionModelBuilder parts, List<RotorPart> rotorParts, List<LinkPart> linkParts)
    {
        Mechanism = MechanismOf.Parts(parts);
        this.rotorParts = rotorParts;
        this.linkParts = linkParts;
        loadParts = [.. parts.Loads];
        rotors = rotorParts.Count > Few ? Index(rotorParts.Select(r => r.Name)) : null;
        links = linkParts.Count > Few ? Index(linkParts.Select(l => l.Name)) : null;
        DriveName = parts.DriveName;
    }

    /// <summary>Names of the rotors, in the order they were added.</summary>
    public IReadOnlyList<string> Rotors => rotorNames ??= rotorParts.ConvertAll(r => r.Name).AsReadOnly();

    /// <summary>
    /// Names of the elements that carry torque between rotors or to the ground: shafts, couplings, friction loads, obstacles.
    /// </summary>
    public IReadOnlyList<string> Elements => elementNames ??= linkParts.ConvertAll(l => l.Name).AsReadOnly();

    internal Mechanism Mechanism { get; }

    internal string? DriveName { get; }

    internal IReadOnlyList<LoadPart> LoadParts => loadParts;

    /// <summary>A start with all rotors turning together, without twist, the first one at that speed.</summary>
    /// <remarks>Rotors behind a gear turn by its ratio; held rotors turn at their own speed.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">The speed is not finite.</exception>
    public TorsionStart TurningAt(RotationalSpeed firstRotor)
    {
        double speed = Si.RadiansPerSecond(firstRotor);
        return Guard.IsFinite(speed)
            ? TorsionStart.TurningTogether(this, speed)
            : throw Guard.OutOfRange("Speed at the start", "a finite value", speed, "rad/s", nameof(firstRotor));
    }

    /// <summary>A start with all rotors that are free to move at rest, without twist.</summary>
    public TorsionStart AtRest() => TorsionStart.TurningTogether(this, 0);

    /// <summary>The undamped natural modes of the model while its couplings hold, without its obstacles, lowest frequency first.</summary>
    /// <remarks>
    /// One for each rotor, or group of rigidly joined rotors, that is free to move. With W = M^(−1/2)·Bᵀ·K^(1/2), M inertias, K
    /// stiffnesses, B which shaft joins which rotors, the frequencies are the singular values of W: real, and each good to about 1e-15 of
    /// the highest. Held rotors do not move; a joint counts as straight; backlash as taken up.
    /// </remarks>
    /// <example>0.8 and 0.2 kg·m² on 2000 N·m/rad: 0 and 111.8034 rad/s (17.794 Hz).</example>
    public IReadOnlyList<NaturalMode> NaturalModes() => Modes.Of(this);

    /// <summary>Speed of a rotor over the first rotor's when nothing slips.</summary>
    /// <exception cref="ArgumentException">There is no such rotor.</exception>
    public double RatioOf(string rotor) => Mechanism.RotorRatio[RotorIndex(rotor)];

    internal static TorsionModel From(TorsionModelBuilder parts, List<RotorPart> rotors, List<LinkPart> links) => new(parts, rotors, links);

    internal int RotorIndex(string rotor)
    {
        Guard.NotNull(rotor, nameof(rotor));
        if (rotors is not null && rotors.TryGetValue(rotor, out int known))
        {
            return known;
        }

        for (int i = 0; i < rotorParts.Count && rotors is null; i++)
        {
            if (rotorParts[i].Name == rotor)
            {
                return i;
            }
        }

        throw new ArgumentException("There is no rotor \"" + rotor + "\"; there are: " + string.Join(", ", Rotors) + ".", nameof(rotor));
    }

    internal int LinkIndex(string element) => TryLinkIndex(Guard.NotNull(element, nameof(element)), out int l)
        ? l
        : throw new ArgumentException(
            "There is no element \"" + element + "\"; there are: " + string.Join(", ", Elements) + ".", nameof(element));

    internal bool TryLinkIndex(string element, out int link)
    {
        if (links is not null)
        {
            return links.TryGetValue(element, out link);
        }

        for (link = 0; link < linkParts.Count; link++)
        {
            if (linkParts[link].Name == element)
            {
                return true;
            }
        }

        return false;
    }

    internal string LinkName(int link) => linkParts[link].Name;

    internal double HeldSpeed(int rotor) => rotorParts[rotor].HeldSpeed;

    internal static Dictionary<string, int> Index(IEnumerable<string> names)
    {
        var index = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (string name in names)
        {
            index.Add(name, index.Count);
        }

        return index;
    }
}
