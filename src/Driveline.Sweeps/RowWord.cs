namespace Driveline.Sweeps;

/// <summary>Computes an output of one row that is a word. It is called by several threads at once; null means not known.</summary>
/// <param name="factors">The factors in the order of the study, in SI; of words, the place in the list.</param>
public delegate string? RowWord(ReadOnlySpan<double> factors);
