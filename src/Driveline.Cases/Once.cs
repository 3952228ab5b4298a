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

    /// <summary>The one that stands in a place, put there when it is first asked for.</summary>
    public static Once<T> In(ref Once<T>? place) => Volatile.Read(ref place)
        ?? Interlocked.CompareExchange(ref place, new Once<T>(), null) ?? place;

    public T Get(Func<CancellationToken, T> make, CancellationToken stop) => Get(static (m, s) => m(s), make, stop);

    /// <summary>The same with what the maker works on, so that it need capture nothing.</summary>
    public T Get<S>(Func<S, CancellationToken, T> make, S from, CancellationToken stop)
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
                Volatile.Write(ref made, make(from, stop));
            }

            return made!;
        }
        finally
        {
            Monitor.Exit(this);
        }
    }
}
