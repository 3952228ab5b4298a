using Driveline.Findings;

namespace Driveline.Advice;

/// <summary>One step of a card or list: a stable code for its text, and the cautions that stand beside it.</summary>
public sealed class CardStep
{
    internal CardStep(string code, params Caution[] cautions)
        : this(code, false, cautions)
    {
    }

    internal CardStep(string code, bool turnsPto, params Caution[] cautions)
    {
        Code = code;
        TurnsPto = turnsPto;
        Cautions = Array.AsReadOnly(cautions);
    }

    /// <summary>Stable code, e.g. "boltChange.getStubOut".</summary>
    public string Code { get; }

    /// <summary>True when the PTO turns in this step: never before guards are on, people away and the driver in the seat.</summary>
    public bool TurnsPto { get; }

    /// <summary>The cautions that stand beside the step.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <inheritdoc/>
    public override string ToString() => Code;
}
