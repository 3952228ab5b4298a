using Driveline.Advice;
using Driveline.Chains;
using Driveline.Reports.Charts;
using Driveline.Reports.Documents;
using Driveline.Reports.Letters;

namespace Driveline.Reports;

/// <summary>An advice as one self-contained HTML page: the content of <see cref="AdviceText"/>, with boxes to tick.</summary>
/// <remarks>What the options' head leaves out is taken from the letter: from, to, machine, date, reference.</remarks>
public static class AdviceHtml
{
    /// <summary>The page in English, in metric units.</summary>
    public static string Of(OwnerAdvice advice) => Of(advice, ReportOptions.Default);

    /// <summary>The page with options.</summary>
    /// <exception cref="ArgumentNullException">The advice or the options are missing.</exception>
    public static string Of(OwnerAdvice advice, ReportOptions options) =>
        HtmlRendering.Page(Blocks(advice, options), "page.kind.letter", options.WithHead(LetterOpening.HeadOf(advice.Head, options)));

    /// <summary>A section for a page of the caller's, to be styled by <see cref="ReportStyle.Css"/>.</summary>
    /// <exception cref="ArgumentNullException">The advice or the options are missing.</exception>
    public static string Fragment(OwnerAdvice advice, ReportOptions options) =>
        HtmlRendering.Fragment(Blocks(advice, options), options);

    private static List<ReportBlock> Blocks(OwnerAdvice advice, ReportOptions options)
    {
        List<ReportBlock> blocks =
        [
            .. AdviceLetter.Of(
                advice ?? throw new ArgumentNullException(nameof(advice)), options ?? throw new ArgumentNullException(nameof(options))),
        ];

        // The pictures stand at the end of the sheet of numbers, on a page of their own.
        var pictures = new List<ReportBlock>();
        if (advice.Verdict is { } verdict)
        {
            pictures.Add(ReportBlock.Picture(options.Texts.Of("ladder.description"),
                frame => TorqueLadderPicture.Fragment(verdict, options.WithTitle(null), frame)));
            foreach (ShearBoltDevice bolt in verdict.Question.Chain.Devices.OfType<ShearBoltDevice>())
            {
                pictures.AddRange(ReportBlock.PictureIf(f => BoltPicture.PlanesDrawing(bolt, options, f)));
            }
        }

        pictures.AddRange(ReportBlock.PictureIf(f => CostPicture.YearsDrawing(advice.Costs, options, f)));
        if (pictures.Count > 0)
        {
            blocks.Add(ReportBlock.Sheet(options.Texts.Of("page.pictures")));
            blocks.AddRange(pictures);
        }

        return blocks;
    }
}
