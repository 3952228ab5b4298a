namespace Driveline.Sweeps;

/// <summary>Computes an output of many rows at once. It is called by several threads at once; NaN means not known.</summary>
/// <param name="factors">The columns of the factors.</param>
/// <param name="into">Receives the output, one number a row.</param>
public delegate void ColumnOutput(StudyColumns factors, Span<double> into);
