using UnitsNet;

namespace Driveline.Torsion;

/// <summary>Something that happened in a transient, and when.</summary>
public readonly struct TransientEvent : IEquatable<TransientEvent>
{
    private readonly double seconds;

    internal TransientEvent(TransientEventKind kind, string part, double seconds)
    {
        Kind = kind;
        Part = part;
        this.seconds = seconds;
    }

    /// <summary>What happened.</summary>
    public TransientEventKind Kind { get; }

    /// <summary>The element, or the drive, that it happened to.</summary>
    public string Part { get; }

    /// <summary>When, since the start of the run.</summary>
    public Duration Time => Duration.FromSeconds(seconds);

    /// <summary>True when both are the same.</summary>
    public static bool operator ==(TransientEvent left, TransientEvent right) => left.Equals(right);

    /// <summary>True when they differ.</summary>
    public static bool operator !=(TransientEvent left, TransientEvent right) => !left.Equals(right);

    /// <inheritdoc/>
    public bool Equals(TransientEvent other) => Kind == other.Kind && Part == other.Part && seconds.Equals(other.seconds);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => obj is TransientEvent other && Equals(other);

    /// <inheritdoc/>
    public override int GetHashCode() => (((int)Kind * 397) ^ seconds.GetHashCode()) * 397;

    /// <inheritdoc/>
    public override string ToString() => FormattableString.Invariant($"{seconds:G9} s {Kind} {Part}");
}
