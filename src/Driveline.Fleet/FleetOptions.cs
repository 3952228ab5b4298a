using System.Globalization;
using Microsoft.Extensions.Configuration;

namespace Driveline.Fleet;

/// <summary>How a silo of a fleet runs. Immutable; what is left out needs no set-up.</summary>
public sealed class FleetOptions
{
    // By the name of a property; times in seconds.
    private static readonly Dictionary<string, (int Low, int High)> Ranges = new(StringComparer.Ordinal)
    {
        [nameof(SiloPort)] = (0, 65535),
        [nameof(GatewayPort)] = (0, 65535),
        [nameof(StateFormat)] = ((int)StateFormat.Wide, (int)StateFormat.Packed),
        [nameof(MostBatches)] = (1, 1_000_000),
        [nameof(MostBatchesEach)] = (1, 1000),
        [nameof(TellWithin)] = (0, 20),
        [nameof(IdleAfter)] = (120, 10_000_000),
        [nameof(MostBodyBytes)] = (1024, 16_777_216),
        [nameof(RequestsPerSecond)] = (1, 100_000),
    };

    private FleetOptions()
    {
    }

    /// <summary>One silo in this process, states in memory, no page.</summary>
    public static FleetOptions Default { get; } = new();

    /// <summary>Redis for the members of the cluster and the states, e.g. "10.0.0.5:6379,password=…"; null for memory.</summary>
    public string? Redis { get; private set; }

    /// <summary>Silos of one name form one cluster.</summary>
    public string Cluster { get; private set; } = "driveline";

    /// <summary>Port for the other silos; 0 for any that is free.</summary>
    public int SiloPort { get; private set; }

    /// <summary>Port for clients of Orleans; 0 for any that is free.</summary>
    public int GatewayPort { get; private set; }

    /// <summary>The address by which the other silos reach this one; null for loopback.</summary>
    public string? Address { get; private set; }

    /// <summary>The form in which states are stored; all are read.</summary>
    public StateFormat StateFormat { get; private set; } = StateFormat.Packed;

    /// <summary>Batches that one silo works on at once; with more it answers <see cref="BatchOutcome.Busy"/>.</summary>
    public int MostBatches { get; private set; } = 2000;

    /// <summary>Batches of one driveline that wait for its store at once; with more it answers <see cref="BatchOutcome.Busy"/>.</summary>
    public int MostBatchesEach { get; private set; } = 16;

    /// <summary>How long an acknowledgement waits for the alarms of its batch to be told; they are stored before.</summary>
    public TimeSpan TellWithin { get; private set; } = TimeSpan.FromSeconds(2);

    /// <summary>A driveline without batches for so long leaves the memory; its next batch brings it back.</summary>
    public TimeSpan IdleAfter { get; private set; } = TimeSpan.FromHours(2);

    /// <summary>Where the page and the endpoint listen, e.g. "http://127.0.0.1:8080"; null for nowhere.</summary>
    public string? Url { get; private set; }

    /// <summary>The key that callers of the endpoint must have; needed when it listens beyond loopback.</summary>
    public string? ApiKey { get; private set; }

    /// <summary>No body is longer, B.</summary>
    public int MostBodyBytes { get; private set; } = 524_288;

    /// <summary>Requests a second that one driveline may send over HTTP, after a burst of four times as many.</summary>
    public int RequestsPerSecond { get; private set; } = 20;

    /// <summary>True to write warnings of the fleet, and errors of all else, to standard error.</summary>
    public bool LogsWarnings { get; private set; }

    /// <summary>The newest format that is read; older in tests only.</summary>
    internal StateFormat NewestFormat { get; private set; } = StateFormat.Packed;

    /// <summary>Options of a section of a configuration, named as the properties here; times in seconds.</summary>
    /// <exception cref="ArgumentException">A value is none, or out of its range; the message names it.</exception>
    public static FleetOptions Of(IConfiguration section)
    {
        ArgumentNullException.ThrowIfNull(section);
        FleetOptions options = Default;
        return options.With(o =>
        {
            o.Redis = Text(section, nameof(Redis));
            o.Cluster = Text(section, nameof(Cluster)) ?? o.Cluster;
            o.SiloPort = Number(section, nameof(SiloPort), o.SiloPort);
            o.GatewayPort = Number(section, nameof(GatewayPort), o.GatewayPort);
            o.Address = Text(section, nameof(Address));
            o.StateFormat = (StateFormat)Number(section, nameof(StateFormat), (int)o.StateFormat);
            o.MostBatches = Number(section, nameof(MostBatches), o.MostBatches);
            o.MostBatchesEach = Number(section, nameof(MostBatchesEach), o.MostBatchesEach);
            o.TellWithin = TimeSpan.FromSeconds(Number(section, nameof(TellWithin), (int)o.TellWithin.TotalSeconds));
            o.IdleAfter = TimeSpan.FromSeconds(Number(section, nameof(IdleAfter), (int)o.IdleAfter.TotalSeconds));
            o.Url = Text(section, nameof(Url));
            o.ApiKey = Text(section, nameof(ApiKey));
            o.MostBodyBytes = Number(section, nameof(MostBodyBytes), o.MostBodyBytes);
            o.RequestsPerSecond = Number(section, nameof(RequestsPerSecond), o.RequestsPerSecond);
        });
    }

