namespace Driveline.Web.Sample;

/// <summary>Files that are part of the host.</summary>
internal static class Resource
{
    public static string Text(string name)
    {
        using Stream stream = typeof(Resource).Assembly.GetManifestResourceStream(name)
            ?? throw new InvalidOperationException("The host lacks its file " + name + ".");
        using var reader = new StreamReader(stream);
        return reader.ReadToEnd();
    }
}
