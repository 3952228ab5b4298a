using System.Runtime.ExceptionServices;

namespace Driveline.Sweeps.Running;

/// <summary>Computes groups on several threads and hands them on in order, a bounded number ahead.</summary>
/// <remarks>
/// Group numbers are given out in order and only to a thread that holds a buffer, so that the group that is waited for always has one:
/// memory is bounded, and nothing can wait for ever. What is handed on does not depend on the number of threads.
/// </remarks>
internal sealed class OrderedGroups<T>
    where T : class
{
    private readonly Stack<T> free;
    private readonly Dictionary<long, T> done = [];
    private readonly GroupRange range;
    private readonly Action<long, T> hand;
    private long next;
    private long wanted;
    private bool isHanding;
    private ExceptionDispatchInfo? failure;

    /// <param name="range">The groups.</param>
    /// <param name="buffers">What groups are computed into; at least one.</param>
    /// <param name="hand">Takes each group, in order, one at a time.</param>
    public OrderedGroups(GroupRange range, IEnumerable<T> buffers, Action<long, T> hand)
    {
        this.range = range;
        this.hand = hand;
        free = new Stack<T>(buffers);
        next = range.First;
        wanted = range.First;
    }

    /// <summary>Runs until every group is handed on.</summary>
    /// <param name="threads">Number of threads, 1 or more.</param>
    /// <param name="compute">Makes what a thread computes with.</param>
    /// <param name="stop">Stops it between rows.</param>
    public void Run(int threads, Func<Action<long, T>> compute, CancellationToken stop)
    {
        if (threads == 1)
        {
            Work(compute(), stop);
        }
        else
        {
            Thread[] all = [.. Enumerable.Range(0, threads).Select(_ => new Thread(() => Work(compute(), stop)) { IsBackground = true })];
            Array.ForEach(all, t => t.Start());
            Array.ForEach(all, t => t.Join());
        }

        failure?.Throw();
    }

    private void Work(Action<long, T> compute, CancellationToken stop)
    {
        try
        {
            while (TryTake(stop, out long group, out T? buffer))
            {
                compute(group, buffer!);
                Give(group, buffer!);
            }
        }
        catch (Exception failed)
        {
            Fail(failed);
        }
    }

    private bool TryTake(CancellationToken stop, out long group, out T? buffer)
    {
        lock (free)
        {
            while (free.Count == 0 && failure is null && next < range.End)
            {
                Monitor.Wait(free);
            }

            stop.ThrowIfCancellationRequested();
            bool isLeft = failure is null && next < range.End;
            group = isLeft ? next++ : -1;
            buffer = isLeft ? free.Pop() : null;
            return isLeft;
        }
    }

    private void Give(long group, T buffer)
    {
        lock (free)
        {
            done.Add(group, buffer);
            if (isHanding)
            {
                return;
            }

            isHanding = true;
        }

        while (true)
        {
            T? ready;
            long at;
            lock (free)
            {
                at = wanted;
                if (failure is not null || !done.Remove(at, out ready))
                {
                    isHanding = false;
                    return;
                }
            }

            hand(at, ready);
            lock (free)
            {
                wanted++;
                free.Push(ready);
                Monitor.PulseAll(free);
            }
        }
    }

    private void Fail(Exception failed)
    {
        lock (free)
        {
            failure ??= ExceptionDispatchInfo.Capture(failed);
            Monitor.PulseAll(free);
        }
    }
}
