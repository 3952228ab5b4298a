using Driveline.Chains;
using Driveline.Protection;
using Driveline.Quantities;

namespace Driveline.Cases.Results;

/// <summary>A check with the verdict that it belongs to.</summary>
internal readonly struct InVerdict<TCheck>
{
    private readonly ProtectionVerdict verdict;

    public InVerdict(ProtectionVerdict verdict, TCheck check)
    {
        this.verdict = verdict;
        Check = check;
    }

    public TCheck Check { get; }

    /// <summary>A torque at an element, referred to the PTO; null when it is not known.</summary>
    public TorqueBand? AtPto(Element element, TorqueBand? torque) =>
        torque is null ? null : verdict.Question.Chain.ReferToPto(element, torque);
}
