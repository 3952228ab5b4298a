using System.Globalization;

namespace Driveline.Fleet;

/// <summary>
/// Which alarm it is: the driveline, the number of the batch that brought it, and its place in that batch. The same for ever, so that an
/// alarm told twice is known.
/// </summary>
/// <remarks>The alarms of one driveline rise in this order and are told in it.</remarks>
public readonly struct AlarmId : IEquatable<AlarmId>, IComparable<AlarmId>
{
    /// <summary>An id.</summary>
    public AlarmId(string driveline, long sequence, int index)
    {
        Driveline = driveline;
        Sequence = sequence;
        Index = index;
    }

    /// <summary>The driveline.</summary>
    public string Driveline { get; }

    /// <summary>The number of its batch.</summary>
    public long Sequence { get; }

    /// <summary>Its place among what the batch brought, from 0.</summary>
    public int Index { get; }

    /// <summary>True when they are the same.</summary>
    public static bool operator ==(AlarmId left, AlarmId right) => left.Equals(right);

    /// <summary>True when they differ.</summary>
    public static bool operator !=(AlarmId left, AlarmId right) => !left.Equals(right);

    /// <summary>True when the left one comes first.</summary>
    public static bool operator <(AlarmId left, AlarmId right) => left.CompareTo(right) < 0;

    /// <summary>True when the right one comes first.</summary>
    public static bool operator >(AlarmId left, AlarmId right) => left.CompareTo(right) > 0;

    /// <summary>True when the left one does not come later.</summary>
    public static bool operator <=(AlarmId left, AlarmId right) => left.CompareTo(right) <= 0;

    /// <summary>True when the left one does not come sooner.</summary>
    public static bool operator >=(AlarmId left, AlarmId right) => left.CompareTo(right) >= 0;

    /// <summary>By driveline, batch and place.</summary>
    public int CompareTo(AlarmId other)
    {
        int order = string.CompareOrdinal(Driveline, other.Driveline);
        order = order != 0 ? order : Sequence.CompareTo(other.Sequence);
        return order != 0 ? order : Index.CompareTo(other.Index);
    }

    /// <inheritdoc/>
    public bool Equals(AlarmId other) => CompareTo(other) == 0;

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is AlarmId other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Driveline, Sequence, Index);

    /// <summary>E.g. "north-7/118/0".</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Driveline}/{Sequence}/{Index}");
}
