using Driveline.Cases.Members;

namespace Driveline.Cases;

/// <summary>What is wrong, as the owner tells it.</summary>
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

    /// <summary>When it happens.</summary>
    public ComplaintMoment When => Value<ComplaintMoment>(ComplaintMembers.When) ?? default;

    /// <summary>The same with another <see cref="When"/>.</summary>
    public ComplaintFacts WithWhen(ComplaintMoment value) => new(Set(ComplaintMembers.When, value == default ? null : value));

    /// <summary>Hours of work between two breaks or trips. Permitted: (0; 100000]. Null when not known.</summary>
    public double? HoursBetweenBreaks => Si(ComplaintMembers.HoursBetweenBreaks);

    /// <summary>The same with another <see cref="HoursBetweenBreaks"/>.</summary>
    public ComplaintFacts WithHoursBetweenBreaks(double? value) => new(Set(ComplaintMembers.HoursBetweenBreaks, value));

    /// <summary>What was struck.</summary>
    public StruckThing Struck => Value<StruckThing>(ComplaintMembers.Struck) ?? default;

    /// <summary>The same with another <see cref="Struck"/>.</summary>
    public ComplaintFacts WithStruck(StruckThing value) => new(Set(ComplaintMembers.Struck, value == default ? null : value));

    /// <summary>What broke, when something other than the protection did. Null when not known.</summary>
    public string? BrokenPart => Reference<string>(ComplaintMembers.BrokenPart);

    /// <summary>The same with another <see cref="BrokenPart"/>.</summary>
    public ComplaintFacts WithBrokenPart(string? value) => new(Set(ComplaintMembers.BrokenPart, value));

    internal override MemberTable Table => ComplaintMembers.Table;
}
