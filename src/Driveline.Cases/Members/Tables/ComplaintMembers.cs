using Driveline.Advice;
using Driveline.Quantities;
using Driveline.Wording;

namespace Driveline.Cases.Members;

/// <summary>The rows of complaint: the symptom, one row for each question of the advice's catalogue, and the strike.</summary>
/// <remarks>The catalogue's own question is the row's meaning, so that file, schema, docs page and interview ask the same.</remarks>
internal static class ComplaintMembers
{
    public static readonly MemberTable Table = new(
        "complaint", "What is wrong, as the owner tells it. An answer \"notKnown\" says that the owner was asked and does not know.");

    public static readonly ChoiceMember<Symptom> Symptom = Table.Choice<Symptom>("symptom", "What is wrong.");
    public static readonly IReadOnlyDictionary<string, ReferenceMember<Fact>> Facts = FactQuestion.All.ToDictionary(
        q => q.Code, Row, StringComparer.Ordinal);
    public static readonly ChoicesMember<OwnerAsk> Asks = Table.Choices<OwnerAsk>(
        "asks", "What else the owner asks; answered in the letter.");
    public static readonly BandMember<TorqueBand> StrikePeak = Table.Torques(
        "strikePeak", "(0 N.m; 1000 kN.m]", "Torque that the strike put on the driveline at the PTO, when it was measured or computed.");

    /// <summary>The stated answer to a question; null when it is not stated.</summary>
    public static Fact? FactOf(CaseObject complaint, string question) => complaint.Get(Facts[question]);

    /// <summary>Every stated answer, in the order of the catalogue; those answered "notKnown" too.</summary>
    public static IReadOnlyList<Fact> FactsOf(CaseObject? complaint) =>
        complaint is null ? [] : [.. FactQuestion.All.Select(q => FactOf(complaint, q.Code)).OfType<Fact>()];

    private static ReferenceMember<Fact> Row(FactQuestion question) => question.Code == "hoursBetweenBreaks"
        ? Table.Hours(question, Texts.English.Of(question.TextCode))
        : Table.Fact(question, Texts.English.Of(question.TextCode));
}
