using System.Runtime.InteropServices;
using System.Runtime.Intrinsics;

namespace Driveline.Sweeps.Statistics;

/// <summary>How many numbers of a group are known, their mean, and the sum of the squares of what they are apart from it.</summary>
internal readonly record struct ValueSummary(
    long NotKnown, long PlusInfinities, long MinusInfinities, long Finite, double Mean, double Squares)
{
    /// <summary>The summary of a group. It adds in four lanes on every processor, so that the bits are the same.</summary>
    public static ValueSummary Of(ReadOnlySpan<double> values)
    {
        if (values.IsEmpty)
        {
            return default;
        }

        double shift = values[0];
        double sum = SumApart(values, shift);
        if (!double.IsFinite(sum))
        {
            return OfSome(values);
        }

        double mean = shift + (sum / values.Length);
        return new ValueSummary(0, 0, 0, values.Length, mean, SquaresApart(values, mean));
    }

    // Some are not known or without end: one by one.
    private static ValueSummary OfSome(ReadOnlySpan<double> values)
    {
        long notKnown = 0;
        long plus = 0;
        long minus = 0;
        long finite = 0;
        double shift = 0;
        double sum = 0;
        foreach (double value in values)
        {
            if (!double.IsFinite(value))
            {
                notKnown += double.IsNaN(value) ? 1 : 0;
                plus += double.IsPositiveInfinity(value) ? 1 : 0;
                minus += double.IsNegativeInfinity(value) ? 1 : 0;
                continue;
            }

            shift = finite == 0 ? value : shift;
            sum += value - shift;
            finite++;
        }

        double mean = finite > 0 ? shift + (sum / finite) : 0;
        double squares = 0;
        foreach (double value in values)
        {
            double apart = double.IsFinite(value) ? value - mean : 0;
            squares += apart * apart;
        }

        return new ValueSummary(notKnown, plus, minus, finite, mean, squares);
    }

    private static double SumApart(ReadOnlySpan<double> values, double from)
    {
        ReadOnlySpan<Vector256<double>> wide = MemoryMarshal.Cast<double, Vector256<double>>(values);
        Vector256<double> shift = Vector256.Create(from);
        Vector256<double> sums = default;
        foreach (Vector256<double> four in wide)
        {
            sums += four - shift;
        }

        double sum = Vector256.Sum(sums);
        for (int k = wide.Length * Vector256<double>.Count; k < values.Length; k++)
        {
            sum += values[k] - from;
        }

        return sum;
    }

    private static double SquaresApart(ReadOnlySpan<double> values, double from)
    {
        ReadOnlySpan<Vector256<double>> wide = MemoryMarshal.Cast<double, Vector256<double>>(values);
        Vector256<double> shift = Vector256.Create(from);
        Vector256<double> sums = default;
        foreach (Vector256<double> four in wide)
        {
            Vector256<double> apart = four - shift;
            sums += apart * apart;
        }

        double sum = Vector256.Sum(sums);
        for (int k = wide.Length * Vector256<double>.Count; k < values.Length; k++)
        {
            double apart = values[k] - from;
            sum += apart * apart;
        }

        return sum;
    }
}
