using System.Buffers.Binary;
using System.Security.Cryptography;
using Driveline.Cli.Telemetry;

namespace Driveline.Cli.Tests;

public class WatchStateTests
{
    // Mark 8, version 4, period 8, unreadable 8: then stands how many samples wait.
    private const int CountAt = 8 + 4 + 8 + 8;

    [Theory]
    [InlineData(-1)]
    [InlineData(1)]
    [InlineData(int.MaxValue)]
    public void Read_OfMoreSamplesThanBytes_IsRefusedBeforeRoomIsMade(int stated)
    {
        byte[] content = Convert.FromBase64String(new WatchState().Write())[..^SHA256.HashSizeInBytes];
        BinaryPrimitives.WriteInt32LittleEndian(content.AsSpan(CountAt), stated);
        string text = Convert.ToBase64String([.. content, .. SHA256.HashData(content)]);
        var error = Assert.Throws<BadInputException>(() => WatchState.Read(text, "w.state"));
        Assert.Equal("--resume 'w.state' cannot be the state of a watch.", Assert.Single(error.Problems));
    }
}
