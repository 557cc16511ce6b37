using System.Collections.Immutable;
using RigLang.Model.Files;
using RigLang.Model.Linking;
using RigLang.Syntax;
using RigLang.Syntax.Tree;

namespace RigLang.Comparing;

/// <summary>A change of text in the state before.</summary>
internal abstract record Step(FileId File)
{
    public abstract Workspace Apply(Workspace workspace);
}

/// <summary>Lines of a declaration are replaced.</summary>
/// <param name="Declaration">As it was.</param>
/// <param name="Line">The first line, counted from the declaration's first.</param>
/// <param name="Count">How many lines go.</param>
/// <param name="Lines">What comes in their place.</param>
internal sealed record LineStep(FileId File, DeclarationSyntax Declaration, int Line, int Count, ImmutableArray<string> Lines) : Step(File)
{
    public override Workspace Apply(Workspace workspace)
    {
        if (workspace.Find(File) is not { } file || file.FirstLineOf(Declaration) is not (>= 0 and var first))
        {
            return workspace;
        }

        var start = first + Line;
        var all = file.Syntax.Lines;
        if (start < all.Length)
        {
            var text = string.Concat(Lines.Select(line => line + "\n"));
            return workspace.WithOpen(file.With(file.Syntax.WithChange(new LinePosition(start, 0), new LinePosition(Math.Min(start + Count, all.Length - 1), start + Count < all.Length ? 0 : all[^1].Text.Length), text)));
        }

        var end = new LinePosition(all.Length - 1, all[^1].Text.Length);
        return workspace.WithOpen(file.With(file.Syntax.WithChange(end, end, string.Concat(Lines.Select(line => "\n" + line)))));
    }
}

/// <summary>Lines are put at a file's end; where there is no such file, it is made.</summary>
internal sealed record AppendStep(FileId File, string Text) : Step(File)
{
    public override Workspace Apply(Workspace workspace)
    {
        if (workspace.Find(File) is not { } file)
        {
            return workspace.WithOpen(RigFile.Parse(File, Text));
        }

        var all = file.Syntax.Lines;
        var end = new LinePosition(all.Length - 1, all[^1].Text.Length);
        return workspace.WithOpen(file.With(file.Syntax.WithChange(end, end, "\n" + Text)));
    }
}

/// <summary>A track is another one, or gone.</summary>
internal sealed record TrackStep(FileId File, string? Text) : Step(File)
{
    public override Workspace Apply(Workspace workspace) => workspace.WithTrack(File, Text);
}
