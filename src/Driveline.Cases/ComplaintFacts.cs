using Driveline.Advice;
using Driveline.Cases.Members;
using Driveline.Quantities;

namespace Driveline.Cases;

/// <summary>What is wrong, as the owner tells it: a symptom, answers to questions of the advice's catalogue, and the strike.</summary>
/// <remarks>This is the whole state of an interview: saved and read again, it asks on as if never stopped.</remarks>
public sealed class ComplaintFacts : CaseFacts
{
    internal ComplaintFacts(object?[] values)
        : base(values)
    {
    }

    /// <summary>Nothing stated.</summary>
    public static ComplaintFacts Empty { get; } = new(ComplaintMembers.Table.NoValues());

    /// <summary>What is wrong.</summary>
    public Symptom Symptom => Value<Symptom>(ComplaintMembers.Symptom) ?? default;

    /// <summary>The same with another <see cref="Symptom"/>.</summary>
    public ComplaintFacts WithSymptom(Symptom value) => new(Set(ComplaintMembers.Symptom, value == default ? null : value));

    /// <summary>Every stated answer, in the order of the catalogue; those answered "notKnown" too.</summary>
    public IReadOnlyList<Fact> Facts => [.. FactQuestion.All.Select(q => FactOf(q.Code)).OfType<Fact>()];

    /// <summary>The stated answer to a question; null when it is not stated.</summary>
    /// <exception cref="ArgumentException">The question is not in the catalogue; the message lists what is.</exception>
    public Fact? FactOf(string question) => this[ComplaintMembers.Facts[FactQuestion.Get(question).Code]] switch
    {
        double hours => HoursMember.FactOf(hours),
        Fact fact => fact,
        _ => null,
    };

    /// <summary>The same with an answer in place of the one to that question, if any.</summary>
    public ComplaintFacts With(Fact fact) => new(Set(ComplaintMembers.Facts[Guard.NotNull(fact, nameof(fact)).Question], fact));

    /// <summary>The same without the answer to a question.</summary>
    /// <exception cref="ArgumentException">The question is not in the catalogue; the message lists what is.</exception>
    public ComplaintFacts Without(string question) => new(Set(ComplaintMembers.Facts[FactQuestion.Get(question).Code], null));

    /// <summary>Hours of work between two breaks or trips, where somebody counted. Permitted: (0; 100000]. Null when not known.</summary>
    public double? HoursBetweenBreaks => this[ComplaintMembers.Facts["hoursBetweenBreaks"]] is double hours ? hours : null;

    /// <summary>The same with another <see cref="HoursBetweenBreaks"/>.</summary>
    public ComplaintFacts WithHoursBetweenBreaks(double? value) => new(Set(ComplaintMembers.Facts["hoursBetweenBreaks"], value));

    /// <summary>Torque that the strike put on the driveline at the PTO. Permitted: (0 N.m; 1000 kN.m]. Null when not known.</summary>
    public TorqueBand? StrikePeak => Reference<TorqueBand>(ComplaintMembers.StrikePeak);

    /// <summary>The same with another <see cref="StrikePeak"/>.</summary>
    public ComplaintFacts WithStrikePeak(TorqueBand? value) => new(Set(ComplaintMembers.StrikePeak, value));

    internal override MemberTable Table => ComplaintMembers.Table;
}
