namespace Driveline.Advice;

/// <summary>What is read on a bolt's head, or what the manual asks for, as far as the advice tells them apart.</summary>
internal enum BoltMark
{
    /// <summary>Not read, or not stated.</summary>
    NotKnown = 0,

    /// <summary>No mark at all: grade 2, class 4.6 without its mark, or anything else.</summary>
    NoMark,

    /// <summary>Low grade: SAE grade 2, class 4.6 or 4.8 (as a manual states it).</summary>
    Low,

    /// <summary>Medium grade: three lines, SAE grade 5, class 8.8.</summary>
    Medium,

    /// <summary>High grade: six lines, SAE grade 8, class 10.9 or above.</summary>
    High,
}
