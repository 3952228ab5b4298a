using Microsoft.Extensions.DependencyInjection;
using Orleans.Storage;

namespace Driveline.Fleet.Tests;

/// <summary>What a store that fails, and two silos of different age, do to states and alarms: nothing.</summary>
public class StoreTests
{
    [Fact]
    public async Task Take_WithWritesThatFail_LosesAndInventsNothing()
    {
        var store = new FaultyStore(everyth: 5);
        var sink = new TestSink();
        void Shared(ISiloBuilder silo) => silo.Services.AddKeyedSingleton<IGrainStorage>("fleet", store);
        await using FleetHost host = await FleetHost.StartAsync(FleetOptions.Default, sink, null, Shared, CancellationToken.None);
        TelemetryBatch[] batches = TestFleet.Batches(21, 60, 40);
        Assert.True((await host.Driveline("south-1").RegisterAsync(TestFleet.Registration())).IsRegistered);
        int again = await Sender.SendAsync(() => host.Driveline("south-1"), batches, 4, TimeSpan.FromSeconds(60));
        (byte[] state, AlarmId[] alarms) = Reference.Of("south-1", batches);
        byte[]? settled = null;
        for (int k = 0; settled is null; k++)
        {
            try
            {
                settled = await host.Driveline("south-1").SettleAsync();
            }
            catch (Exception failed) when (k < 10 && failed is IOException or OrleansException)
            {
                await Task.Delay(50);
            }
        }

        Assert.Equal(state, settled);
        var seen = new SeenAlarms();
        Assert.Equal(alarms, sink.Told.Select(a => a.Id).Where(seen.IsNew));
        Assert.True(store.Failed >= 3 && again >= 3, store.Failed + " writes failed, " + again + " batches were sent again");
    }

    // The first silo stands for an old one: it reads and writes the wide form only. The second is new and writes the wide form until it is
    // told otherwise; stopping one moves all drivelines to the other, as when each node is renewed in its turn.
    [Fact]
    public async Task Upgrade_OneSiloAfterTheOther_KeepsStatesAndAlarms()
    {
        FleetOptions old = FleetOptions.Default.WithStateFormat(StateFormat.Wide).WithNewestFormat(StateFormat.Wide);
        FleetOptions careful = FleetOptions.Default.WithStateFormat(StateFormat.Wide);
        var sink = new TestSink();
        var store = new FaultyStore(int.MaxValue);
        void Shared(ISiloBuilder silo) => silo.Services.AddKeyedSingleton<IGrainStorage>("fleet", store);
        string[] names = [.. Enumerable.Range(0, 12).Select(k => "field-" + k)];
        TelemetryBatch[][] batches = [.. names.Select((_, k) => TestFleet.Batches(k, 24, 30))];

        FleetHost first = await FleetHost.StartAsync(old, sink, null, Shared, CancellationToken.None);
        await Task.WhenAll(names.Select(n => first.Driveline(n).RegisterAsync(TestFleet.Registration())));
        await SendAsync(first, names, batches, 0, 6);
        FleetHost second = await FleetHost.StartAsync(careful, sink, first.Silo, Shared, CancellationToken.None);
        await SendAsync(second, names, batches, 6, 12);
        await first.DisposeAsync();
        await SendAsync(second, names, batches, 12, 16);
        await second.DisposeAsync();

        FleetHost third = await FleetHost.StartAsync(FleetOptions.Default, sink, null, Shared, CancellationToken.None);
        FleetHost fourth = await FleetHost.StartAsync(careful, sink, third.Silo, Shared, CancellationToken.None);
        await SendAsync(fourth, names, batches, 16, 24);
        var seen = new SeenAlarms();
        ILookup<string, AlarmId> told = sink.Told.Select(a => a.Id).Where(seen.IsNew).ToLookup(id => id.Driveline);
        for (int k = 0; k < names.Length; k++)
        {
            (byte[] state, AlarmId[] alarms) = Reference.Of(names[k], batches[k]);
            Assert.Equal(state, await third.Driveline(names[k]).SettleAsync());
            Assert.Equal(alarms, told[names[k]]);
        }

        await fourth.DisposeAsync();
        await third.DisposeAsync();
    }

    [Fact]
    public async Task Upgrade_ASiloTooOldForAState_RefusesItAndLeavesIt()
    {
        var store = new FaultyStore(int.MaxValue);
        void Shared(ISiloBuilder silo) => silo.Services.AddKeyedSingleton<IGrainStorage>("fleet", store);
        TelemetryBatch[] batches = TestFleet.Batches(2, 4, 30);
        await using (FleetHost fresh = await FleetHost.StartAsync(FleetOptions.Default, null, null, Shared, CancellationToken.None))
        {
            await fresh.Driveline("east-1").RegisterAsync(TestFleet.Registration());
            await fresh.Driveline("east-1").TakeAsync(batches[0]);
        }

        FleetOptions old = FleetOptions.Default.WithStateFormat(StateFormat.Wide).WithNewestFormat(StateFormat.Wide);
        await using (FleetHost aged = await FleetHost.StartAsync(old, null, null, Shared, CancellationToken.None))
        {
            var error = await Assert.ThrowsAsync<FleetStateException>(() => aged.Driveline("east-1").TakeAsync(batches[1]));
            Assert.Contains("format 2; this silo reads 1 to 1", error.Message, StringComparison.Ordinal);
        }

        await using FleetHost again = await FleetHost.StartAsync(FleetOptions.Default, null, null, Shared, CancellationToken.None);
        Assert.Equal(1, (await again.Driveline("east-1").StatusAsync())!.AcknowledgedThrough);
    }

    private static Task SendAsync(FleetHost host, string[] names, TelemetryBatch[][] batches, int from, int until) =>
        Task.WhenAll(names.Select((name, k) => Sender.SendAsync(
            () => host.Driveline(name), batches[k][..until], 4, TimeSpan.FromSeconds(60))));
}
