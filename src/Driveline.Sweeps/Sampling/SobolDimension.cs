using System.Numerics;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;

namespace Driveline.Sweeps.Sampling;

/// <summary>One dimension of Sobol points in Gray-code order: any point at once, or many in a row by vectors.</summary>
/// <remarks>
/// x_i = v_1 g_1 ⊕ v_2 g_2 ⊕ …, with g the bits of i ⊕ (i >> 1). Since both are linear, the points of a block of 256 are those of the
/// first block, shifted by one number: a table, an exclusive or and a conversion a point.
/// </remarks>
internal sealed class SobolDimension
{
    private const int Block = 256;

    private readonly uint[] numbers;
    private readonly uint shift;
    private readonly uint[] table = new uint[Block];

    /// <param name="numbers">Its direction numbers, scrambled or not.</param>
    /// <param name="shift">Digital shift; 0 for none.</param>
    public SobolDimension(uint[] numbers, uint shift)
    {
        this.numbers = numbers;
        this.shift = shift;
        for (uint k = 0; k < Block; k++)
        {
            table[k] = Unshifted(k);
        }
    }

    /// <summary>The 32 digits of a point.</summary>
    public uint this[uint index] => Unshifted(index) ^ shift;

    /// <summary>Middles of the cells of consecutive points: (x + 1/2) / 2^32, in (0, 1).</summary>
    public void Fill(uint first, Span<double> into)
    {
        int done = 0;
        while (done < into.Length)
        {
            uint at = first + (uint)done;
            int from = (int)(at % Block);
            int length = Math.Min(Block - from, into.Length - done);
            Middles(table.AsSpan(from, length), this[at - (uint)from], into.Slice(done, length));
            done += length;
        }
    }

    // The digits become the fraction of a number of 2^19 to 2^20: no conversion of whole numbers, and no rounding.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private static void Middles(ReadOnlySpan<uint> digits, uint shifted, Span<double> into)
    {
        const ulong Middle = 0x4120_0000_0000_0001;
        const double Base = 1 << 19;
        int k = 0;
        if (digits.Length >= Vector<uint>.Count)
        {
            var shift = new Vector<uint>(shifted);
            var middle = new Vector<ulong>(Middle);
            var offset = new Vector<double>(Base);
            ref uint source = ref MemoryMarshal.GetReference(digits);
            ref double target = ref MemoryMarshal.GetReference(into);
            for (; k <= digits.Length - Vector<uint>.Count; k += Vector<uint>.Count)
            {
                Vector<uint> x = Vector.LoadUnsafe(ref source, (nuint)k) ^ shift;
                Vector.Widen(x, out Vector<ulong> low, out Vector<ulong> high);
                Vector<double> lower = Vector.AsVectorDouble(Vector.ShiftLeft(low, 1) | middle) - offset;
                Vector<double> upper = Vector.AsVectorDouble(Vector.ShiftLeft(high, 1) | middle) - offset;
                lower.StoreUnsafe(ref target, (nuint)k);
                upper.StoreUnsafe(ref target, (nuint)(k + Vector<double>.Count));
            }
        }

        for (; k < digits.Length; k++)
        {
            ulong x = digits[k] ^ shifted;
            into[k] = BitConverter.UInt64BitsToDouble((x << 1) | Middle) - Base;
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
