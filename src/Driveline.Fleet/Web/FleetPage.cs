using System.Globalization;
using System.Net;
using System.Text;
using Driveline.Fleet.Silos;
using Driveline.Reports.Documents;

namespace Driveline.Fleet.Web;

/// <summary>The page: how the fleet stands, the worst ten drivelines, the latest alarms, and what the silos do. No script.</summary>
internal static class FleetPage
{
    private const int Worst = 10;
    private const int Latest = 20;

    private static readonly TimeSpan Late = TimeSpan.FromSeconds(5);

    public static string Of(string cluster, IReadOnlyList<SiloFigures> silos, DateTime nowUtc, long failures, bool isRefreshed)
    {
        var page = new StringBuilder();
        page.Append("<!DOCTYPE html><html lang=\"en\" class=\"dl-page\"><head><meta charset=\"utf-8\">")
            .Append("<meta name=\"viewport\" content=\"width=device-width,initial-scale=1\">")
            .Append(isRefreshed ? "<meta http-equiv=\"refresh\" content=\"5\">" : string.Empty)
            .Append("<title>Fleet “").Append(Html(cluster)).Append("”</title><style>").Append(HtmlStyle.Css)
            .Append("</style></head><body class=\"dl-body\"><main class=\"dl-report\"><h1>Fleet “").Append(Html(cluster)).Append("”</h1>");
        Lead(page, silos, nowUtc);
        DrivelineStatus[] worst = [.. silos.Where(s => nowUtc - s.HeardUtc < Late).SelectMany(s => s.Worst)];
        Array.Sort(worst, DrivelineStatus.WorstFirst);
        Table(page, "The worst ten", "Most trips first, then most overloads, then the highest torque for its overload level.",
            ["Driveline", "Trips", "Overloads", "Slips", "Highest, N·m", "Overload from, N·m", "Hours turned", "Batches stored", "Lost",
                "Alarms open"],
            worst.Take(Worst).Select(Row));
        Table(page, "Latest alarms", "Times on the clock of the samples.",
            ["Alarm", "What", "Began, s", "Lasted, s", "Peak, N·m", "Told, UTC"],
            silos.SelectMany(s => s.Latest).OrderByDescending(a => a.ToldUtc).Take(Latest).Select(Row));
        Table(page, "Silos", "Times until a batch is acknowledged, since the silo started.",
            ["Silo", "Heard", "Drivelines", "Batches/s", "Half within, ms", "99 of 100 within, ms", "Alarms told", "Memory, MB", "Format"],
            silos.Select(s => Row(s, nowUtc)));
        Table(page, "Batches", "What became of them since the silo started.",
            ["Silo", "Taken", "Repeated", "Waiting", "Busy", "Refused"], silos.Select(Batches));
        page.Append("<footer class=\"dl-foot\"><p>").Append(nowUtc.ToString("yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture))
            .Append(" UTC. ").Append(failures > 0 ? N(failures) + " writes of this silo failed and were done again. " : string.Empty)
            .Append(isRefreshed ? "<a href=\"?\">Stop refreshing</a>" : "<a href=\"?refresh\">Refresh every 5 s</a>")
            .Append("</p><p>This is no safety function: it stops nothing, and it comes late.</p></footer></main></body></html>\n");
        return page.ToString();
    }

    private static void Lead(StringBuilder page, IReadOnlyList<SiloFigures> silos, DateTime nowUtc)
    {
        SiloFigures[] heard = [.. silos.Where(s => nowUtc - s.HeardUtc < Late)];
        SiloFigures[] silent = [.. silos.Except(heard)];
        page.Append("<p class=\"dl-lead ").Append(heard.Length > 0 && silent.Length == 0 ? "dl-good" : "dl-careful").Append("\">")
            .Append(N(heard.Sum(s => s.Drivelines))).Append(heard.Sum(s => s.Drivelines) == 1 ? " driveline on " : " drivelines on ")
            .Append(N(heard.Length)).Append(heard.Length == 1 ? " silo, " : " silos, ")
            .Append(N(heard.Sum(s => s.BatchesPerSecond))).Append(" batches/s, ")
            .Append(N(silos.Sum(s => s.Alarms))).Append(" alarms told.");
        if (silent.Length > 0)
        {
            page.Append(" Not heard for a while: ").Append(Html(string.Join(", ", silent.Select(s => s.Silo))))
                .Append("; its drivelines move to the others as their batches come.");
        }

        page.Append("</p>");
    }

    private static void Table(StringBuilder page, string title, string note, string[] heads, IEnumerable<string[]> rows)
    {
        page.Append("<h2>").Append(title).Append("</h2>");
        string[][] all = [.. rows];
        if (all.Length == 0)
        {
            page.Append("<p>None yet.</p>");
            return;
        }

        page.Append("<p class=\"dl-note\">").Append(note).Append("</p><table class=\"dl-wide\"><thead><tr>");
        foreach (string head in heads)
        {
            page.Append("<th scope=\"col\">").Append(head).Append("</th>");
        }

        page.Append("</tr></thead><tbody>");
        foreach (string[] row in all)
        {
            page.Append("<tr><th scope=\"row\">").Append(Html(row[0])).Append("</th>");
            for (int k = 1; k < row.Length; k++)
            {
                page.Append("<td data-head=\"").Append(heads[k]).Append("\">").Append(Html(row[k])).Append("</td>");
            }

            page.Append("</tr>");
        }

        page.Append("</tbody></table>");
    }

    private static string[] Row(DrivelineStatus s) =>
    [
        s.Driveline, N(s.Trips), N(s.Overloads), N(s.Slips), N(s.HighestNm), N(s.OverloadNm), N1(s.TurnedHours), N(s.AcknowledgedThrough),
        N(s.Lost), N(s.OpenAlarms),
    ];

    private static string[] Row(ToldAlarm a) =>
    [
        a.Id, a.Kind, N1(a.StartS), N1(a.DurationS), N(a.PeakNm), a.ToldUtc.ToString("HH:mm:ss", CultureInfo.InvariantCulture),
    ];

    private static string[] Row(SiloFigures s, DateTime nowUtc) =>
    [
        s.Silo, nowUtc - s.HeardUtc < Late ? "now" : N((nowUtc - s.HeardUtc).TotalSeconds) + " s ago", N(s.Drivelines),
        N(s.BatchesPerSecond), N1(s.MiddleMs), N1(s.SlowestMs), N(s.Alarms), N(s.MemoryBytes / 1e6), N(s.StateFormat),
    ];

    private static string[] Batches(SiloFigures s) =>
    [
        s.Silo, N(s.Batches[(int)BatchOutcome.Taken]), N(s.Batches[(int)BatchOutcome.Repeated]), N(s.Batches[(int)BatchOutcome.Waiting]),
        N(s.Batches[(int)BatchOutcome.Busy]), N(s.Batches[(int)BatchOutcome.Refused]),
    ];

    private static string N(double number) => double.IsNaN(number) ? "–" : number.ToString("N0", CultureInfo.InvariantCulture);

    private static string N1(double number) => double.IsNaN(number) ? "–" : number.ToString("N1", CultureInfo.InvariantCulture);

    private static string Html(string text) => WebUtility.HtmlEncode(text);
}
