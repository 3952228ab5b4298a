using Driveline.Sweeps.Factors;

namespace Driveline.Sweeps.Reading;

/// <summary>Values of a factor as the case takes them: numbers in SI, or words.</summary>
internal sealed record ValuesRead(IReadOnlyList<object> Facts, IReadOnlyList<string> Words)
{
    public Factor Factor(string name) => Facts.All(f => f is double or int)
        ? Sweeps.Factor.Of(name, new ListDistribution([.. Facts.Select(f => f is int whole ? whole : (double)f)]))
        : Sweeps.Factor.OfChoices(name, Words, Facts);
}
