using System.IO.Pipelines;
using System.Text;
using Driveline.Cases.TorsionModels;

namespace Driveline.Tests.Cases.TorsionModels;

public class ModelAsyncTests
{
    private static readonly byte[] Utf8 = File.ReadAllBytes(
        Path.Combine(AppContext.BaseDirectory, "cases", "break-between-two.model.json"));

    [Fact]
    public async Task Model_FromAStreamOrAPipe_IsTheSame()
    {
        using var stream = new MemoryStream(Utf8);
        TorsionModelReadResult streamed = await TorsionModelReader.ReadAsync(stream, CancellationToken.None);
        TorsionModelReadResult piped = await TorsionModelReader.ReadAsync(
            PipeReader.Create(new MemoryStream(Utf8)), CancellationToken.None);
        Assert.Equal(TorsionModelReader.Read(Utf8).Model!.Title, streamed.Model!.Title);
        Assert.Equal(streamed.Model.Title, piped.Model!.Title);
    }

    [Fact]
    public async Task Model_Stopped_ThrowsAndGivesNothing()
    {
        var stopped = new CancellationToken(true);
        using var stream = new MemoryStream(Utf8);
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() => TorsionModelReader.ReadAsync(stream, stopped));
        TorsionModelFile model = TorsionModelReader.Read(Encoding.UTF8.GetString(Utf8)).Model!;
        Assert.ThrowsAny<OperationCanceledException>(() => model.Run(stopped));
    }
}
