using System.Text;

namespace RigLang.Fuzzing.Targets;

/// <summary>What must hold for every input, and how input bytes become text.</summary>
internal static class Promise
{
    /// <summary>The text of the bytes as the program reads a file: what is no UTF-8 becomes U+FFFD.</summary>
    public static string Text(ReadOnlySpan<byte> input) => Encoding.UTF8.GetString(input);

    public static void Holds(bool promise, string words)
    {
        if (!promise)
        {
            throw new BrokenPromiseException(words);
        }
    }
}

/// <summary>Something that must always hold didn't.</summary>
public sealed class BrokenPromiseException(string words) : Exception(words);
