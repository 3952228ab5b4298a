using Driveline.Quantities;
using UnitsNet;

namespace Driveline.Torsion;

/// <summary>An immutable torsional model: rotors, shafts, couplings, loads, obstacles and a drive.</summary>
/// <remarks>Built by <see cref="TorsionModelBuilder"/>; safe for many threads. Start a run with <see cref="TurningAt"/>.</remarks>
public sealed class TorsionModel
{
    private readonly Dictionary<string, int> rotors;
    private readonly Dictionary<string, int> links;
    private readonly RotorPart[] rotorParts;
    private readonly LinkPart[] linkParts;
    private readonly LoadPart[] loadParts;
    private IReadOnlyList<string>? rotorNames;
    private IReadOnlyList<string>? elementNames;

    private TorsionModel(TorsionModelBuilder parts, Mechanism mechanism)
    {
        Mechanism = mechanism;
        rotorParts = parts.Rotors.ToArray();
        linkParts = parts.Links.ToArray();
        loadParts = parts.Loads.ToArray();
        rotors = Index(rotorParts.Select(r => r.Name));
        links = Index(linkParts.Select(l => l.Name));
        DriveName = parts.DriveName;
    }

    /// <summary>Names of the rotors, in the order they were added.</summary>
    public IReadOnlyList<string> Rotors => rotorNames ??= Array.AsReadOnly(Array.ConvertAll(rotorParts, r => r.Name));

    /// <summary>
    /// Names of the elements that carry torque between rotors or to the ground: shafts, couplings, friction loads, obstacles.
    /// </summary>
    public IReadOnlyList<string> Elements => elementNames ??= Array.AsReadOnly(Array.ConvertAll(linkParts, l => l.Name));

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

    internal static TorsionModel From(TorsionModelBuilder parts) => new(parts, MechanismOf.Parts(parts));

    internal int RotorIndex(string rotor) => rotors.TryGetValue(Guard.NotNull(rotor, nameof(rotor)), out int i)
        ? i
        : throw new ArgumentException("There is no rotor \"" + rotor + "\"; there are: " + string.Join(", ", Rotors) + ".", nameof(rotor));

    internal int LinkIndex(string element) => links.TryGetValue(Guard.NotNull(element, nameof(element)), out int l)
        ? l
        : throw new ArgumentException(
            "There is no element \"" + element + "\"; there are: " + string.Join(", ", Elements) + ".", nameof(element));

    internal bool TryLinkIndex(string element, out int link) => links.TryGetValue(element, out link);

    internal string LinkName(int link) => linkParts[link].Name;

    internal double HeldSpeed(int rotor) => rotorParts[rotor].HeldSpeed;

    private static Dictionary<string, int> Index(IEnumerable<string> names)
    {
        var index = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (string name in names)
        {
            index.Add(name, index.Count);
        }

        return index;
    }
}
