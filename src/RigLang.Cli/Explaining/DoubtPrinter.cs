using RigLang.Analysis.Doubts;
using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;
using RigLang.Cli.Terminals;
using RigLang.Editing.Reasons;

namespace RigLang.Cli.Explaining;

/// <summary>Prints how sure a result is, and what it would pay to measure.</summary>
internal static class DoubtPrinter
{
    private const int Indent = 2;

    public static void Print(Printout print, IResult result, Node<double> node, UnitChoice units, CancellationToken cancel)
    {
        if (DoubtTable.Of(result, node.Subject) is not { HalfWidth: > 0 } doubt || units.WriteHalfWidth(result, node.Subject, doubt.Value, doubt.HalfWidth) is not { Length: > 0 } half)
        {
            return;
        }

        print.Line();
        print.Wrapped(0, new Piece($"In doubt by ± {Cells.Tied(half)}", Ink.Strong), ", 19 times out of 20");
        var rows = new Columns("what is uncertain", "good to", "moves it by", "of the doubt");
        foreach (var part in doubt.Parts)
        {
            if (units.WriteHalfWidth(result, node.Subject, doubt.Value, Math.Abs(part.Effect)) is { Length: > 0 } effect)
            {
                var share = DoubtLines.ShareOf(doubt, part);
                rows.Add(
                    part.Fact.Fact.Words.Replace("`", "", StringComparison.Ordinal) + (part.Fact.Origin == ReadOrigin.Estimate ? " (estimated)" : ""),
                    $"± {units.Write(part.Fact.HalfWidth, part.Fact.Kind)}", $"± {effect}", ChanceWords.Percent(share));
            }
        }

        rows.Print(print);
        if (!doubt.Unspread.IsEmpty)
        {
            print.Wrapped(Indent, "  Not in it, since nobody knows how good they are: ", string.Join("; ", doubt.Unspread.Select(fact => fact.Fact.Words)), ".");
        }

        if (doubt.IsCurved && Draws.Of(result, node.Subject, cancel: cancel) is { } draws)
        {
            print.Wrapped(
                Indent, $"  It doesn't go straight with what is uncertain; of {draws.Count} draws 19 in 20 are from ",
                Cells.Tied(units.Write(result, node.Subject, draws.Low)), " to ", Cells.Tied(units.Write(result, node.Subject, draws.High)),
                draws.Failed > 0 ? $"; in {draws.Failed} more it can't be computed." : ".");
        }
    }
}
