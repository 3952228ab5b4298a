namespace Driveline.Torsion;

/// <content>The modes found, laid out as the rows of a system.</content>
internal sealed partial class ModalSystemOf
{
    private void Assemble(ModalSystem into, int rows)
    {
        int width = 2 * modes;
        into.Fit(n, modes, rows);
        Array.Copy(states, into.States, n);
        Array.Copy(re, into.Re, modes);
        Array.Copy(im, into.Im, modes);
        Array.Copy(forth, into.Forth, width * n);
        for (int s = 0; s < n; s++)
        {
            for (int k = 0; k < width; k++)
            {
                into.Back[(s * width) + k] = back[(k * n) + s];
            }
        }

        Array.Clear(into.Rows, 0, rows * width);
        for (int r = 0; r < rows; r++)
        {
            var row = into.Rows.AsSpan(r * width, width);
            for (int s = 0; s < n; s++)
            {
                double factor = columns[(s * rows) + r];
                if (factor != 0)
                {
                    AddTimes(row, factor, into.Back.AsSpan(s * width, width));
                }
            }
        }

        into.Finish(work + ((long)rows * n * width));
    }

    private static void AddTimes(Span<double> row, double factor, ReadOnlySpan<double> of)
    {
        for (int k = 0; k < row.Length && k < of.Length; k++)
        {
            row[k] += factor * of[k];
        }
    }
}
