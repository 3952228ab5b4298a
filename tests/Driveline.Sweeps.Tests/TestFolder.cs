namespace Driveline.Sweeps.Tests;

/// <summary>A folder that is taken away with what is in it.</summary>
internal sealed class TestFolder : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("sweeps").FullName;

    public string this[string name] => Path.Combine(folder, name);

    public IEnumerable<string> Files => Directory.EnumerateFileSystemEntries(folder).Select(f => Path.GetFileName(f)!);

    public void Dispose() => Directory.Delete(folder, recursive: true);
}
