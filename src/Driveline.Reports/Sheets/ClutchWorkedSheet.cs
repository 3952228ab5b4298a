using Driveline.Chains;
using Driveline.Clutches;
using Driveline.Provenance;
using Driveline.Reports.Documents;
using Driveline.Reports.Verdicts;

namespace Driveline.Reports.Sheets;

/// <summary>
/// The sums of a slip clutch: from the length of its springs (or the lever) to its torque, from a torque to that length and back, and the
/// heat of a slip.
/// </summary>
internal static class ClutchWorkedSheet
{
    public static IReadOnlyList<ReportBlock> Of(ClutchReview review, ReportOptions options)
    {
        var phrase = new Phrase(options.Texts, options.Units);
        SlipTorque torque = review.Torque;
        var blocks = new List<ReportBlock> { ReportBlock.Title(CleanText.Title(options.Title ?? phrase.Capital(review.Device.Name))) };
        if (torque.Clutch is { } pack)
        {
            blocks.AddRange(ReportBlock.PictureIf(f => ClutchPicture.SectionDrawing(pack, options, f)));
        }

        blocks.Add(ReportBlock.Heading(phrase.Of("sheet.torque")));
        WorkedSheet.AddSums(torque.Sheet(), torque.SheetBases(), phrase, blocks);
        blocks.Add(ReportBlock.Paragraph(phrase.Of(Phrase.Code("sheet.result").With("band", BandWords.Of(torque.Running, phrase)))));
        if (torque.SpringSheet() is { Count: > 0 } springs)
        {
            blocks.Add(ReportBlock.Heading(phrase.Of("sheet.springs.beside")));
            WorkedSheet.AddSums(springs, torque.SheetBases(), phrase, blocks);
        }

        if ((review.Setting ?? Again(torque)) is { IsReached: true } setting)
        {
            blocks.Add(ReportBlock.Sheet(phrase.Of("sheet.setting")));
            WorkedSheet.AddSums(setting.Sheet(), torque.SheetBases(), phrase, blocks);
        }

        if ((review.Heat?.Sheet() ?? review.Slip?.Sheet()) is { Count: > 0 } heat)
        {
            blocks.Add(ReportBlock.Sheet(phrase.Of("clutchReport.heat")));
            WorkedSheet.AddSums(heat, torque.SheetBases(), phrase, blocks);
        }

        Basis[] bases =
        [
            torque.Running.Basis.Low, torque.Running.Basis.Expected, torque.Running.Basis.High,
            .. review.Heat is { } path ? new[] { path.Basis } : [],
        ];
        WorkedSheet.Close(bases, phrase, blocks);
        return blocks;
    }

    // Without a torque asked for, the one it has: the length must come out again.
    private static ClutchSetting? Again(SlipTorque torque) =>
        torque is { Clutch: { } clutch, Running.Expected: { NewtonMeters: > 0 } now }
        ? ClutchSetting.For(clutch.CalibratedBy(torque.Condition), now, torque.Condition) : null;
}
