using System.Text;

namespace RigLang.Cli.Files;

/// <summary>A file's text as it is on the disk, or why there is none: half a sentence.</summary>
/// <param name="Text">Without a byte order mark.</param>
/// <param name="HasMark">Whether the file begins with one.</param>
public sealed record DiskText(string? Text, string? Problem, bool HasMark)
{
    /// <summary>Longer files aren't read: no rig is that long, and an editor would have to hold it.</summary>
    public const long LongestFile = 32L * 1024 * 1024;

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true);

    public static DiskText Read(string path)
    {
        try
        {
            if (Directory.Exists(path))
            {
                return None("it is a folder");
            }

            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, bufferSize: 1);
            return Read(stream);
        }
        catch (Exception problem) when (Words(problem) is not null)
        {
            return None(Words(problem)!);
        }
    }

    /// <summary>Reads to the end. Throws what the stream throws.</summary>
    public static DiskText Read(Stream stream)
    {
        var bytes = ReadBytes(stream);
        return bytes is null ? None($"it is longer than {LongestFile / (1024 * 1024)} MB, and no such file is read") : Decode(bytes);
    }

    /// <summary>Null for what isn't a trouble with the file.</summary>
    public static string? Words(Exception problem) => problem switch
    {
        FileNotFoundException or DirectoryNotFoundException => "no such file",
        UnauthorizedAccessException or System.Security.SecurityException => "you may not read it",
        PathTooLongException => "its path is too long",
        IOException io => $"it can't be read ({io.Message.TrimEnd('.')})",
        NotSupportedException or ArgumentException => "that is no path of a file",
        _ => null,
    };

    private static DiskText Decode(ReadOnlySpan<byte> bytes)
    {
        if (bytes is [0xFF, 0xFE, ..] or [0xFE, 0xFF, ..])
        {
            return None("it is UTF-16; save it as UTF-8");
        }

        var hasMark = bytes is [0xEF, 0xBB, 0xBF, ..];
        var text = hasMark ? bytes[3..] : bytes;
        if (text.IndexOf((byte)0) is var zero and >= 0)
        {
            return None($"it isn't text: line {LineAt(text, zero)} holds a zero byte");
        }

        try
        {
            return new DiskText(Utf8.GetString(text), null, hasMark);
        }
        catch (DecoderFallbackException wrong)
        {
            return None($"line {LineAt(text, wrong.Index)} isn't UTF-8; save it as UTF-8");
        }
    }

    private static int LineAt(ReadOnlySpan<byte> text, int index) => 1 + text[..Math.Clamp(index, 0, text.Length)].Count((byte)'\n');

    private static byte[]? ReadBytes(Stream stream)
    {
        var length = stream.CanSeek ? stream.Length : 0;
        if (length > LongestFile)
        {
            return null;
        }

        using var bytes = new MemoryStream((int)length);
        var part = new byte[32 * 1024];
        for (int read; (read = stream.Read(part)) > 0;)
        {
            if (bytes.Length + read > LongestFile)
            {
                return null;
            }

            bytes.Write(part, 0, read);
        }

        return bytes.ToArray();
    }

    private static DiskText None(string problem) => new(null, problem, false);
}
