using Driveline.Findings;

namespace Driveline.Protection;

/// <summary>One thing to measure or look up next, what it takes, what it can change, and why.</summary>
public sealed class Measurement
{
    internal Measurement(string code, IReadOnlyList<string> subjects, string reason, Bars changes, bool changesAsSpecified)
    {
        Code = code;
        Subjects = subjects;
        Reason = reason;
        Changes = changes;
        ChangesAsSpecified = changesAsSpecified;
    }

    /// <summary>Stable code, e.g. "measure.hubTurn".</summary>
    public string Code { get; }

    /// <summary>The first part or device it is about; null when it is about the whole machine.</summary>
    public string? Subject => Subjects.Count > 0 ? Subjects[0] : null;

    /// <summary>Every part or device it is about; empty when it is about the whole machine.</summary>
    public IReadOnlyList<string> Subjects { get; }

    /// <summary>Code of the finding it would settle.</summary>
    public string Reason { get; }

    /// <summary>Minutes it takes about, common practice; null when it is not in the asker's hands.</summary>
    public int? Minutes => MeasurementEffort.Of(Code).Minutes;

    /// <summary>Where it is done.</summary>
    public MeasurementPlace Place => MeasurementEffort.Of(Code).Place;

    /// <summary>The answers it stands in the way of.</summary>
    public Bars Changes { get; }

    /// <summary>True when it stands in the way of "as the maker specified".</summary>
    public bool ChangesAsSpecified { get; }

    /// <inheritdoc/>
    public override string ToString() => Subjects.Count == 0 ? Code : Code + " (" + string.Join(", ", Subjects) + ")";
}
