using RigLang.Cli.Files;
using RigLang.Syntax.Formatting;
using RigLang.Syntax.Tree;

namespace RigLang.Cli.Formatting;

/// <summary>What came of formatting one file.</summary>
/// <param name="IsChanged">Whether the formatter would have it otherwise.</param>
/// <param name="Problem">Half a sentence, when it couldn't be read or written; the file is as it was then.</param>
internal readonly record struct FormatOutcome(bool IsChanged, string? Problem)
{
    /// <summary>Formats a file in place, or only says whether it would.</summary>
    public static FormatOutcome Of(string path, bool isDry)
    {
        var before = DiskText.Read(path);
        if (before.Text is not { } text)
        {
            return new FormatOutcome(false, before.Problem);
        }

        var formatted = Formatted(text);
        if (formatted == text)
        {
            return new FormatOutcome(false, null);
        }

        return new FormatOutcome(true, isDry ? null : SafeWrite.Replace(path, formatted, before));
    }

    public static string Formatted(string text) => Formatter.FormatText(FileSyntax.Parse(text));
}
