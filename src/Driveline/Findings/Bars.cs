namespace Driveline.Findings;

/// <summary>Which of the two questions a finding keeps from a Yes.</summary>
[Flags]
public enum Bars
{
    /// <summary>Neither: it is good to know, or a number already carries it.</summary>
    Nothing = 0,

    /// <summary>Does the protection act before a part is damaged?</summary>
    Guards = 1,

    /// <summary>Does it stay quiet in normal work?</summary>
    Quiet = 2,

    /// <summary>Both questions.</summary>
    Both = Guards | Quiet,
}
