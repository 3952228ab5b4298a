using Driveline.Quantities;

namespace Driveline.Findings;

/// <summary>Something a caller must notice: a stable code with typed parameters. Its words are rendered on demand.</summary>
/// <remarks>Immutable. Codes are declared as constants beside the concept that reports them and never change their meaning.</remarks>
public sealed class Finding
{
    private readonly FindingParameter[] parameters;

    private Finding(string code, Severity severity, FindingParameter[] parameters)
    {
        Code = code;
        Severity = severity;
        this.parameters = parameters;
    }

    /// <summary>Stable code, "area.name" in lower camel case, e.g. "bolt.hubFreedomNotKnown".</summary>
    public string Code { get; }

    /// <summary>How much it matters.</summary>
    public Severity Severity { get; }

    /// <summary>Its typed values, in the order they were added.</summary>
    public IReadOnlyList<FindingParameter> Parameters => parameters;

    /// <summary>A finding without parameters yet.</summary>
    public static Finding Of(string code, Severity severity) =>
        new(Guard.NotBlank(code, "Code", nameof(code)), severity, []);

    /// <summary>The same finding with a text parameter.</summary>
    public Finding With(string name, string text) =>
        Append(new FindingParameter(name, QuantityKind.Text, double.NaN, Guard.NotNull(text, nameof(text))));

    /// <summary>The same finding with a numeric parameter in SI; +∞ means unbounded.</summary>
    /// <exception cref="ArgumentException">The value is NaN, or the kind is a text.</exception>
    public Finding With(string name, QuantityKind kind, double si)
    {
        if (double.IsNaN(si) || kind == QuantityKind.Text)
        {
            throw new ArgumentException("A numeric parameter needs a number and a numeric kind; got " + name + ".", nameof(si));
        }

        return Append(new FindingParameter(name, kind, si, null));
    }

    /// <summary>The parameter of that name; null when there is none.</summary>
    public FindingParameter? Parameter(string name) => Array.Find(parameters, p => p.Name == name);

    /// <inheritdoc/>
    public override string ToString() => Severity + " " + Code;

    private Finding Append(FindingParameter parameter)
    {
        var more = new FindingParameter[parameters.Length + 1];
        parameters.CopyTo(more, 0);
        more[parameters.Length] = parameter;
        return new Finding(Code, Severity, more);
    }
}
