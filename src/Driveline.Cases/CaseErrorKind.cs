namespace Driveline.Cases;

/// <summary>What is wrong with a case file.</summary>
public enum CaseErrorKind
{
    /// <summary>Not classified.</summary>
    NotKnown = 0,

    /// <summary>The text is not JSON, or not UTF-8.</summary>
    InvalidJson,

    /// <summary>The file is larger than is read.</summary>
    TooLarge,

    /// <summary>Objects and lists are nested deeper than is read.</summary>
    TooDeep,

    /// <summary>A member that the format does not have, or not in this place.</summary>
    UnknownMember,

    /// <summary>A member that is stated twice.</summary>
    DuplicateMember,

    /// <summary>A member that must be stated is missing.</summary>
    MissingMember,

    /// <summary>A value of the wrong kind, e.g. a number where a text is wanted.</summary>
    WrongKind,

    /// <summary>A text that cannot be read as what is wanted: a quantity, a date, a thread, a grade.</summary>
    NotReadable,

    /// <summary>A value outside its permitted range.</summary>
    OutOfRange,

    /// <summary>Two facts that cannot both be true, or one that means nothing without another.</summary>
    Contradiction,

    /// <summary>More errors than are listed.</summary>
    TooMany,
}
