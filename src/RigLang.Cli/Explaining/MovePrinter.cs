using RigLang.Analysis.Ranking;
using RigLang.Analysis.Results;
using RigLang.Analysis.Tracking;
using RigLang.Cli.Terminals;
using RigLang.Editing.Reasons;

namespace RigLang.Cli.Explaining;

/// <summary>Prints what would change a result, the most effective first.</summary>
internal static class MovePrinter
{
    public static void Print(Printout print, IResult result, Node<double> node, UnitChoice units, CancellationToken cancel)
    {
        var rows = new Columns("one step of", "moves it by");
        var isAny = false;
        foreach (var move in WhatMatters.Of(result, node.Subject, units.System, cancel))
        {
            var effect = MoveWords.Effect(move, result, node.Subject, node.Value, units);
            if (UnitChoice.Shows(effect))
            {
                isAny = true;
                rows.Add(MoveWords.Step(move, units), effect);
            }
        }

        if (!isAny)
        {
            return;
        }

        print.Line();
        print.Line(new Piece("What would change it", Ink.Strong));
        rows.Print(print);
    }
}
