namespace Driveline.Fleet.Tests;

/// <summary>One silo with a page and an endpoint, for all tests of a class.</summary>
public sealed class HttpFleet : IAsyncLifetime
{
    public const string Key = "a key of this test";

    internal FleetHost Host { get; private set; } = null!;

    public async Task InitializeAsync()
    {
        FleetOptions options = FleetOptions.Default.WithHttp("http://127.0.0.1:0", Key).WithHttpLimits(100_000, 50);
        Host = await FleetHost.StartAsync(options, null, CancellationToken.None);
    }

    public async Task DisposeAsync() => await Host.DisposeAsync();
}
