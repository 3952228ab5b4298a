namespace Driveline.Cases.Results;

/// <content>What stands in a result again and again: it is copied from where it was written first.</content>
internal sealed partial class ResultWriter
{
    private const int MostRepeats = 16;

    private readonly object[] repeats = new object[MostRepeats];
    private readonly int[] begins = new int[MostRepeats];
    private readonly int[] ends = new int[MostRepeats];
    private int repeatCount;

    /// <summary>True when nothing depends on where a value stands, so that it may be copied from elsewhere.</summary>
    public bool IsCompact => !isIndented;

    /// <summary>Where the next byte is written.</summary>
    public int Position => length;

    /// <summary>What is written from a position on, to be kept.</summary>
    public byte[] From(int begin) => room.AsSpan(begin, length - begin).ToArray();

    /// <summary>Writes an object that was kept.</summary>
    public void Kept(byte[] json)
    {
        Append(json);
        isFirst = false;
    }

    /// <summary>Writes the same thing as before; false when it was not written yet.</summary>
    public bool TryRepeat(object thing)
    {
        for (int k = 0; k < repeatCount; k++)
        {
            if (ReferenceEquals(repeats[k], thing))
            {
                int count = ends[k] - begins[k];
                Reserve(count);
                room.AsSpan(begins[k], count).CopyTo(room.AsSpan(length));
                length += count;
                isFirst = false;
                return true;
            }
        }

        return false;
    }

    /// <summary>Remembers that a thing is written from a position up to here.</summary>
    public void Remember(object thing, int begin)
    {
        if (repeatCount < MostRepeats)
        {
            repeats[repeatCount] = thing;
            begins[repeatCount] = begin;
            ends[repeatCount++] = length;
        }
    }

    private void Forget()
    {
        Array.Clear(repeats, 0, repeatCount);
        repeatCount = 0;
    }
}
