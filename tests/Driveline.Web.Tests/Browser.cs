using System.Diagnostics;
using System.Net.WebSockets;
using System.Text;
using System.Text.Json.Nodes;

namespace Driveline.Web.Tests;

/// <summary>One headless Chromium with one page, spoken to by the DevTools protocol.</summary>
public sealed class Browser : IAsyncLifetime, IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(60);
    private readonly ClientWebSocket socket = new();
    private readonly string profile = Directory.CreateTempSubdirectory("driveline-browser").FullName;
    private Process? process;
    private int calls;

    /// <summary>Where Chromium is; null when it is nowhere.</summary>
    public static string? Program { get; } = (Environment.GetEnvironmentVariable("PATH") ?? string.Empty).Split(Path.PathSeparator)
        .Select(p => Path.Combine(p, "chromium")).FirstOrDefault(File.Exists);

    /// <summary>What the page complained of.</summary>
    public List<string> Complaints { get; } = [];

    /// <summary>What the page asked for.</summary>
    public List<string> Requests { get; } = [];

    public async Task InitializeAsync()
    {
        if (Program is null)
        {
            return;
        }

        process = Process.Start(new ProcessStartInfo(
            Program,
            ["--headless", "--no-sandbox", "--disable-gpu", "--remote-debugging-port=0", "--user-data-dir=" + profile, "about:blank"])
        {
            RedirectStandardError = true,
        })!;
        string? line;
        while ((line = await process.StandardError.ReadLineAsync()) is not null && !line.Contains("ws://", StringComparison.Ordinal))
        {
        }

        var address = new Uri(line![line!.IndexOf("ws://", StringComparison.Ordinal)..]);
        _ = process.StandardError.ReadToEndAsync();
        using var http = new HttpClient();
        JsonNode pages = JsonNode.Parse(await http.GetStringAsync(new Uri($"http://{address.Authority}/json/list")))!;
        string page = (string)pages.AsArray().First(p => (string)p!["type"]! == "page")!["webSocketDebuggerUrl"]!;
        await socket.ConnectAsync(new Uri(page), CancellationToken.None);
        foreach (string domain in new[] { "Page", "Runtime", "Log", "Network" })
        {
            await Call(domain + ".enable", []);
        }
    }

    public async Task DisposeAsync()
    {
        Dispose();
        if (process is not null)
        {
            process.Kill(entireProcessTree: true);
            await process.WaitForExitAsync();
            process.Dispose();
        }

        try
        {
            Directory.Delete(profile, recursive: true);
        }
        catch (IOException)
        {
            // A child may still write its last; the folder is a temporary one.
        }
    }

    public void Dispose() => socket.Dispose();

    public Task Width(int pixels) => Call("Emulation.setDeviceMetricsOverride", new JsonObject
    {
        ["width"] = pixels,
        ["height"] = 800,
        ["deviceScaleFactor"] = 1,
        ["mobile"] = pixels < 600,
    });

    public async Task Open(Uri address)
    {
        await Call("Page.navigate", new JsonObject { ["url"] = address.ToString() });
        await Loaded();
    }

    /// <summary>Presses one key as a keyboard does.</summary>
    public async Task Press(string key)
    {
        (int code, string? text) = key switch
        {
            "Tab" => (9, null),
            "Enter" => (13, "\r"),
            " " => (32, " "),
            _ => throw new ArgumentException("No such key: " + key, nameof(key)),
        };
        foreach (string type in new[] { "keyDown", "keyUp" })
        {
            var stroke = new JsonObject { ["type"] = type, ["key"] = key, ["windowsVirtualKeyCode"] = code };
            if (text is not null && type == "keyDown")
            {
                stroke["text"] = text;
            }

            await Call("Input.dispatchKeyEvent", stroke);
        }
    }

    /// <summary>The value of an expression in the page.</summary>
    public async Task<string> Value(string expression)
    {
        JsonNode answer = await Call("Runtime.evaluate", new JsonObject { ["expression"] = "String(" + expression + ")" });
        return (string?)answer["result"]?["value"] ?? string.Empty;
    }

    /// <summary>Waits until the page has loaded and no other is on its way.</summary>
    public async Task Loaded()
    {
        var clock = Stopwatch.StartNew();
        do
        {
            await Task.Delay(50);
            if (clock.Elapsed > Patience)
            {
                throw new TimeoutException("The page did not load.");
            }
        }
        while (await Value("document.readyState") != "complete");
    }

    /// <summary>Goes on by the keyboard until the focus is on what a selector names.</summary>
    public async Task TabTo(string selector)
    {
        for (int i = 0; i < 60; i++)
        {
            if (await Value($"document.activeElement?.matches('{selector}')") == "true")
            {
                return;
            }

            await Press("Tab");
        }

        throw new InvalidOperationException("The keyboard does not reach " + selector + ".");
    }

    private async Task<JsonNode> Call(string method, JsonObject parameters)
    {
        int id = ++calls;
        var call = new JsonObject { ["id"] = id, ["method"] = method, ["params"] = parameters };
        using var patience = new CancellationTokenSource(Patience);
        await socket.SendAsync(Encoding.UTF8.GetBytes(call.ToJsonString()), WebSocketMessageType.Text, true, patience.Token);
        while (true)
        {
            JsonNode message = await Receive(patience.Token);
            if ((int?)message["id"] == id)
            {
                return message["result"] ?? throw new InvalidOperationException(message.ToJsonString());
            }

            Note(message);
        }
    }

    private void Note(JsonNode message)
    {
        JsonNode? about = message["params"];
        switch ((string?)message["method"])
        {
            case "Runtime.exceptionThrown":
                Complaints.Add(about!["exceptionDetails"]!.ToJsonString());
                break;
            case "Log.entryAdded" when (string?)about!["entry"]!["level"] is "error" or "warning":
                Complaints.Add((string)about["entry"]!["text"]!);
                break;
            case "Network.requestWillBeSent":
                Requests.Add((string)about!["request"]!["url"]!);
                break;
        }
    }

    private async Task<JsonNode> Receive(CancellationToken stop)
    {
        using var whole = new MemoryStream();
        byte[] part = new byte[65536];
        WebSocketReceiveResult read;
        do
        {
            read = await socket.ReceiveAsync(part, stop);
            whole.Write(part, 0, read.Count);
        }
        while (!read.EndOfMessage);
        return JsonNode.Parse(whole.ToArray())!;
    }
}
