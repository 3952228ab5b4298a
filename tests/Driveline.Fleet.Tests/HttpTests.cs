using System.Net;
using System.Net.Http.Headers;
using System.Text;
using System.Text.Json;

namespace Driveline.Fleet.Tests;

/// <summary>The page and the endpoint, over a socket of loopback.</summary>
public sealed class HttpTests : IClassFixture<HttpFleet>, IDisposable
{
    private readonly HttpClient client = new();
    private readonly FleetHost host;

    public HttpTests(HttpFleet fleet)
    {
        host = fleet.Host;
        client.BaseAddress = new Uri(host.Url!);
        client.DefaultRequestHeaders.Add("X-Api-Key", HttpFleet.Key);
    }

    public void Dispose() => client.Dispose();

    [Fact]
    public async Task Batches_OfARegisteredDriveline_AreTakenOnce()
    {
        Assert.Equal(HttpStatusCode.Created, (await RegisterAsync("west-1")).StatusCode);
        Assert.Equal(HttpStatusCode.OK, (await RegisterAsync("west-1")).StatusCode);
        const string first = """{"sequence":1,"timeS":[0,0.1],"speedInRadPerS":[56,56],"speedOutRadPerS":[56,null],"torqueNm":[300,310]}""";
        const string third = """{"sequence":3,"timeS":[0.4],"speedInRadPerS":[56],"torqueNm":[300]}""";
        Assert.Equal("""{"outcome":"taken","acknowledgedThrough":1}""", await TextAsync(await SendAsync("west-1", first)));
        Assert.Equal("""{"outcome":"repeated","acknowledgedThrough":1}""", await TextAsync(await SendAsync("west-1", first)));
        HttpResponseMessage gap = await SendAsync("west-1", third);
        Assert.Equal(HttpStatusCode.Accepted, gap.StatusCode);
        Assert.Equal("""{"outcome":"waiting","acknowledgedThrough":1,"missingFrom":2,"missingThrough":2}""", await TextAsync(gap));
        using JsonDocument status = JsonDocument.Parse(await client.GetStringAsync("/drivelines/west-1"));
        Assert.Equal((1, 1, 2), (Whole(status, "acknowledgedThrough"), Whole(status, "waiting"), Whole(status, "samples")));
    }

    [Theory]
    [InlineData("""{"sequence":0,"timeS":[],"speedInRadPerS":[],"torqueNm":[]}""", 409, "sequence", "from 1 to 16", "0")]
    [InlineData("""{"sequence":99,"timeS":[],"speedInRadPerS":[],"torqueNm":[]}""", 409, "sequence", "from 1 to 16", "99")]
    [InlineData("""{"sequence":1.5,"timeS":[],"speedInRadPerS":[],"torqueNm":[]}""", 400, "sequence", "a whole number", "1.5")]
    [InlineData("""{"timeS":[],"speedInRadPerS":[],"torqueNm":[]}""", 400, "sequence", "a whole number", "none")]
    [InlineData("""{"sequence":1,"timeS":[1,2],"speedInRadPerS":[1],"torqueNm":[1,2]}""", 400, "speedInRadPerS", "2 numbers", "1")]
    [InlineData("""{"sequence":1,"timeS":["x"],"speedInRadPerS":[],"torqueNm":[]}""", 400, "timeS", "a list of numbers and null", "\"x\"")]
    [InlineData("""{"sequence":1,"timeS":[1],"speedInRadPerS":[1]}""", 400, "torqueNm", "a list of numbers", "none")]
    [InlineData("""{"sequence":1,"sequence":2}""", 400, "body", "JSON with each member once", "a member twice")]
    [InlineData("""[""", 400, "body", "JSON with each member once", "something else on line 1")]
    [InlineData("""[]""", 400, "body", "an object", "Array")]
    public async Task Batch_ThatIsWrong_IsRefusedWithFieldAndRange(string body, int status, string field, string range, string received)
    {
        await RegisterAsync("west-2");
        HttpResponseMessage answer = await SendAsync("west-2", body);
        using JsonDocument why = JsonDocument.Parse(await TextAsync(answer));
        Assert.Equal((HttpStatusCode)status, answer.StatusCode);
        Assert.Equal((field, range, received), (Text(why, "field"), Text(why, "range"), Text(why, "received")));
        Assert.Equal(field + " must be " + range + "; got " + received + ".", Text(why, "message"));
        Assert.Equal(0, (await host.Driveline("west-2").StatusAsync())!.AcknowledgedThrough);
    }

