using Driveline.Advice;
using static Driveline.Tests.Provenance.DataPage;
using static Driveline.Tests.Provenance.DataRow;

namespace Driveline.Tests.Provenance;

/// <summary>What the advice expects, and what it takes a bolt and an hour to cost.</summary>
internal static class AdvicePages
{
    public static DataPage OfAdvice() => DataPage.Of(
            "Likelihoods and prices of the advice",
            "How often a cause stands behind a complaint, and how often an answer is heard under a cause. Nobody has counted any of them: "
                + "they order what to look at first and never take part in a verdict.")
        .Table(
            "Causes by symptom", "Shares of one symptom add to 1; below 1% is left out.", "symptom | cause | share",
            from symptom in Enum.GetValues<Symptom>()
            from cause in Enum.GetValues<Cause>()
            let share = LikelihoodTable.Held.Prior(symptom)[(int)cause]
            where share >= 0.01 && symptom != default
            orderby symptom, share descending, cause
            select DataRow.Of(LikelihoodTable.Basis, symptom.ToString(), cause.ToString(), Number(Math.Round(share, 3))))
        .Table(
            "Answers by cause", "Where the answer is at least a quarter more, or less, frequent than when its cause is not known.",
            "question | answer | cause | chance | when the cause is not known", Answers())
        .Table(
            "Practice", string.Empty, "what | value",
            TradePractice.All.Select(p => DataRow.Of(p.Basis, p.Basis.Document, Printed(p))))
        .Table(
            "Prices where none is stated", "In " + UsualPrices.Currency + ", low / expected / high; shown as a guess wherever used.",
            "what | price",
            [
                DataRow.Of(UsualPrices.HourOfWork.Basis, "an hour of work", Band(UsualPrices.HourOfWork, 1)),
                DataRow.Of(UsualPrices.Bolt.Basis, "a shear bolt", Band(UsualPrices.Bolt, 1)),
            ]);

    private static IEnumerable<DataRow> Answers() =>
        from question in LikelihoodTable.Held.Questions
        from answer in question.Answers
        let chances = LikelihoodTable.Held.Likelihood(question.Code, answer)
        let usual = chances[(int)Cause.NotKnown]
        from cause in Enum.GetValues<Cause>()
        let ratio = chances[(int)cause] / usual
        where ratio is > 1.25 or < 0.8
        select DataRow.Of(
            LikelihoodTable.Basis, question.Code, answer, cause.ToString(), Number(Math.Round(chances[(int)cause], 3)),
            Number(Math.Round(usual, 3)));
}
