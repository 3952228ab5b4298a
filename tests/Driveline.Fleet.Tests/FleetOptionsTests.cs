using Microsoft.Extensions.Configuration;

namespace Driveline.Fleet.Tests;

public class FleetOptionsTests
{
    [Fact]
    public void Options_OfAConfiguration_TakeWhatIsStated()
    {
        FleetOptions options = FleetOptions.Of(Section(("Redis", "127.0.0.1:6379"), ("SiloPort", "11111"), ("StateFormat", "1"),
            ("Url", "http://127.0.0.1:8080"), ("ApiKey", "k"), ("TellWithin", "5")));
        Assert.Equal("127.0.0.1:6379", options.Redis);
        Assert.Equal((11111, 0), (options.SiloPort, options.GatewayPort));
        Assert.Equal((StateFormat.Wide, "http://127.0.0.1:8080", "k"), (options.StateFormat, options.Url, options.ApiKey));
        Assert.Equal(TimeSpan.FromSeconds(5), options.TellWithin);
        Assert.Equal(("driveline", (string?)null), (FleetOptions.Default.Cluster, FleetOptions.Default.Redis));
    }

    [Theory]
    [InlineData("SiloPort", "70000", "SiloPort must be from 0 to 65535; got 70000.")]
    [InlineData("StateFormat", "3", "StateFormat must be from 1 to 2; got 3.")]
    [InlineData("MostBatches", "many", "MostBatches must be from 1 to 1000000; got many.")]
    public void Options_OutOfTheirRange_AreRefused(string name, string value, string expected) =>
        Assert.Equal(expected, Assert.Throws<ArgumentException>(() => FleetOptions.Of(Section((name, value)))).Message);

    [Fact]
    public void Options_SetOutOfTheirRange_AreRefusedAsOfAConfiguration()
    {
        FleetOptions options = FleetOptions.Default;
        Refused("SiloPort must be from 0 to 65535; got -1.", () => options.WithPorts(-1, 0));
        Refused("GatewayPort must be from 0 to 65535; got 65536.", () => options.WithPorts(0, 65536));
        Refused("StateFormat must be from 1 to 2; got 0.", () => options.WithStateFormat(default));
        Refused("MostBatchesEach must be from 1 to 1000; got 0.", () => options.WithRoom(10, 0));
        Refused("TellWithin must be from 0 to 20; got -0.5.", () => options.WithTellWithin(TimeSpan.FromSeconds(-0.5)));
        Refused("TellWithin must be from 0 to 20; got 21.", () => options.WithTellWithin(TimeSpan.FromSeconds(20.1)));
        Refused("RequestsPerSecond must be from 1 to 100000; got 0.", () => options.WithHttpLimits(2048, 0));
        Assert.Equal(TimeSpan.FromSeconds(0.5), options.WithTellWithin(TimeSpan.FromSeconds(0.5)).TellWithin);

        static void Refused(string message, Func<FleetOptions> set) => Assert.Equal(message, Assert.Throws<ArgumentException>(set).Message);
    }

    [Theory]
    [InlineData("http://0.0.0.0:0", "ApiKey must be set where the endpoint listens beyond loopback; Url is http://0.0.0.0:0.")]
    [InlineData("http://*:0", "ApiKey must be set where the endpoint listens beyond loopback; Url is http://*:0.")]
    [InlineData("ftp://127.0.0.1", "Url must be like http://127.0.0.1:8080; got ftp://127.0.0.1.")]
    public async Task Start_ListeningBeyondLoopbackWithoutAKey_IsRefused(string url, string expected)
    {
        var error = await Assert.ThrowsAsync<ArgumentException>(
            () => FleetHost.StartAsync(FleetOptions.Default.WithHttp(url, null), null, CancellationToken.None));
        Assert.Equal(expected, error.Message);
    }

    private static IConfigurationRoot Section(params (string Name, string Value)[] values) => new ConfigurationBuilder()
        .AddInMemoryCollection(values.Select(v => KeyValuePair.Create<string, string?>(v.Name, v.Value))).Build();
}
