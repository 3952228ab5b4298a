namespace Driveline.Sweeps.Factors;

/// <summary>Correlates independent shares by a Gaussian copula: normal scores times the lower Cholesky factor of the matrix.</summary>
/// <remarks>
/// The matrix is the correlation of the normal scores; Spearman's rank correlation of the values is then (6/π) asin(ρ/2).
/// </remarks>
internal sealed class Copula
{
    private readonly double[][] lower;

    private Copula(double[][] lower) => this.lower = lower;

    /// <summary>The copula of a matrix; null, with the reason, when it is no correlation matrix.</summary>
    public static Copula? Of(double[][] matrix, int factors, out string? problem)
    {
        problem = Shape(matrix, factors);
        if (problem is not null)
        {
            return null;
        }

        var lower = new double[factors][];
        for (int i = 0; i < factors; i++)
        {
            lower[i] = new double[i + 1];
            for (int j = 0; j <= i; j++)
            {
                double sum = matrix[i][j];
                for (int k = 0; k < j; k++)
                {
                    sum -= lower[i][k] * lower[j][k];
                }

                if (i == j && sum <= 1e-12)
                {
                    problem = FormattableString.Invariant(
                        $"The correlation matrix must be positive definite; rows 1 to {i + 1} contradict each other (pivot {sum:G6}).");
                    return null;
                }

                lower[i][j] = i == j ? Math.Sqrt(sum) : sum / lower[j][j];
            }
        }

        return new Copula(lower);
    }

    /// <summary>Correlates the columns, in place.</summary>
    public void Apply(int count, double[][] columns) => Apply(0, count, columns);

    /// <summary>Correlates some rows of the columns, in place.</summary>
    public void Apply(int first, int count, double[][] columns)
    {
        Span<double> scores = stackalloc double[lower.Length];
        for (int k = first; k < first + count; k++)
        {
            for (int i = 0; i < lower.Length; i++)
            {
                scores[i] = NormalCurve.Quantile(columns[i][k]);
            }

            for (int i = 0; i < lower.Length; i++)
            {
                double sum = 0;
                for (int j = 0; j <= i; j++)
                {
                    sum += lower[i][j] * scores[j];
                }

                columns[i][k] = NormalCurve.Chance(sum);
            }
        }
    }

    private static string? Shape(double[][] matrix, int factors)
    {
        if (matrix.Length != factors || matrix.Any(row => row.Length != factors))
        {
            return FormattableString.Invariant(
                $"The correlation matrix must have {factors} rows of {factors} numbers, one for each factor; got {matrix.Length} rows of ")
                + string.Join(", ", matrix.Select(r => r.Length).Distinct()) + ".";
        }

        for (int i = 0; i < factors; i++)
        {
            for (int j = 0; j < factors; j++)
            {
                double value = matrix[i][j];
                if (i == j ? value != 1 : !(value > -1 && value < 1))
                {
                    return FormattableString.Invariant($"Row {i + 1}, column {j + 1} of the correlation matrix must be ")
                        + (i == j ? "1" : "above -1 and below 1") + FormattableString.Invariant($"; got {value:G6}.");
                }

                if (value != matrix[j][i])
                {
                    return FormattableString.Invariant($"The correlation matrix must be symmetric; row {i + 1}, column {j + 1} is ")
                        + FormattableString.Invariant($"{value:G6} and its mirror {matrix[j][i]:G6}.");
                }
            }
        }

        return null;
    }
}
