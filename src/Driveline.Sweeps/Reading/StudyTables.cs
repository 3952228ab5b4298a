using Driveline.Cases.Members;

namespace Driveline.Sweeps.Reading;

/// <summary>Every object of a study file, found through its rows.</summary>
internal static class StudyTables
{
    /// <summary>The study, its design and its factors.</summary>
    public static IReadOnlyList<MemberTable> Own { get; } =
        [.. MemberTables.From(new StudyMembers(StudyCase.None).Study), new FactorMembers(null, null, true).Table];
}
