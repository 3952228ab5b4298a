using Driveline.Choosing;

namespace Driveline.Cases.Members;

/// <summary>The rows of case.</summary>
internal static class CaseFileMembers
{
    public static readonly MemberTable Table = new("case",
        "A case: one tractor, one implement and the driveline between them. Facts that are not known are left out.", CaseChecks.Across);

    public static readonly TextMember Schema = Table.Text(
        "$schema", 500, "Where an editor finds the schema of case files; the library does not look it up.");
    public static readonly WholeMember Format = Table.Whole(
        "format", 0, 1, "Number of the format of the file: 1. A file from before it was frozen says 0, and means the same.");
    public static readonly TextMember Title = Table.Text("title", 200, "What the case is, in one line.");
    public static readonly TextMember Notes = Table.Text(
        "notes", 20000, "Anything else worth keeping. Beside a complaint the letter quotes it as the owner's own words.");
    public static readonly DateMember Date = Table.Date("date", "The day for which the case is stated; ages and intervals count to it.");
    public static readonly ObjectMember Letter = Table.Object(
        "letter", () => LetterMembers.Table, "The head of the letter that answers a complaint.");
    public static readonly ObjectMember Tractor = Table.Object("tractor", () => TractorMembers.Table, "The tractor and its PTO.");
    public static readonly ObjectMember Implement = Table.Object("implement", () => ImplementMembers.Table, "The implement.");
    public static readonly ListMember Driveline = Table.Elements(
        "driveline", "Everything that carries the torque, in order from the tractor; a torque is stated at the element's own input.");
    public static readonly FlagMember PartsComplete = Table.Flag(
        "partsComplete", "True when the driveline lists every part that the protection should save.");
    public static readonly ObjectMember Specified = Table.Object(
        "specified", () => SpecifiedMembers.Table,
            "What the manual or parts list specifies for the only shear bolt, and for the only clutch; of several each element states "
                + "its own.");
    public static readonly ParsedMember<StockList> Stock = Table.Text<StockList>(
        "stock", 20000, StockList.TryParse,
            "Bolts and pins to choose from, e.g. \"3/8-16 UNC, SAE 5, 0.45; 8 mm pin, 2024-T4\": size, grade and perhaps a price; those of "
                + "usual shops when left out.");
    public static readonly ObjectMember Work = Table.Object("work", () => WorkMembers.Table, "The load of normal work.");
    public static readonly ObjectMember History = Table.Object(
        "history", () => HistoryMembers.Table, "How often the protection has acted in work so far.");
    public static readonly ObjectMember Complaint = Table.Object(
        "complaint", () => ComplaintMembers.Table, "What is wrong, as the owner tells it.");
    public static readonly ObjectMember Deck = Table.Object("deck", () => DeckMembers.Table, "How a cutter's deck stands.");
    public static readonly ObjectMember Costs = Table.Object(
        "costs", () => CostMembers.Table, "What the owner's options cost over the years.");
    public static readonly ObjectMember Strike = Table.Object(
        "strike", () => StrikeMembers.Table, "A strike to be simulated.");
}
