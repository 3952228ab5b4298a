using Driveline.Findings;

namespace Driveline.Advice;

/// <summary>Why a cause is more or less likely: a fact or a number of the model, and how many times as likely it makes the cause.</summary>
public sealed class Reason
{
    internal Reason(Finding finding, double factor)
    {
        Finding = finding;
        Factor = factor;
    }

    /// <summary>The fact or number; its code has a text.</summary>
    public Finding Finding { get; }

    /// <summary>P(fact | this cause) over P(fact | any other cause): above 1 speaks for it, below 1 against it.</summary>
    public double Factor { get; }

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{Finding.Code} x {Factor:G3}");
}
