namespace Driveline.Cases.Members;

/// <summary>The bytes of a file, read with a limit.</summary>
internal static class FileBytes
{
    /// <summary>Reads a stream to its end; false when there is more than the limit.</summary>
    public static bool TryRead(Stream stream, int most, out byte[] bytes)
    {
        using var whole = new MemoryStream();
        byte[] buffer = new byte[81920];
        int count;
        bytes = [];
        while ((count = stream.Read(buffer, 0, buffer.Length)) > 0)
        {
            whole.Write(buffer, 0, count);
            if (whole.Length > most)
            {
                return false;
            }
        }

        bytes = whole.ToArray();
        return true;
    }

    /// <summary>The bytes without a byte-order mark.</summary>
    public static byte[] WithoutMark(byte[] utf8)
    {
        bool isMarked = utf8.Length >= 3 && utf8[0] == 0xEF && utf8[1] == 0xBB && utf8[2] == 0xBF;
        return isMarked ? utf8.AsSpan(3).ToArray() : utf8;
    }
}
