using System.Text;
using RigLang.Model.Files;

namespace RigLang.LanguageServer.Documents;

/// <summary>
/// Between the URIs of the protocol and <see cref="FileId"/>. A <c>file:</c> URI becomes a path; any other URI is a name of the editor's own and is kept to the letter.
/// Different spellings of one path (<c>C:</c> and <c>c%3A</c>, a space and <c>%20</c>, <c>localhost</c> and no host) give the same file.
/// </summary>
public static class FileUri
{
    private const string Scheme = "file:";

    /// <summary>
    /// The file a URI means. Never throws: escapes that are none, or whose bytes are no UTF-8, stay as they are written. In a <c>file:</c> URI <c>#</c> and
    /// <c>?</c> belong to the name, since documents have no fragments and some clients don't escape them.
    /// </summary>
    public static FileId Decode(string uri)
    {
        if (!uri.StartsWith(Scheme, StringComparison.OrdinalIgnoreCase))
        {
            return new FileId(uri);
        }

        var rest = uri[Scheme.Length..];
        var host = "";
        if (rest.StartsWith("//", StringComparison.Ordinal))
        {
            var slash = rest.IndexOf('/', 2);
            host = Unescape(slash < 0 ? rest[2..] : rest[2..slash]);
            rest = slash < 0 ? "" : rest[slash..];
        }

        var path = Unescape(rest);
        if (IsDrive(host))
        {
            (host, path) = ("", "/" + host + path); // file://c:/x, one slash short
        }

        if (path.Length > 2 && path[0] == '/' && IsDrive(path[1..3]) && (path.Length == 3 || path[3] is '/' or '\\'))
        {
            return new FileId(char.ToUpperInvariant(path[1]) + path[2..].Replace('\\', '/'));
        }

        return new FileId(host.Length == 0 || host.Equals("localhost", StringComparison.OrdinalIgnoreCase) ? path : "//" + host.ToLowerInvariant() + path);
    }

    /// <summary>The path of a folder, without a slash at its end save for the root.</summary>
    public static string DecodeFolder(string uri)
    {
        var path = Decode(uri).Path;
        return path.Length > 1 && path[^1] == '/' ? path[..^1] : path;
    }

    /// <summary>A URI that <see cref="Decode"/> turns into this file.</summary>
    public static string Encode(FileId file)
    {
        var path = file.Path;
        if (path.StartsWith("//", StringComparison.Ordinal))
        {
            return Scheme + Escape(path);
        }

        if (path.StartsWith('/'))
        {
            return Scheme + "//" + Escape(path);
        }

        return path.Length > 1 && IsDrive(path[..2]) && (path.Length == 2 || path[2] == '/') ? Scheme + "///" + path[..2] + Escape(path[2..]) : path;
    }

    private static bool IsDrive(string text) => text.Length == 2 && char.IsAsciiLetter(text[0]) && text[1] == ':';

    private static string Escape(string path)
    {
        var result = new StringBuilder(path.Length + 16);
        Span<byte> bytes = stackalloc byte[4];
        foreach (var rune in path.EnumerateRunes())
        {
            if (rune.IsAscii && (char.IsAsciiLetterOrDigit((char)rune.Value) || "-._~/".Contains((char)rune.Value)))
            {
                result.Append((char)rune.Value);
                continue;
            }

            foreach (var value in bytes[..rune.EncodeToUtf8(bytes)])
            {
                result.Append('%').Append(value.ToString("X2"));
            }
        }

        return result.ToString();
    }

    private static string Unescape(string text)
    {
        if (!text.Contains('%'))
        {
            return text;
        }

        var result = new StringBuilder(text.Length);
        var bytes = new List<byte>();
        for (var i = 0; i < text.Length;)
        {
            var start = i;
            bytes.Clear();
            while (i + 2 < text.Length && text[i] == '%' && char.IsAsciiHexDigit(text[i + 1]) && char.IsAsciiHexDigit(text[i + 2]))
            {
                bytes.Add((byte)(HexDigit(text[i + 1]) << 4 | HexDigit(text[i + 2])));
                i += 3;
            }

            if (i > start)
            {
                AppendDecoded(result, bytes);
            }
            else
            {
                result.Append(text[i++]);
            }
        }

        return result.ToString();
    }

    private static int HexDigit(char digit) => char.IsAsciiDigit(digit) ? digit - '0' : (digit | 0x20) - 'a' + 10;

    private static void AppendDecoded(StringBuilder result, List<byte> bytes)
    {
        var rest = System.Runtime.InteropServices.CollectionsMarshal.AsSpan(bytes);
        while (!rest.IsEmpty)
        {
            if (Rune.DecodeFromUtf8(rest, out var rune, out var used) == System.Buffers.OperationStatus.Done)
            {
                result.Append(rune.ToString());
            }
            else
            {
                foreach (var value in rest[..used])
                {
                    result.Append('%').Append(value.ToString("X2"));
                }
            }

            rest = rest[used..];
        }
    }
}
