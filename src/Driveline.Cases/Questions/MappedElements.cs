using System.Runtime.CompilerServices;
using Driveline.Cases.Members;
using Driveline.Chains;

namespace Driveline.Cases.Questions;

/// <summary>Elements of a driveline that were mapped once, by the very facts they were mapped from.</summary>
/// <remarks>
/// An element depends on its own facts, the date of the case and the PTO speed alone; so long as neither changes, cases that share the
/// facts share the element. Immutable, and elements are; safe for several threads.
/// </remarks>
internal sealed class MappedElements
{
    private readonly Dictionary<CaseObject, Element> known = new(new SameFacts());

    /// <summary>Maps every element of a good case, those in branches too.</summary>
    public MappedElements(CaseFile file)
    {
        foreach (CaseObject facts in CaseElements.All(file.Facts.Get(CaseFileMembers.Driveline)))
        {
            if (CaseChain.Mapped(file, facts) is { } element)
            {
                known.Add(facts, element);
            }
        }
    }

    /// <summary>The element of facts; null when they are others, however equal.</summary>
    public Element? Of(CaseObject facts) => known.TryGetValue(facts, out Element? element) ? element : null;

    private sealed class SameFacts : IEqualityComparer<CaseObject>
    {
        public bool Equals(CaseObject? first, CaseObject? second) => ReferenceEquals(first, second);

        public int GetHashCode(CaseObject facts) => RuntimeHelpers.GetHashCode(facts);
    }
}
