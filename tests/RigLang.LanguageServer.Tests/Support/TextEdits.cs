using RigLang.Editing;
using RigLang.Syntax;

namespace RigLang.LanguageServer.Tests.Support;

internal static class TextEdits
{
    internal static string Apply(string text, LineRange? range, string newText) =>
        range is { } stretch ? text[..Offset(text, stretch.Start)] + newText + text[Offset(text, stretch.End)..] : newText;

    private static int Offset(string text, LinePosition position)
    {
        var offset = 0;
        for (var line = 0; line < position.Line; line++)
        {
            offset = text.IndexOf('\n', offset) + 1;
        }

        return offset + position.Character;
    }
}
