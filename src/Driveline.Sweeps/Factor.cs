using Driveline.Quantities;
using Driveline.Sweeps.Factors;

namespace Driveline.Sweeps;

/// <summary>
/// What varies in a study: a path into the case, or a name of its own, and how it is distributed. Values in SI. Immutable.
/// </summary>
public sealed class Factor
{
    private Factor(string name, Distribution distribution, IReadOnlyList<string>? words, IReadOnlyList<object>? choices)
    {
        Name = name;
        Distribution = distribution;
        Words = words;
        Choices = choices;
    }

    /// <summary>The path, e.g. "driveline[1].shearBolt.shaftDiameter", or a name; the name of its column.</summary>
    public string Name { get; }

    /// <summary>Its values when they are words; null when they are numbers.</summary>
    public IReadOnlyList<string>? Words { get; }

    internal Distribution Distribution { get; }

    /// <summary>Its words as the case takes them; null when a case has to read them.</summary>
    internal IReadOnlyList<object>? Choices { get; }

    /// <summary>Every value from low to high equally likely.</summary>
    /// <exception cref="ArgumentException">No name, or an empty range.</exception>
    public static Factor Uniform(string name, double low, double high) =>
        Of(name, new UniformDistribution(Ends(low, high, nameof(low)), high));

    /// <summary>Normal, by mean and standard deviation; it has no ends, so rows that leave the permitted range fail.</summary>
    /// <exception cref="ArgumentException">No name, or the deviation is not above 0.</exception>
    public static Factor Normal(string name, double mean, double standardDeviation) =>
        Of(name, new NormalDistribution(
            mean, Guard.Positive(standardDeviation, "Standard deviation", string.Empty, nameof(standardDeviation))));

    /// <summary>Lognormal, by mean and standard deviation of the value itself.</summary>
    /// <exception cref="ArgumentException">No name, or mean or deviation is not above 0.</exception>
    public static Factor Lognormal(string name, double mean, double standardDeviation) => Of(name, new LognormalDistribution(
        Guard.Positive(mean, "Mean", string.Empty, nameof(mean)),
        Guard.Positive(standardDeviation, "Standard deviation", string.Empty, nameof(standardDeviation))));

    /// <summary>Triangular, by low, most likely and high.</summary>
    /// <exception cref="ArgumentException">No name, an empty range, or the most likely value outside it.</exception>
    public static Factor Triangular(string name, double low, double mode, double high) =>
        Of(name, new TriangularDistribution(Ends(low, high, nameof(low)), Within(mode, low, high, nameof(mode)), high));

    /// <summary>PERT: smooth, with four times the weight on the most likely value.</summary>
    /// <exception cref="ArgumentException">No name, an empty range, or the most likely value outside it.</exception>
    public static Factor Pert(string name, double low, double mode, double high) =>
        Of(name, new PertDistribution(Ends(low, high, nameof(low)), Within(mode, low, high, nameof(mode)), high));

    /// <summary>One of several numbers, each as likely.</summary>
    /// <exception cref="ArgumentException">No name, or no value.</exception>
    public static Factor Values(string name, params double[] values) => Guard.NotNull(values, nameof(values)).Length > 0
        ? Of(name, new ListDistribution(values))
        : throw new ArgumentException("A list of values must have at least one; got none.", nameof(values));

    /// <summary>
    /// One of several words, each as likely, such as the grades of a bolt; a delegate gets its place in the list, from 0.
    /// </summary>
    /// <exception cref="ArgumentException">No name, or no word.</exception>
    public static Factor Choice(string name, params string[] words) => Guard.NotNull(words, nameof(words)).Length > 0
        ? OfChoices(name, [.. words], null)
        : throw new ArgumentException("A list of values must have at least one; got none.", nameof(words));

    internal static Factor OfChoices(string name, IReadOnlyList<string> words, IReadOnlyList<object>? choices) => new(
        Guard.NotBlank(name, "Name of a factor", nameof(name)),
        new ListDistribution([.. Enumerable.Range(0, words.Count).Select(k => (double)k)]), words, choices);

    internal static Factor Of(string name, Distribution distribution) =>
        new(Guard.NotBlank(name, "Name of a factor", nameof(name)), distribution, null, null);

    /// <inheritdoc/>
    public override string ToString() => Name + " " + Distribution.Mark;

    private static double Ends(double low, double high, string parameter) => low < high && Guard.IsFinite(low) && Guard.IsFinite(high) ? low
        : throw new ArgumentException(
            FormattableString.Invariant($"The range is empty: low must be below high; got {low:R} to {high:R}."), parameter);

    private static double Within(double mode, double low, double high, string parameter) => mode >= low && mode <= high ? mode
        : throw new ArgumentException(FormattableString.Invariant(
            $"The most likely value must lie within the range {low:R} to {high:R}; got {mode:R}."), parameter);
}