    /// <summary>
    /// Options of the object "Fleet" of a JSON file, and of environment variables such as DRIVELINE_FLEET__REDIS, which come first.
    /// </summary>
    /// <param name="path">The file; null for the environment alone.</param>
    /// <exception cref="ArgumentException">A value is none, or out of its range; or the file cannot be read.</exception>
    public static FleetOptions OfFile(string? path)
    {
        var sources = new ConfigurationBuilder();
        if (path is not null)
        {
            sources.AddJsonFile(Path.GetFullPath(path), optional: false);
        }

        try
        {
            return Of(sources.AddEnvironmentVariables("DRIVELINE_").Build().GetSection("Fleet"));
        }
        catch (Exception failed) when (failed is IOException or InvalidDataException or FormatException)
        {
            throw new ArgumentException("'" + path + "' cannot be read: " + (failed.InnerException ?? failed).Message, failed);
        }
    }

    /// <summary>The same in a cluster over Redis.</summary>
    public FleetOptions WithRedis(string? connection) => With(o => o.Redis = connection);

    /// <summary>The same in a cluster of another name.</summary>
    public FleetOptions WithCluster(string name) => With(o => o.Cluster = name);

    /// <summary>The same on these ports; 0 for any that is free.</summary>
    /// <exception cref="ArgumentException">A port is not from 0 to 65 535.</exception>
    public FleetOptions WithPorts(int silo, int gateway) =>
        With(o => (o.SiloPort, o.GatewayPort) = (Number(nameof(SiloPort), silo), Number(nameof(GatewayPort), gateway)));

    /// <summary>The same, reached by the other silos at an address.</summary>
    public FleetOptions WithAddress(string? address) => With(o => o.Address = address);

    /// <summary>The same with states stored in a form.</summary>
    /// <exception cref="ArgumentException">It is none of them.</exception>
    public FleetOptions WithStateFormat(StateFormat format) =>
        With(o => o.StateFormat = (StateFormat)Number(nameof(StateFormat), (int)format));

    /// <summary>The same with room for so many batches at once, and for so many of one driveline.</summary>
    /// <exception cref="ArgumentException">A number is not from 1 to 1 000 000, or not from 1 to 1000 for one driveline.</exception>
    public FleetOptions WithRoom(int batches, int each) =>
        With(o => (o.MostBatches, o.MostBatchesEach) = (Number(nameof(MostBatches), batches), Number(nameof(MostBatchesEach), each)));

    /// <summary>The same with another time in which alarms are told before the batch is acknowledged.</summary>
    /// <exception cref="ArgumentException">The time is not from 0 to 20 s.</exception>
    public FleetOptions WithTellWithin(TimeSpan time)
    {
        Number(nameof(TellWithin), (int)Math.Clamp(Math.Ceiling(time.TotalSeconds), int.MinValue, int.MaxValue));
        return time < TimeSpan.Zero ? throw OutOfRange(nameof(TellWithin), time.TotalSeconds.ToString(CultureInfo.InvariantCulture))
            : With(o => o.TellWithin = time);
    }

    /// <summary>The same with a page and an endpoint.</summary>
    /// <param name="url">Where it listens; port 0 for any that is free.</param>
    /// <param name="apiKey">The key of callers; null for none, on loopback only.</param>
    public FleetOptions WithHttp(string url, string? apiKey) => With(o => (o.Url, o.ApiKey) = (url, apiKey));

    /// <summary>The same without a page and an endpoint.</summary>
    public FleetOptions WithoutHttp() => With(o => o.Url = null);

    /// <summary>The same with limits for each request.</summary>
    /// <exception cref="ArgumentException">The bytes are not from 1024 to 16 777 216, or the requests not from 1 to 100 000.</exception>
    public FleetOptions WithHttpLimits(int mostBodyBytes, int requestsPerSecond) => With(o => (o.MostBodyBytes, o.RequestsPerSecond) =
        (Number(nameof(MostBodyBytes), mostBodyBytes), Number(nameof(RequestsPerSecond), requestsPerSecond)));

    /// <summary>The same, writing warnings to standard error or not.</summary>
    public FleetOptions WithWarnings(bool areLogged) => With(o => o.LogsWarnings = areLogged);

    internal FleetOptions WithNewestFormat(StateFormat newest) => With(o => o.NewestFormat = newest);

    private static string? Text(IConfiguration section, string name) => section[name] is { Length: > 0 } text ? text : null;

    private static int Number(IConfiguration section, string name, int other) => Text(section, name) is not { } text ? other
        : int.TryParse(text, NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out int value) && IsIn(name, value) ? value
        : throw OutOfRange(name, text);

    private static int Number(string name, int value) =>
        IsIn(name, value) ? value : throw OutOfRange(name, value.ToString(CultureInfo.InvariantCulture));

    private static bool IsIn(string name, int value) => value >= Ranges[name].Low && value <= Ranges[name].High;

    private static ArgumentException OutOfRange(string name, string got) => new(
        string.Create(CultureInfo.InvariantCulture, $"{name} must be from {Ranges[name].Low} to {Ranges[name].High}; got {got}."));

    private FleetOptions With(Action<FleetOptions> change)
    {
        var copy = (FleetOptions)MemberwiseClone();
        change(copy);
        return copy;
    }
}
