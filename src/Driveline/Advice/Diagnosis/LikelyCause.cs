using Driveline.Protection;

namespace Driveline.Advice;

/// <summary>A cause with its probability and the reasons for and against it.</summary>
public sealed class LikelyCause
{
    internal LikelyCause(Cause cause, Probability probability, bool isSeen, IReadOnlyList<Reason> because, IReadOnlyList<Reason> against)
    {
        Cause = cause;
        Probability = probability;
        IsSeen = isSeen;
        Because = because;
        Against = against;
    }

    /// <summary>The cause.</summary>
    public Cause Cause { get; }

    /// <summary>How likely it is among all causes that are listed, given what is known.</summary>
    public Probability Probability { get; }

    /// <summary>True when an answer is the fault itself, as the table says: to be mended even where another is likelier.</summary>
    public bool IsSeen { get; }

    /// <summary>What speaks for it, strongest first.</summary>
    public IReadOnlyList<Reason> Because { get; }

    /// <summary>What speaks against it, strongest first.</summary>
    public IReadOnlyList<Reason> Against { get; }

    /// <inheritdoc/>
    public override string ToString() => Cause + " " + Probability;
}
