using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Driveline.Sweeps.Sampling;

/// <summary>One dimension of Sobol points in Gray-code order: any point at once, or many in a row by vectors.</summary>
/// <remarks>
/// x_i = v_1 g_1 ⊕ v_2 g_2 ⊕ …, with g the bits of i ⊕ (i >> 1). Since both are linear, the points of a block of 512 are those of the
/// first block, shifted by one number: a table, an exclusive or and a difference a point.
/// </remarks>
internal sealed class SobolDimension
{
    private const int BlockBits = 9;
    private const int Block = 1 << BlockBits;
    private const int PerLine = 8;
    private const ulong Middle = 0x4120_0000_0000_0001;
    private const double Base = 1 << 19;

    private readonly uint[] numbers;
    private readonly uint shift;

    // Pinned, so that its points begin at a line of the cache and no load spans two.
    private readonly ulong[] table = GC.AllocateUninitializedArray<ulong>(Block + PerLine, pinned: true);
    private readonly int start;

    /// <param name="numbers">Its direction numbers, scrambled or not.</param>
    /// <param name="shift">Digital shift; 0 for none.</param>
    public SobolDimension(uint[] numbers, uint shift)
    {
        this.numbers = numbers;
        this.shift = shift;
        start = (int)((-Marshal.UnsafeAddrOfPinnedArrayElement(table, 0) / sizeof(ulong)) & (PerLine - 1));
        for (uint k = 0; k < Block; k++)
        {
            table[start + k] = ((ulong)Unshifted(k) << 1) | Middle;
        }
    }

    /// <summary>The 32 digits of a point.</summary>
    public uint this[uint index] => Unshifted(index) ^ shift;

    /// <summary>Middles of the cells of consecutive points: (x + 1/2) / 2^32, in (0, 1).</summary>
    public void Fill(uint first, Span<double> into)
    {
        uint block = first / Block;
        uint shifted = this[block * Block];
        int from = (int)(first % Block);
        for (int done = 0; done < into.Length;)
        {
            int length = Math.Min(Block - from, into.Length - done);
            if (length == Block)
            {
                length = (into.Length - done) & -Block;
                Whole(into.Slice(done, length), ref block, ref shifted);
            }
            else
            {
                Part(table.AsSpan(start + from, length), shifted, into.Slice(done, length));
                shifted ^= Turned(++block);
            }

            done += length;
            from = 0;
        }
    }

    // From one block to the next two digits of the Gray code turn: that of the highest bit that changes, and the one below the block.
    private uint Turned(uint block)
    {
        int turned = BlockBits + BitOperations.TrailingZeroCount(block);
        return turned < JoeKuo.Bits ? numbers[turned] ^ numbers[BlockBits - 1] : 0;
    }

    // The digits are the fraction of a number of 2^19 to 2^20 already: an exclusive or and a difference, and no rounding.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Whole(Span<double> into, ref uint block, ref uint shifted)
    {
        var offset = new Vector<double>(Base);
        nuint width = (nuint)Vector<double>.Count;
        ref ulong source = ref table[start];
        ref double target = ref MemoryMarshal.GetReference(into);
        for (int done = 0; done < into.Length; done += Block)
        {
            var turned = new Vector<ulong>((ulong)shifted << 1);
            for (nuint k = 0; k < Block; k += 4 * width)
            {
                Vector<double> a = Vector.AsVectorDouble(Vector.LoadUnsafe(ref source, k) ^ turned) - offset;
                Vector<double> b = Vector.AsVectorDouble(Vector.LoadUnsafe(ref source, k + width) ^ turned) - offset;
                Vector<double> c = Vector.AsVectorDouble(Vector.LoadUnsafe(ref source, k + (2 * width)) ^ turned) - offset;
                Vector<double> d = Vector.AsVectorDouble(Vector.LoadUnsafe(ref source, k + (3 * width)) ^ turned) - offset;
                a.StoreUnsafe(ref target, k);
                b.StoreUnsafe(ref target, k + width);
                c.StoreUnsafe(ref target, k + (2 * width));
                d.StoreUnsafe(ref target, k + (3 * width));
            }

            target = ref Unsafe.Add(ref target, Block);
            shifted ^= Turned(++block);
        }
    }

    private static void Part(ReadOnlySpan<ulong> digits, uint shifted, Span<double> into)
    {
        ulong turned = (ulong)shifted << 1;
        for (int k = 0; k < digits.Length; k++)
        {
            into[k] = BitConverter.UInt64BitsToDouble(digits[k] ^ turned) - Base;
        }
    }

    private uint Unshifted(uint index)
    {
        uint x = 0;
        uint gray = index ^ (index >> 1);
        while (gray != 0)
        {
            x ^= numbers[BitOperations.TrailingZeroCount(gray)];
            gray &= gray - 1;
        }

        return x;
    }
}
