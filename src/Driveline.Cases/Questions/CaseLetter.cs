using Driveline.Advice;
using Driveline.Cases.Members;

namespace Driveline.Cases.Questions;

/// <summary>What a case says of the letter: its head, the owner's own words, and what he asks.</summary>
internal static class CaseLetter
{
    public static OwnerAdvice AddTo(OwnerAdvice advice, CaseFile file)
    {
        CaseObject? letter = file.Facts.Get(CaseFileMembers.Letter);
        return advice
            .WithHead(LetterHead.Empty
                .WithTo(letter?.Get(LetterMembers.To))
                .WithFrom(letter?.Get(LetterMembers.From))
                .WithMachine(letter?.Get(LetterMembers.Machine))
                .WithSerial(letter?.Get(LetterMembers.Serial))
                .WithReference(letter?.Get(LetterMembers.Reference))
                .WithDate(file.Date)
                .WithOwnWords(file.Facts.Get(CaseFileMembers.Complaint) is null ? null : file.Facts.Get(CaseFileMembers.Notes)))
            .WithAsks(file.Facts.Get(CaseFileMembers.Complaint)?.Get(ComplaintMembers.Asks)?.Choices ?? []);
    }
}
