namespace Driveline.Advice;

/// <summary>What money a remedy takes.</summary>
internal enum RemedySpending
{
    /// <summary>Not known: a workshop job, lost working time, or bolts that go on breaking.</summary>
    NotKnown = 0,

    /// <summary>None: a habit.</summary>
    Nothing,

    /// <summary>Time only.</summary>
    Work,

    /// <summary>Time and a bolt.</summary>
    WorkAndBolt,

    /// <summary>Time, and parts whose price nobody has stated.</summary>
    WorkAndParts,
}
