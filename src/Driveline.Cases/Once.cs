namespace Driveline.Cases;

/// <summary>
/// A value that is made when it is first asked for, by one thread; a maker that throws or is stopped leaves it to be made again.
/// </summary>
internal sealed class Once<T>
    where T : class
{
    private const int LookAgainMs = 20;

    private T? made;

    /// <summary>What was made; null as long as nothing is.</summary>
    public T? Known => Volatile.Read(ref made);

    public T Get(Func<CancellationToken, T> make, CancellationToken stop)
    {
        if (Volatile.Read(ref made) is { } known)
        {
            return known;
        }

        while (!Monitor.TryEnter(this, LookAgainMs))
        {
            stop.ThrowIfCancellationRequested();
        }

        try
        {
            if (made is null)
            {
                Volatile.Write(ref made, make(stop));
            }

            return made!;
        }
        finally
        {
            Monitor.Exit(this);
        }
    }
}
