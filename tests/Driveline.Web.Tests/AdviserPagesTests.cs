using System.Net;
using System.Text.RegularExpressions;

namespace Driveline.Web.Tests;

public partial class AdviserPagesTests(WebHost host) : IClassFixture<WebHost>
{
    [Theory]
    [InlineData("en", "What kind of machine is it?")]
    [InlineData("es", "¿Qué máquina es?")]
    public async Task Interview_AnsweredToItsEnd_WritesALetter(string language, string first)
    {
        string page = await Get("/interview?language=" + language);
        Assert.Contains(first, WebUtility.HtmlDecode(page), StringComparison.Ordinal);
        string[] wanted = ["rotaryCutter", "shearBolt", "BreaksOften"];
        int steps = 0;
        while (Step().Match(page) is { Success: true } step && steps < 60)
        {
            string told = WebUtility.HtmlDecode(Told().Match(page).Groups[1].Value);
            string answer = steps < wanted.Length ? wanted[steps]
                : Radio().Match(page) is { Success: true } radio ? radio.Groups[1].Value : string.Empty;
            page = await Get($"/interview?language={language}&step={step.Groups[1].Value}"
                + $"&answer={Uri.EscapeDataString(answer)}&told={Uri.EscapeDataString(told)}");
            Assert.DoesNotContain("role=\"alert\"", page, StringComparison.Ordinal);
            steps++;
        }

        Assert.InRange(steps, 5, 59);
        Assert.Contains("<svg", page, StringComparison.Ordinal);
        Assert.Contains("dl-report", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Interview_AnAnswerThatIsNone_SaysSoAndAsksAgain()
    {
        string page = await Get("/interview?told=machine%3DrotaryCutter&step=device&answer=string");
        Assert.Contains("role=\"alert\"", page, StringComparison.Ordinal);
        Assert.Equal("device", Step().Match(page).Groups[1].Value);
    }

    [Theory]
    [InlineData("{\"title\":\"<script>alert(1)</script>\"}")]
    [InlineData("{\"title\":\"\\\"><img src=x onerror=alert(1)>\"}")]
    [InlineData("<script>alert(1)</script>")]
    public async Task Case_WithHostileText_IsShownAndNotRun(string json)
    {
        string page = await Posted(json);
        Assert.DoesNotContain("<script", page, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img", page, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Case_OfADemo_GetsItsLetterAndLadder()
    {
        string page = await Posted(System.Text.Encoding.UTF8.GetString(WebHost.Case("larkfield-soft-bolts")));
        Assert.Contains("Fit exactly the bolt the manual names", page, StringComparison.Ordinal);
        Assert.Contains("<svg", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Case_ThatCannotBeRead_KeepsItsTextAndTellsThePlace()
    {
        string page = WebUtility.HtmlDecode(await Posted("{ \"titel\": 1 }"));
        Assert.Contains("line 1, column 3", page, StringComparison.Ordinal);
        Assert.Contains("\n{ \"titel\": 1 }</textarea>", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task EveryPage_ForbidsScriptsAndFrames()
    {
        using HttpResponseMessage answer = await host.Client.GetAsync(new Uri("/", UriKind.Relative));
        string policy = string.Join(' ', answer.Headers.GetValues("Content-Security-Policy"));
        Assert.Contains("default-src 'none'", policy, StringComparison.Ordinal);
        Assert.DoesNotContain("script-src", policy, StringComparison.Ordinal);
    }

    private async Task<string> Posted(string json)
    {
        using var form = new FormUrlEncodedContent([new("case", json)]);
        using HttpResponseMessage answer = await host.Client.PostAsync(new Uri("/case?language=en", UriKind.Relative), form);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        return await answer.Content.ReadAsStringAsync();
    }

    private Task<string> Get(string path) => host.Client.GetStringAsync(new Uri(path, UriKind.Relative));

    [GeneratedRegex("name=\"step\" value=\"([A-Za-z]+)\"")]
    private static partial Regex Step();

    [GeneratedRegex("name=\"told\" value=\"([^\"]*)\"")]
    private static partial Regex Told();

    [GeneratedRegex("type=\"radio\" name=\"answer\" value=\"([^\"]+)\"")]
    private static partial Regex Radio();
}
