using Driveline.Cases.Members;

namespace Driveline.Cases;

/// <summary>A part of a case: stated facts; what is not stated is null, or NotKnown for a choice.</summary>
/// <remarks>
/// Immutable; equality compares the facts. Each With method returns a copy, takes null for "not known", and throws
/// <see cref="ArgumentOutOfRangeException"/> naming the permitted range when the value lies outside it.
/// </remarks>
public abstract class CaseFacts : IEquatable<CaseFacts>
{
    private readonly object?[] values;

    private protected CaseFacts(object?[] values) => this.values = values;

    /// <summary>True when nothing is stated.</summary>
    public bool IsEmpty => Array.TrueForAll(values, v => v is null);

    internal abstract MemberTable Table { get; }

    internal object? this[Member member] => values[member.Slot];

    /// <inheritdoc/>
    public bool Equals(CaseFacts? other)
    {
        if (other is null || other.GetType() != GetType())
        {
            return false;
        }

        for (int i = 0; i < values.Length; i++)
        {
            if (!Equals(values[i], other.values[i]))
            {
                return false;
            }
        }

        return true;
    }

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as CaseFacts);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        int hash = 17;
        foreach (object? value in values)
        {
            hash = unchecked((hash * 31) + (value?.GetHashCode() ?? 0));
        }

        return hash;
    }

    /// <summary>The kind of facts and how many are stated.</summary>
    public override string ToString() =>
        FormattableString.Invariant($"{Table.Name}: {values.Count(v => v is not null)} facts");

    private protected T? Reference<T>(Member member)
        where T : class => (T?)values[member.Slot];

    private protected T? Value<T>(Member member)
        where T : struct => (T?)values[member.Slot];

    private protected double? Si(Member member) => (double?)values[member.Slot];

    /// <summary>A copy of the values with one replaced, after its member has checked it.</summary>
    private protected object?[] Set(Member member, object? value)
    {
        if (value is not null)
        {
            member.Check(value);
        }

        object?[] copy = (object?[])values.Clone();
        copy[member.Slot] = value;
        return copy;
    }
}
