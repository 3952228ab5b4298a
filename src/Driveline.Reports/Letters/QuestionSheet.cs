using Driveline.Advice;
using Driveline.Loads;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Letters;

/// <summary>The sheet of open questions: the machine, what is asked at the desk and at the machine, photographs.</summary>
internal static class QuestionSheet
{
    private const string Blank = " ______________________";
    private const string Box = "[ ] ";

    private static readonly string[] Machine = ["questions.machine", "questions.tractor", "questions.manual"];
    private static readonly string[] PhotosOfAll = ["photo.plate", "photo.manual", "photo.driveline"];
    private static readonly string[] PhotosOfBolt = ["photo.boltHead", "photo.brokenEnds", "photo.holes"];
    private static readonly string[] PhotosOfClutch = ["photo.springs", "photo.clutch"];

    public static IReadOnlyList<ReportBlock> Of(OwnerAdvice advice, ReportOptions options)
    {
        var phrase = new Phrase(options.Texts, options.Units);
        var blocks = new List<ReportBlock>
        {
            ReportBlock.Title(phrase.Of("questions.title") + (options.Title is { } title ? ": " + CleanText.Title(title) : string.Empty)),
            ReportBlock.Paragraph(phrase.Of("questions.how")),
            ReportBlock.Bullets(Machine.Select(m => phrase.Of(m) + Blank)),
        };
        FactQuestion[] open = [.. advice.Diagnosis.Open];
        if (advice.Diagnosis.Complaint.Symptom == Symptom.NotKnown)
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of("interview.symptom") + Blank));
        }

        AddGroup("questions.desk", [.. open.Where(q => q.Place == CheckPlace.Desk)], phrase, blocks);
        FactQuestion[] atMachine = [.. open.Where(q => q.Place != CheckPlace.Desk)];
        AddGroup("questions.machineSide", atMachine, phrase, blocks);
        blocks.Add(ReportBlock.Heading(phrase.Of("questions.photos")));
        blocks.Add(ReportBlock.Paragraph(phrase.Of("questions.photos.how")));
        blocks.Add(ReportBlock.Bullets(Photos(advice).Select(p => Box + phrase.Of(p))));
        blocks.Add(ReportBlock.Heading(phrase.Of("report.cautions")));
        blocks.Add(ReportBlock.Bullets(
            advice.Cautions.Concat(atMachine.SelectMany(q => q.Cautions)).Distinct().Select(c => phrase.Of(c.Code))));
        return blocks;
    }

    private static void AddGroup(string heading, FactQuestion[] questions, Phrase phrase, List<ReportBlock> blocks)
    {
        if (questions.Length == 0)
        {
            return;
        }

        blocks.Add(ReportBlock.Heading(phrase.Of(heading)));
        foreach (FactQuestion question in questions)
        {
            blocks.Add(ReportBlock.Paragraph(phrase.Of(question.TextCode)));
            blocks.Add(ReportBlock.Bullets(question.Answers.Select(a => Box + phrase.Of(Fact.Of(question.Code, a).Code))));
        }
    }

    private static IEnumerable<string> Photos(OwnerAdvice advice)
    {
        Complaint complaint = advice.Diagnosis.Complaint;
        bool isCutter = advice.Machine is MachineKind.NotKnown or MachineKind.RotaryCutter or MachineKind.FlailMower;
        return PhotosOfAll
            .Concat(complaint.Says(OwnerFacts.Device.SlipClutch) ? [] : PhotosOfBolt)
            .Concat(complaint.Says(OwnerFacts.Device.ShearBolt) ? [] : PhotosOfClutch)
            .Concat(isCutter ? ["photo.deck", "photo.blades"] : []);
    }
}
