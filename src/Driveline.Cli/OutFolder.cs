using System.Text;

namespace Driveline.Cli;

/// <summary>Writes files into the folder of --out: each whole or not at all, never over a folder.</summary>
internal static class OutFolder
{
    /// <summary>Writes one file, whole or not at all.</summary>
    /// <exception cref="BadInputException">It is a folder or cannot be written.</exception>
    public static void WriteFile(string path, string content, string option)
    {
        if (Directory.Exists(path))
        {
            throw new BadInputException(option + " '" + path + "' is a folder; a file is wanted.");
        }

        try
        {
            WriteWhole(path, content);
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new BadInputException(option + " '" + path + "' cannot be written: " + failed.Message);
        }
    }

    /// <summary>Writes files by name and content, over what is there.</summary>
    /// <exception cref="BadInputException">The folder or a file in it cannot be written.</exception>
    public static void Write(string folder, Terminal terminal, IReadOnlyList<KeyValuePair<string, string>> files) =>
        Write(folder, terminal, files, isForced: true);

    /// <summary>Writes files by name and content: all are there in full before the first takes its name.</summary>
    /// <exception cref="BadInputException">The folder or a file in it cannot be written, or is there and is not forced.</exception>
    public static void Write(string folder, Terminal terminal, IReadOnlyList<KeyValuePair<string, string>> files, bool isForced)
    {
        var whole = new List<(string Temporary, string Path)>();
        try
        {
            if (File.Exists(folder))
            {
                throw new BadInputException("--out '" + folder + "' is a file; a folder is wanted.");
            }

            Directory.CreateDirectory(folder);
            string[] paths = [.. files.Select(f => Path.Combine(folder, f.Key))];
            if (paths.FirstOrDefault(Directory.Exists) is { } taken)
            {
                throw new BadInputException("'" + taken + "' is a folder; nothing was written.");
            }

            if (!isForced && paths.FirstOrDefault(File.Exists) is { } old)
            {
                throw new BadInputException("'" + old + "' is there already; nothing was written. --force writes over it.");
            }

            for (int k = 0; k < paths.Length; k++)
            {
                whole.Add((paths[k] + "." + Guid.NewGuid().ToString("N") + ".tmp", paths[k]));
                File.WriteAllText(whole[k].Temporary, files[k].Value, new UTF8Encoding(false));
            }

            foreach ((string temporary, string path) in whole)
            {
                File.Move(temporary, path, isForced);
                terminal.Progress("Wrote " + path);
            }
        }
        catch (Exception failed) when (failed is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            throw new BadInputException("--out '" + folder + "' cannot be written: " + failed.Message);
        }
        finally
        {
            whole.ForEach(w => File.Delete(w.Temporary));
        }
    }

    private static void WriteWhole(string path, string content)
    {
        string temporary = path + "." + Guid.NewGuid().ToString("N") + ".tmp";
        try
        {
            File.WriteAllText(temporary, content, new UTF8Encoding(false));
            File.Move(temporary, path, overwrite: true);
        }
        finally
        {
            File.Delete(temporary);
        }
    }
}
