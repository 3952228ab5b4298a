using System.Net.Http.Headers;
using System.Text;
using Driveline.Web.Sample;
using Microsoft.AspNetCore.Builder;

namespace Driveline.Web.Tests;

/// <summary>The host on a free port of the loopback, for the length of a class of tests.</summary>
public sealed class WebHost : IAsyncLifetime
{
    private readonly string[] settings;
    private WebApplication? app;

    public WebHost()
        : this(["--rate", "100000"])
    {
    }

    internal WebHost(string[] settings) => this.settings = settings;

    public HttpClient Client { get; private set; } = new();

    public static byte[] Case(string name) => File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "cases", name + ".case.json"));

    public async Task InitializeAsync()
    {
        app = AdviserHost.Build(["--urls", "http://127.0.0.1:0", "--Logging:LogLevel:Default", "None", .. settings]);
        await app.StartAsync();
        Client = new HttpClient { BaseAddress = new Uri(app.Urls.First()) };
    }

    public async Task DisposeAsync()
    {
        Client.Dispose();
        await app!.DisposeAsync();
    }

    public Task<HttpResponseMessage> Post(string path, byte[] body)
    {
        var content = new ByteArrayContent(body);
        content.Headers.ContentType = new MediaTypeHeaderValue("application/json");
        return Client.PostAsync(new Uri(path, UriKind.Relative), content);
    }

    public Task<HttpResponseMessage> Post(string path, string body) => Post(path, Encoding.UTF8.GetBytes(body));
}
