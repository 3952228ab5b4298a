using UnitsNet;

namespace Driveline.Torsion;

/// <summary>One natural mode of a torsional model.</summary>
public sealed class NaturalMode
{
    private readonly TorsionModel model;
    private readonly double[] shape;

    internal NaturalMode(TorsionModel model, double radPerS, double[] shape)
    {
        this.model = model;
        RadPerS = radPerS;
        this.shape = shape;
    }

    /// <summary>Angular frequency ω, rad/s; 0 for the mode in which all turns as one.</summary>
    public double RadPerS { get; }

    /// <summary>Frequency f = ω/2π.</summary>
    public Frequency Frequency => Frequency.FromHertz(RadPerS / (2 * Math.PI));

    /// <summary>
    /// Amplitude of a rotor, referred to the first rotor's speed; the largest of all is 1, the first that moves is positive.
    /// </summary>
    /// <exception cref="ArgumentException">There is no such rotor.</exception>
    public double Amplitude(string rotor) => shape[model.RotorIndex(rotor)];

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{RadPerS / (2 * Math.PI):G6} Hz");
}
