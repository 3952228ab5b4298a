namespace Driveline.Web.Tests;

/// <summary>The adviser's page in a real browser, by the keyboard alone, on a phone's width and on a desk's.</summary>
public class BrowserTests(WebHost host, Browser browser) : IClassFixture<WebHost>, IClassFixture<Browser>
{
    [BrowserFact]
    public async Task Interview_ByTheKeyboardAloneOnAPhone_ReachesTheLetter()
    {
        await browser.Width(360);
        await browser.Open(host.Client.BaseAddress!);
        await browser.TabTo("form[action=\"/interview\"] button");
        await browser.Press("Enter");
        await browser.Loaded();
        int questions = 0;
        while (await browser.Value("document.querySelector('input[name=step]') !== null") == "true" && questions < 40)
        {
            await AssertFits();
            if (await browser.Value("document.querySelector('input[type=radio]') !== null") == "true")
            {
                await browser.TabTo("input[type=radio]");
                await browser.Press(" ");
            }

            await browser.TabTo("form button");
            string before = await browser.Value("location.href");
            await browser.Press("Enter");
            for (int wait = 0; wait < 100 && await browser.Value("location.href") == before; wait++)
            {
                await Task.Delay(50);
            }

            await browser.Loaded();
            questions++;
        }

        Assert.InRange(questions, 5, 39);
        Assert.Equal("true", await browser.Value("document.querySelector('.dl-report') !== null"));
        await AssertFits();
        Assert.Empty(browser.Complaints);
        string own = host.Client.BaseAddress!.ToString();
        Assert.DoesNotContain(
            browser.Requests,
            r => !r.StartsWith(own, StringComparison.Ordinal) && !r.StartsWith("data:", StringComparison.Ordinal));
    }

    [BrowserFact]
    public async Task Letter_OnADesk_FitsItsWindow()
    {
        await browser.Width(1280);
        const string Told = "machine%3DrotaryCutter~device%3DshearBolt~symptom%3DBreaksOften";
        await browser.Open(new Uri(host.Client.BaseAddress!, "/interview?enough=1&told=" + Told));
        await AssertFits();
        Assert.NotEqual("0", await browser.Value("document.querySelectorAll('.dl-report h2').length"));
    }

    private async Task AssertFits() => Assert.True(
        await browser.Value("document.documentElement.scrollWidth <= window.innerWidth") == "true",
        await browser.Value("location.href + ' is ' + document.documentElement.scrollWidth + ' px wide'"));
}
