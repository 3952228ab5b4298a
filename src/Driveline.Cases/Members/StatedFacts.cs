namespace Driveline.Cases.Members;

/// <summary>The members read so far of every object that is open, the innermost last; one room for the whole walk.</summary>
internal sealed class StatedFacts
{
    [ThreadStatic]
    private static StatedFact[]? spare;

    private StatedFact[] open;
    private int count;

    public StatedFacts()
    {
        open = spare ?? new StatedFact[64];
        spare = null;
    }

    /// <summary>Where the members of an object that opens now begin.</summary>
    public int Begin => count;

    /// <summary>True when the object that began there has the member already.</summary>
    public bool Has(int begin, int slot)
    {
        for (int k = begin; k < count; k++)
        {
            if (open[k].Slot == slot)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Keeps a member in the order of the table.</summary>
    public void Add(int begin, StatedFact fact)
    {
        if (count == open.Length)
        {
            Array.Resize(ref open, Math.Max(64, 2 * count));
        }

        int at = count++;
        for (; at > begin && open[at - 1].Slot > fact.Slot; at--)
        {
            open[at] = open[at - 1];
        }

        open[at] = fact;
    }

    /// <summary>Ends the object that began there and gives its members.</summary>
    public StatedFact[] End(int begin)
    {
        StatedFact[] own = count == begin ? [] : open.AsSpan(begin, count - begin).ToArray();
        Array.Clear(open, begin, count - begin);
        count = begin;
        return own;
    }

    /// <summary>Leaves the room to the next walk of this thread.</summary>
    public void Leave()
    {
        spare = count == 0 ? open : spare;
        open = [];
    }
}
