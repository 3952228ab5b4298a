using Driveline.Findings;
using Driveline.Provenance;

namespace Driveline.Clutches;

/// <summary>
/// One step of a service procedure, for a program to show on its own: its code, its cautions, its figures and their source.
/// </summary>
/// <remarks>
/// Words are rendered from <see cref="Words"/>. Figures named low and high are the range of printed practices; the machine's manual
/// decides.
/// </remarks>
public sealed class ServiceStep
{
    internal ServiceStep(Finding words, Basis source, Caution[] cautions, bool turnsPto)
    {
        Words = words;
        Source = source;
        Cautions = Array.AsReadOnly(cautions);
        TurnsPto = turnsPto;
    }

    /// <summary>Stable code of the step.</summary>
    public string Code => Words.Code;

    /// <summary>The cautions to show before the step, in order.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <summary>The figures of the step.</summary>
    public IReadOnlyList<FindingParameter> Parameters => Words.Parameters;

    /// <summary>Code and figures together, as the texts render them.</summary>
    public Finding Words { get; }

    /// <summary>True when the PTO turns in this step: never before guards are on, people away and the driver in the seat.</summary>
    public bool TurnsPto { get; }

    /// <summary>Where the practice comes from.</summary>
    public Basis Source { get; }

    /// <inheritdoc/>
    public override string ToString() => Code;
}
