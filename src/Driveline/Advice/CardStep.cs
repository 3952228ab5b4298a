namespace Driveline.Advice;

/// <summary>One step of a card or list: a stable code for its text, and the cautions that stand beside it.</summary>
public sealed class CardStep
{
    internal CardStep(string code, params Caution[] cautions)
    {
        Code = code;
        Cautions = cautions;
    }

    /// <summary>Stable code, e.g. "boltChange.getStubOut".</summary>
    public string Code { get; }

    /// <summary>The cautions that stand beside the step.</summary>
    public IReadOnlyList<Caution> Cautions { get; }

    /// <inheritdoc/>
    public override string ToString() => Code;
}
