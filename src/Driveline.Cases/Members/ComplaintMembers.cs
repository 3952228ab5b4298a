using Driveline.Quantities;

namespace Driveline.Cases.Members;

/// <summary>The rows of complaint.</summary>
internal static class ComplaintMembers
{
    public static readonly MemberTable Table = new("complaint", "What is wrong, as the owner tells it.", values => new ComplaintFacts(values));

    public static readonly ChoiceMember<Symptom> Symptom = Table.Choice<Symptom>("symptom", "What is wrong.");
    public static readonly ChoiceMember<ComplaintMoment> When = Table.Choice<ComplaintMoment>("when", "When it happens.");
    public static readonly QuantityMember HoursBetweenBreaks = Table.Quantity(
        "hoursBetweenBreaks", Dimension.Number, "(0; 100000]", "Hours of work between two breaks or trips.");
    public static readonly ChoiceMember<StruckThing> Struck = Table.Choice<StruckThing>("struck", "What was struck.");
    public static readonly TextMember BrokenPart = Table.Text("brokenPart", 200, "What broke, when something other than the protection did.");
}
