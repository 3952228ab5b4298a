namespace Driveline.Benchmarks.Monitoring;

/// <summary>A turning-point and stack counter as one writes it by hand: three-point rule, ranges and counts into arrays.</summary>
internal static class HandWrittenRainflow
{
    public static int Count(ReadOnlySpan<double> history, double[] stack, double[] ranges, double[] means, double[] counts)
    {
        int top = 0, bottom = 0, cycles = 0;
        for (int k = 0; k < history.Length; k++)
        {
            double value = history[k];
            if (k > 0 && k < history.Length - 1 && (value - history[k - 1]) * (history[k + 1] - value) > 0)
            {
                continue;
            }

            stack[top++] = value;
            while (top - bottom >= 3)
            {
                double x = Math.Abs(stack[top - 1] - stack[top - 2]), y = Math.Abs(stack[top - 2] - stack[top - 3]);
                if (x < y)
                {
                    break;
                }

                ranges[cycles] = y;
                means[cycles] = (stack[top - 2] + stack[top - 3]) / 2;
                if (top - bottom == 3)
                {
                    counts[cycles++] = 0.5;
                    bottom++;
                }
                else
                {
                    counts[cycles++] = 1;
                    stack[top - 3] = stack[top - 1];
                    top -= 2;
                }
            }
        }

        for (int k = bottom + 1; k < top; k++)
        {
            ranges[cycles] = Math.Abs(stack[k] - stack[k - 1]);
            means[cycles] = (stack[k] + stack[k - 1]) / 2;
            counts[cycles++] = 0.5;
        }

        return cycles;
    }

    /// <summary>The same in classes with the four-point rule, point by point, as a stream needs it: a stack, a table of counts.</summary>
    public static int InClasses(ReadOnlySpan<double> history, double classNm, int[] stack, long[] table)
    {
        int top = 0;
        for (int k = 0; k < history.Length; k++)
        {
            int point = (int)Math.Round(history[k] / classNm);
            if (top > 0 && point == stack[top - 1])
            {
                continue;
            }

            if (top > 1 && (stack[top - 1] > stack[top - 2]) == (point > stack[top - 1]))
            {
                stack[top - 1] = point;
                continue;
            }

            while (top >= 4)
            {
                int inner = Math.Abs(stack[top - 2] - stack[top - 3]);
                if (inner > Math.Abs(stack[top - 1] - stack[top - 2]) || inner > Math.Abs(stack[top - 3] - stack[top - 4]))
                {
                    break;
                }

                table[inner]++;
                stack[top - 3] = stack[top - 1];
                top -= 2;
            }

            stack[top++] = point;
        }

        return top;
    }
}
