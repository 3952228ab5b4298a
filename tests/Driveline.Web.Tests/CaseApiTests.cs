using System.Net;
using System.Text.Json.Nodes;
using Driveline.Cases.Results;
using Json.Schema;

namespace Driveline.Web.Tests;

public class CaseApiTests(WebHost host) : IClassFixture<WebHost>
{
    [Theory]
    [InlineData("/api/assess", ResultKind.Assess)]
    [InlineData("/api/advise", ResultKind.Advise)]
    [InlineData("/api/choose", ResultKind.Choose)]
    public async Task Post_AGoodCase_AnswersByItsSchema(string path, ResultKind kind)
    {
        using HttpResponseMessage answer = await host.Post(path, WebHost.Case("thornbeck-bolt-right"));
        string json = await answer.Content.ReadAsStringAsync();
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal("application/json", answer.Content.Headers.ContentType?.MediaType);
        using var read = System.Text.Json.JsonDocument.Parse(json);
        Assert.True(JsonSchema.FromText(ResultSchema.Json(kind)).Evaluate(read.RootElement).IsValid);
    }

    [Theory]
    [InlineData("/api/ladder.svg", "image/svg+xml", "</svg>")]
    [InlineData("/api/letter.html", "text/html", "Take care")]
    [InlineData("/api/quote.html?stock=3/8-16 UNC, SAE 5", "text/html", "3/8-16 UNC")]
    public async Task Post_AGoodCase_AnswersAsPictureOrPage(string path, string type, string part)
    {
        using HttpResponseMessage answer = await host.Post(path, WebHost.Case("thornbeck-bolt-right"));
        Assert.Equal(type, answer.Content.Headers.ContentType?.MediaType);
        Assert.Contains(part, await answer.Content.ReadAsStringAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Post_AMisspeltMember_TellsPathLineColumnAndTheNearest()
    {
        using HttpResponseMessage answer = await host.Post("/api/assess", "{\n  \"titel\": \"x\" }");
        JsonNode problem = JsonNode.Parse(await answer.Content.ReadAsStringAsync())!;
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
        JsonNode place = problem["places"]![0]!;
        Assert.Equal(
            ("titel", 2, 3, "title"),
            ((string?)place["path"], (int)place["line"]!, (int)place["column"]!, (string?)place["nearest"]));
        Assert.NotNull(problem["errors"]!["titel"]);
    }

    [Theory]
    [InlineData("")]
    [InlineData("[]")]
    [InlineData("{")]
    [InlineData("{\"driveline\":{}}")]
    [InlineData("\u0000")]
    public async Task Post_WhatIsNoCase_IsAProblemAndNoFault(string body)
    {
        using HttpResponseMessage answer = await host.Post("/api/advise", body);
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
    }

    [Theory]
    [InlineData("language=fr")]
    [InlineData("units=cubits")]
    [InlineData("stock=half a bolt")]
    public async Task Post_WithASettingThatIsNone_NamesIt(string query)
    {
        using HttpResponseMessage answer = await host.Post("/api/assess?" + query, WebHost.Case("thornbeck-bolt-right"));
        Assert.Equal(HttpStatusCode.BadRequest, answer.StatusCode);
        JsonNode problem = JsonNode.Parse(await answer.Content.ReadAsStringAsync())!;
        Assert.Contains(query.Split('=')[0], (string?)problem["detail"], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Post_MoreThanTheHostTakes_IsRefusedAsTooLarge()
    {
        using HttpResponseMessage answer = await host.Post("/api/assess", new byte[(256 * 1024) + 1]);
        Assert.Equal(HttpStatusCode.RequestEntityTooLarge, answer.StatusCode);
    }

    [Fact]
    public async Task Post_FasterThanTheRate_IsAskedToComeBack()
    {
        var slow = new WebHost(["--rate", "1"]);
        await slow.InitializeAsync();
        var codes = new List<HttpStatusCode>();
        for (int i = 0; i < 10; i++)
        {
            using HttpResponseMessage answer = await slow.Post("/api/assess", "{}");
            codes.Add(answer.StatusCode);
        }

        await slow.DisposeAsync();
        Assert.Contains(HttpStatusCode.TooManyRequests, codes);
    }

    [Fact]
    public async Task OpenApi_EveryPathAndSchema_Answers()
    {
        JsonNode document = JsonNode.Parse(await host.Client.GetStringAsync(new Uri("/openapi.json", UriKind.Relative)))!;
        foreach ((string path, _) in document["paths"]!.AsObject())
        {
            using HttpResponseMessage answer = await host.Post(path, WebHost.Case("thornbeck-bolt-right"));
            Assert.True(answer.IsSuccessStatusCode, path);
        }

        foreach (string schema in References(document).Where(r => r.StartsWith('/')).Distinct())
        {
            Assert.NotNull(JsonSchema.FromText(await host.Client.GetStringAsync(new Uri(schema, UriKind.Relative))));
        }
    }

    private static IEnumerable<string> References(JsonNode? node) => node switch
    {
        JsonObject all => all.SelectMany(m => m.Key == "$ref" ? [(string)m.Value!] : References(m.Value)),
        JsonArray all => all.SelectMany(References),
        _ => [],
    };
}
