using RigLang.Syntax.Tree;

namespace RigLang.Syntax.Checks.Writing;

public static class TabInIndent
{
    public static readonly CheckDeclaration Check = new()
    {
        Code = "RL101",
        Slug = "tab-in-indent",
        Severity = Severity.Warning,
        Summary = "A line is indented with a tab.",
        Why = "Editors draw a tab at different widths, and the indent decides which axle or load a fact belongs to. A tab is read up to the next multiple of four, which may not be what the screen shows.",
        Bad = "vehicle van\n\twheelbase 2.94 m\n",
        Good = "vehicle van\n    wheelbase 2.94 m\n",
        Fix = "Indent with spaces, four to a level. The formatter does it.",
        CanBeAllowed = false,
    };

    internal static LineFinding? Find(string line, int indentLength, int indentColumns)
    {
        var tab = line.AsSpan(0, indentLength).IndexOf('\t');
        if (tab < 0)
        {
            return null;
        }

        var indent = new TextSpan(0, indentLength);
        return new LineFinding(Check, indent, "This line is indented with a tab; indent with spaces, four to a level.", [new LineFix("Indent with spaces", indent, new string(' ', indentColumns))]);
    }
}
