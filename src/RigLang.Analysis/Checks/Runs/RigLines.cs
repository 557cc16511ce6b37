using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;

namespace RigLang.Analysis.Checks.Runs;

/// <summary>Edits that give lines of a rig other values, or write them in where the rig has none of its own.</summary>
internal static class RigLines
{
    private const string Indent = "    ";

    public static IEnumerable<Replacement> Write(Declaration rig, params (FactDeclaration Fact, string Value)[] lines)
    {
        // What the rig inherits stays as it is: a line of its own takes its place.
        bool IsOwn(Fact? line) => line is not null && line.Place.Declaration == rig.Own.Syntax;
        var fresh = new List<string>();
        var anchor = lines.Select(line => line.Fact).Append(RigFacts.Speed).Select(rig.Block.Find).FirstOrDefault(IsOwn) ?? rig.Block.Facts.Where(IsOwn).MaxBy(line => line.Place.Line);
        foreach (var (fact, value) in lines)
        {
            if (rig.Block.Find(fact) is { } line && IsOwn(line))
            {
                yield return new Replacement(line.PlaceOf(Signature.ValueRole), value);
            }
            else
            {
                fresh.Add(Line(anchor, fact.Keyword, value));
            }
        }

        if (fresh.Count > 0)
        {
            yield return new Replacement((anchor?.Place ?? rig.Own.NamePlace).EndOfLine, string.Concat(fresh));
        }
    }

    /// <summary>Indented, and its value in line, as the line above has it.</summary>
    private static string Line(Fact? above, string keyword, string value)
    {
        if (above is null)
        {
            return $"\n{Indent}{keyword} {value}";
        }

        var text = above.Place.Declaration.Lines[above.Place.Line].Text;
        var start = above.Place.Span.Start;
        var behind = start + above.Declaration.Keyword.Length;
        var column = behind + text[behind..].TakeWhile(c => c == ' ').Count() - start;
        return $"\n{text[..start]}{keyword.PadRight(Math.Max(column, keyword.Length + 1))}{value}";
    }
}