    [Fact]
    public async Task Batch_TooLong_IsRefused()
    {
        await RegisterAsync("west-3");
        HttpResponseMessage answer = await SendAsync("west-3", "{\"sequence\":1" + new string(' ', 100_000) + "}");
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
        Assert.Contains("body must be at most 100000 bytes; got 100014.", await TextAsync(answer), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Batch_OfAnUnknownDriveline_IsNotFound()
    {
        HttpResponseMessage answer = await SendAsync("nobody", """{"sequence":1,"timeS":[],"speedInRadPerS":[],"torqueNm":[]}""");
        Assert.Equal(HttpStatusCode.NotFound, answer.StatusCode);
        Assert.Contains("driveline must be a registered one; got nobody.", await TextAsync(answer), StringComparison.Ordinal);
        Assert.Equal(HttpStatusCode.NotFound, (await client.GetAsync("/drivelines/nobody")).StatusCode);
        Assert.Equal(HttpStatusCode.BadRequest, (await client.GetAsync("/drivelines/no%20body")).StatusCode);
    }

    [Fact]
    public async Task Batch_AsAForm_IsRefused()
    {
        var form = new StringContent("{}", Encoding.UTF8, "text/plain");
        HttpResponseMessage answer = await client.PostAsync("/drivelines/west-4/batches", form);
        Assert.Equal(HttpStatusCode.UnsupportedMediaType, answer.StatusCode);
    }

    [Theory]
    [InlineData("another key", "another one")]
    [InlineData("", "another one")]
    [InlineData(null, "none")]
    public async Task Request_WithoutTheKey_IsRefused(string? key, string received)
    {
        client.DefaultRequestHeaders.Remove("X-Api-Key");
        if (key is not null)
        {
            client.DefaultRequestHeaders.Add("X-Api-Key", key);
        }

        foreach (string path in new[] { "/", "/drivelines/west-5" })
        {
            HttpResponseMessage answer = await client.GetAsync(path);
            Assert.Equal(HttpStatusCode.Unauthorized, answer.StatusCode);
            Assert.Contains("X-Api-Key must be the key of this fleet; got " + received, await TextAsync(answer), StringComparison.Ordinal);
        }

        Assert.Equal(HttpStatusCode.Unauthorized, (await SendAsync("west-5", "{}")).StatusCode);
        Assert.Equal("ok", await client.GetStringAsync("/health"));
    }

    [Fact]
    public async Task Page_WithTheKeyAsPassword_ShowsDrivelinesAlarmsAndSilos()
    {
        await RegisterAsync("west-6");
        foreach (TelemetryBatch batch in TestFleet.Batches(3, 3, 300))
        {
            await host.Driveline("west-6").TakeAsync(batch);
        }

        client.DefaultRequestHeaders.Remove("X-Api-Key");
        client.DefaultRequestHeaders.Authorization = new AuthenticationHeaderValue(
            "Basic", Convert.ToBase64String(Encoding.UTF8.GetBytes("anyone:" + HttpFleet.Key)));
        string page = string.Empty;
        const string whole = "<td data-head=\"Batches stored\">3</td>";
        for (int k = 0; k < 100 && !page.Contains(whole, StringComparison.Ordinal); k++)
        {
            await Task.Delay(100);
            page = await client.GetStringAsync("/");
        }

        Assert.Contains(whole, page, StringComparison.Ordinal);
        Assert.Contains(" on 1 silo, ", page, StringComparison.Ordinal);
        Assert.Contains(">west-6<", page, StringComparison.Ordinal);
        Assert.Contains(">west-6/", page, StringComparison.Ordinal);
        Assert.Contains(host.Name, page, StringComparison.Ordinal);
        Assert.DoesNotContain("<script", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Requests_OfOneDriveline_AreLimited()
    {
        HttpResponseMessage[] answers = await Task.WhenAll(Enumerable.Range(0, 300).Select(_ => client.GetAsync("/drivelines/west-7")));
        Assert.InRange(answers.Count(a => a.StatusCode == HttpStatusCode.TooManyRequests), 1, 100);
        Assert.Equal(HttpStatusCode.NotFound, (await client.GetAsync("/drivelines/west-8")).StatusCode);
    }

    private static string Text(JsonDocument document, string name) => document.RootElement.GetProperty(name).GetString()!;

    private static long Whole(JsonDocument document, string name) => document.RootElement.GetProperty(name).GetInt64();

    private static Task<string> TextAsync(HttpResponseMessage answer) => answer.Content.ReadAsStringAsync();

    private Task<HttpResponseMessage> RegisterAsync(string name) => client.PutAsync("/drivelines/" + name, Json(
        "{\"case\":" + TestFleet.CaseJson("dunmarsh-clutch-well-set") + ",\"samplePeriodS\":0.1,\"overloadNm\":900}"));

    private Task<HttpResponseMessage> SendAsync(string name, string body) =>
        client.PostAsync("/drivelines/" + name + "/batches", Json(body));

    private static StringContent Json(string text) => new(text, Encoding.UTF8, "application/json");
}
