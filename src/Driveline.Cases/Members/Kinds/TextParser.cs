namespace Driveline.Cases.Members;

/// <summary>Reads a text as a type of the core: gives the value, or says what is wrong.</summary>
internal delegate bool TextParser<T>(string? text, out T? value, out string? problem)
    where T : class;
