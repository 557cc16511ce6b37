using RigLang.Analysis.Ranking;
using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;
using RigLang.Cli.Terminals;
using RigLang.Editing.Reasons;

namespace RigLang.Cli.Explaining;

/// <summary>Prints what would change a result, the most effective first.</summary>
internal static class MovePrinter
{
    /// <summary>How many are shown if not all are wished for.</summary>
    private const int Most = 10;

    public static void Print(Printout print, IResult result, Node<double> node, UnitChoice units, bool all, CancellationToken cancel)
    {
        var moves = WhatMatters.Of(result, node.Subject, units.System, cancel)
            .Select(move => (Step: MoveWords.Step(move, units), Effect: MoveWords.Effect(move, result, node.Subject, node.Value, units))).Where(move => UnitChoice.Shows(move.Effect)).ToList();
        if (moves.Count == 0)
        {
            return;
        }

        // One more line says no less than the line that counts it.
        var shown = all || moves.Count <= Most + 1 ? moves.Count : Most;
        var rows = new Columns("one step of", "moves it by");
        foreach (var (step, effect) in moves.Take(shown))
        {
            rows.Add(step, effect);
        }

        print.Line();
        print.Line(new Piece("What would change it", Ink.Strong));
        rows.Print(print);
        if (shown < moves.Count)
        {
            print.Wrapped(4, new Piece($"  {moves.Count - shown} more do less; `--all` shows them.", Ink.Faint));
        }
    }
}
