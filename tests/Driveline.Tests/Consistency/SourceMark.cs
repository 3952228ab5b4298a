namespace Driveline.Tests.Consistency;

/// <summary>One place in the sources that marks a number.</summary>
/// <param name="Kind">The kind of its basis.</param>
/// <param name="Words">What the basis says; … stands for what is put in when it runs.</param>
/// <param name="Concept">The folder of the concept.</param>
/// <param name="Decides">What the number is for: the summary of the type that holds it.</param>
internal sealed record SourceMark(BasisMark Kind, string Words, string Concept, string Decides);
