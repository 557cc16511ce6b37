using System.Text;

namespace RigLang.Cli.Files;

/// <summary>Replaces a file's text in one step: whoever reads meanwhile, and a power cut, find the old text or the new.</summary>
public static class SafeWrite
{
    /// <summary>Keeps the byte order mark and the permissions. A link stays a link; the file that it leads to is replaced.</summary>
    /// <param name="path">The file.</param>
    /// <param name="text">What it shall hold.</param>
    /// <param name="before">What was read; a file that holds something else by now is left alone.</param>
    /// <returns>Half a sentence on why it couldn't be written; null when it was.</returns>
    public static string? Replace(string path, string text, DiskText before)
    {
        string? temporary = null;
        try
        {
            var target = File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path;
            if (File.GetAttributes(target).HasFlag(FileAttributes.ReadOnly))
            {
                return "it is read-only";
            }

            temporary = Path.Combine(Path.GetDirectoryName(target)!, $".{Path.GetFileName(target)}.{Path.GetRandomFileName()}");
            Write(temporary, text, before.HasMark);
            if (!OperatingSystem.IsWindows())
            {
                File.SetUnixFileMode(temporary, File.GetUnixFileMode(target));
            }

            if (DiskText.Read(target) != before)
            {
                return "it was changed by somebody else meanwhile";
            }

            File.Move(temporary, target, overwrite: true);
            temporary = null;
            return null;
        }
        catch (UnauthorizedAccessException)
        {
            return "you may not write it";
        }
        catch (Exception problem) when (DiskText.Words(problem) is not null)
        {
            return $"it can't be written ({problem.Message.TrimEnd('.')})";
        }
        finally
        {
            Remove(temporary);
        }
    }

    private static void Write(string path, string text, bool hasMark)
    {
        using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write);
        using var writer = new StreamWriter(stream, new UTF8Encoding(hasMark));
        writer.Write(text);
        writer.Flush();
        stream.Flush(flushToDisk: true);
    }

    private static void Remove(string? temporary)
    {
        try
        {
            if (temporary is not null)
            {
                File.Delete(temporary);
            }
        }
        catch (Exception left) when (left is IOException or UnauthorizedAccessException)
        {
            // A file that begins with a point is left behind; the file itself is whole.
        }
    }
}
