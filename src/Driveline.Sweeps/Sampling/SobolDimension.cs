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
    private const ulong Middle = 0x4120_0000_0000_0001;
    private const double Base = 1 << 19;

    private readonly uint[] numbers;
    private readonly uint shift;
    private readonly ulong[] table = new ulong[Block];

    /// <param name="numbers">Its direction numbers, scrambled or not.</param>
    /// <param name="shift">Digital shift; 0 for none.</param>
    public SobolDimension(uint[] numbers, uint shift)
    {
        this.numbers = numbers;
        this.shift = shift;
        for (uint k = 0; k < Block; k++)
        {
            table[k] = ((ulong)Unshifted(k) << 1) | Middle;
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
            Middles(table.AsSpan(from, length), shifted, into.Slice(done, length));
            done += length;
            from = 0;

            // From one block to the next two digits of the Gray code turn: that of the highest bit that changes, and the one below the
            // block.
            block++;
            int turned = BlockBits + BitOperations.TrailingZeroCount(block);
            shifted ^= turned < JoeKuo.Bits ? numbers[turned] ^ numbers[BlockBits - 1] : 0;
        }
    }

    // The digits are the fraction of a number of 2^19 to 2^20 already: an exclusive or and a difference, and no rounding.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Middles(ReadOnlySpan<ulong> digits, uint shifted, Span<double> into)
    {
        int k = 0;
        ulong turned = (ulong)shifted << 1;
        var shift = new Vector<ulong>(turned);
        var offset = new Vector<double>(Base);
        ref ulong source = ref MemoryMarshal.GetReference(digits);
        ref double target = ref MemoryMarshal.GetReference(into);
        for (; k <= digits.Length - Vector<ulong>.Count; k += Vector<ulong>.Count)
        {
            Vector<double> number = Vector.AsVectorDouble(Vector.LoadUnsafe(ref source, (nuint)k) ^ shift);
            (number - offset).StoreUnsafe(ref target, (nuint)k);
        }

        for (; k < digits.Length; k++)
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
