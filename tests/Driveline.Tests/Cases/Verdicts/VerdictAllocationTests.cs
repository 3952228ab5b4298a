using System.Buffers;
using System.Text;
using Driveline.Cases;
using Driveline.Cases.Results;

namespace Driveline.Tests.Cases;

/// <summary>What a case of 2 KB may take of the heap on its way to a verdict, once all is warm. Budgets in bytes, not times.</summary>
public class VerdictAllocationTests
{
    private const int Warm = 200;

    private static readonly byte[] Utf8 = Encoding.UTF8.GetBytes(DemoCases.Json("millbrook-feed-auger"));

    [Fact]
    public void CaseReader_CaseOf2KB_TakesAtMost24KB() => Assert.InRange(Allocated(() => CaseReader.Read(Utf8)), 1, 24_000);

    [Fact]
    public void CaseAssessment_JsonToVerdictJson_TakesAtMost120KB()
    {
        var room = new ArrayBufferWriter<byte>(1 << 16);
        Assert.InRange(Allocated(() =>
        {
            room.ResetWrittenCount();
            VerdictJson.Of(CaseAssessment.Of(Utf8).Verdict()).Write(room);
        }), 1, 120_000);
    }

    private static long Allocated(Action measured)
    {
        for (int k = 0; k < Warm; k++)
        {
            measured();
        }

        long before = GC.GetAllocatedBytesForCurrentThread();
        measured();
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }
}
