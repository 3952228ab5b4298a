using Driveline.Monitoring;
using UnitsNet;

namespace Driveline.Fleet.Tests;

/// <summary>Grains in a silo of the test's own process, without any set-up.</summary>
public sealed class DrivelineGrainTests : IAsyncLifetime
{
    private readonly TestSink sink = new();
    private FleetHost host = null!;

    public async Task InitializeAsync() =>
        host = await FleetHost.StartAsync(FleetOptions.Default.WithTellWithin(TimeSpan.FromSeconds(1)), sink, CancellationToken.None);

    public async Task DisposeAsync() => await host.DisposeAsync();

    [Fact]
    public async Task Take_BatchesInAnyOrder_GivesStateAndAlarmsOfOneLedger()
    {
        TelemetryBatch[] batches = TestFleet.Batches(4, 24, 50);
        IDrivelineGrain driveline = host.Driveline("north-1");
        Assert.True((await driveline.RegisterAsync(TestFleet.Registration())).IsNew);
        var order = new Random(9);
        foreach (TelemetryBatch batch in batches.Chunk(8).SelectMany(some => some.OrderBy(_ => order.Next())).Concat(batches))
        {
            await driveline.TakeAsync(batch);
        }

        byte[]? state = await driveline.SettleAsync();
        (byte[] expected, AlarmId[] alarms) = Reference.Of("north-1", batches);
        Assert.Equal(expected, state);
        Assert.Equal(alarms, sink.Told.Where(a => a.Id.Driveline == "north-1").Select(a => a.Id));
        DrivelineStatus status = (await driveline.StatusAsync())!;
        Assert.Equal((24, 0, 1200), (status.AcknowledgedThrough, status.OpenAlarms, status.Samples));
        Assert.InRange(status.StateBytes, 200, 4096);
    }

    [Fact]
    public async Task Take_OfManyAtOnce_AcknowledgesAllOrSaysBusy()
    {
        TelemetryBatch[] batches = TestFleet.Batches(5, 40, 20);
        IDrivelineGrain driveline = host.Driveline("north-2");
        await driveline.RegisterAsync(TestFleet.Registration());
        int rounds = 0;
        BatchAnswer[] answers;
        do
        {
            answers = await Task.WhenAll(batches.Select(driveline.TakeAsync));
            Assert.All(answers, a => Assert.True(a.Outcome != BatchOutcome.Refused || a.Refusal!.Field == "sequence", a.ToString()));
        }
        while (++rounds < 100 && answers.Any(a => !a.IsAcknowledged && a.Refusal is null));
        Assert.Equal(40, (await driveline.StatusAsync())!.AcknowledgedThrough);
    }

    // What the README of the package prints.
    [Fact]
    public async Task Take_OnceTwiceAndTooEarly_SaysWhatIsStored()
    {
        IDrivelineGrain driveline = host.Driveline("north-7");
        var registration = DrivelineRegistration.Of("{}", Duration.FromSeconds(0.1)).WithOverload(Torque.FromNewtonMeters(900));
        Assert.True((await driveline.RegisterAsync(registration)).IsNew);
        var batch = TelemetryBatch.Of(1, [new TorqueSample(timeS: 0.1, speedInRadPerS: 56, torqueNm: 310)]);
        Assert.Equal("Taken, stored through 1", (await driveline.TakeAsync(batch)).ToString());
        Assert.Equal("Repeated, stored through 1", (await driveline.TakeAsync(batch)).ToString());
        BatchAnswer early = await driveline.TakeAsync(TelemetryBatch.Of(3, []));
        Assert.Equal("Waiting, stored through 1, waiting for 2 to 2", early.ToString());
    }

    [Fact]
    public async Task Take_OfAnUnknownDriveline_IsRefused()
    {
        BatchAnswer answer = await host.Driveline("nobody").TakeAsync(TestFleet.Batches(1, 1, 5)[0]);
        Assert.Equal("driveline must be a registered one; got nobody.", answer.ToString());
        Assert.Null(await host.Driveline("nobody").StatusAsync());
    }

    [Fact]
    public async Task Take_WhileTheSinkFails_AcknowledgesAndTellsLater()
    {
        bool fails = true;
        sink.Before = _ => fails ? throw new IOException("no line") : Task.CompletedTask;
        TelemetryBatch[] batches = TestFleet.Batches(6, 4, 200);
        IDrivelineGrain driveline = host.Driveline("north-3");
        await driveline.RegisterAsync(TestFleet.Registration());
        foreach (TelemetryBatch batch in batches)
        {
            Assert.True((await driveline.TakeAsync(batch)).IsAcknowledged);
        }

        Assert.Empty(sink.Told);
        Assert.True((await driveline.StatusAsync())!.OpenAlarms > 0);
        fails = false;
        (byte[] expected, AlarmId[] alarms) = Reference.Of("north-3", batches);
        Assert.Equal(expected, await driveline.SettleAsync());
        Assert.Equal(alarms, sink.Told.Select(a => a.Id));
    }

    [Fact]
    public async Task Register_AgainOrWithOtherFacts_KeepsTheFirst()
    {
        IDrivelineGrain driveline = host.Driveline("north-4");
        Assert.True((await driveline.RegisterAsync(TestFleet.Registration())).IsNew);
        Assert.False((await driveline.RegisterAsync(TestFleet.Registration())).IsNew);
        RegistrationAnswer other = await driveline.RegisterAsync(TestFleet.Registration().WithSpeedRatio(2));
        Assert.Equal(["'north-4' is registered with other facts; remove it first."], other.Problems);
        await driveline.RemoveAsync();
        Assert.True((await driveline.RegisterAsync(TestFleet.Registration().WithSpeedRatio(2))).IsNew);
    }

    [Theory]
    [InlineData("{", "line 1")]
    [InlineData("{}", "At what torque the protection of the case acts is not known")]
    public async Task Register_ABadCase_SaysWhatIsWrong(string json, string expected)
    {
        var registration = DrivelineRegistration.Of(json, Duration.FromSeconds(0.1));
        RegistrationAnswer answer = await host.Driveline("north-5").RegisterAsync(registration);
        Assert.False(answer.IsRegistered);
        Assert.Contains(expected, answer.Problems[0], StringComparison.Ordinal);
    }

    [Fact]
    public async Task Register_ABadName_IsRefused()
    {
        RegistrationAnswer answer = await host.Driveline("a b").RegisterAsync(TestFleet.Registration());
        Assert.Contains("The name must have 1 to 64", answer.Problems[0], StringComparison.Ordinal);
    }
}
