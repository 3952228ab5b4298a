namespace Driveline.Advice;

/// <summary>Who writes to whom about which machine, and what the owner wrote himself; each null when not known.</summary>
/// <remarks>Only labels: no advice depends on them. Immutable.</remarks>
public sealed class LetterHead
{
    private LetterHead()
    {
    }

    private LetterHead(LetterHead other)
    {
        To = other.To;
        From = other.From;
        Machine = other.Machine;
        Serial = other.Serial;
        Reference = other.Reference;
        Date = other.Date;
        OwnWords = other.OwnWords;
    }

    /// <summary>A letter of which nothing is known.</summary>
    public static LetterHead Empty { get; } = new();

    /// <summary>Whom the letter goes to.</summary>
    public string? To { get; private init; }

    /// <summary>Who signs it.</summary>
    public string? From { get; private init; }

    /// <summary>Make and model of the machine, as its owner says it.</summary>
    public string? Machine { get; private init; }

    /// <summary>Serial number of the machine.</summary>
    public string? Serial { get; private init; }

    /// <summary>The writer's own reference.</summary>
    public string? Reference { get; private init; }

    /// <summary>The day of the letter.</summary>
    public DateTime? Date { get; private init; }

    /// <summary>What the owner wrote, in his own words.</summary>
    public string? OwnWords { get; private init; }

    /// <summary>The same head with the one it goes to.</summary>
    public LetterHead WithTo(string? to) => new(this) { To = to };

    /// <summary>The same head with the one who signs.</summary>
    public LetterHead WithFrom(string? from) => new(this) { From = from };

    /// <summary>The same head with the machine.</summary>
    public LetterHead WithMachine(string? machine) => new(this) { Machine = machine };

    /// <summary>The same head with the machine's serial number.</summary>
    public LetterHead WithSerial(string? serial) => new(this) { Serial = serial };

    /// <summary>The same head with the writer's reference.</summary>
    public LetterHead WithReference(string? reference) => new(this) { Reference = reference };

    /// <summary>The same head with the day of the letter.</summary>
    public LetterHead WithDate(DateTime? date) => new(this) { Date = date };

    /// <summary>The same head with what the owner wrote.</summary>
    public LetterHead WithOwnWords(string? ownWords) => new(this) { OwnWords = ownWords };
}
