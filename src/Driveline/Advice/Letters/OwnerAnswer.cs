using Driveline.Findings;

namespace Driveline.Advice;

/// <summary>The short answer to something the owner asked.</summary>
public sealed class OwnerAnswer
{
    internal OwnerAnswer(OwnerAsk ask, Finding answer)
    {
        Ask = ask;
        Answer = answer;
    }

    /// <summary>What was asked.</summary>
    public OwnerAsk Ask { get; }

    /// <summary>The answer.</summary>
    public Finding Answer { get; }
}
