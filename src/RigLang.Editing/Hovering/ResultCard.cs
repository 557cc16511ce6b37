using RigLang.Analysis.Ranking;
using RigLang.Analysis.Results;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Editing.Locating;
using RigLang.Editing.Reasons;
using RigLang.Model.Facts;
using RigLang.Syntax;

namespace RigLang.Editing.Hovering;

/// <summary>A result that a line names: its value here, the formula, what it was made from and where that stands.</summary>
internal static class ResultCard
{
    private const int MostFacts = 12;
    private const int MostMoves = 3;

    public static CardText Of(Spot spot, IResult result)
    {
        var bound = spot.Fact is { } line ? Bound.Read(line) : null;
        var nodes = Subjects.At(spot, result.Scope).Select(subject => bound is null ? result.Compute(subject) : bound.Evaluate(subject)).OfType<Node<double>>().Where(node => node.Applies).ToList();
        var card = new CardText();
        if (nodes is not [var first, ..])
        {
            return card.Paragraph($"**{result.Title}** `{result.Name}`").Paragraph(Phrase.Capital(result.Meaning)).Paragraph($"= {result.Formula}").Paragraph($"Source: {result.Source}");
        }

        var units = SubjectUnits.Of(first.Subject, spot.State.Units);
        if (nodes.Count == 1)
        {
            card.Paragraph($"**{result.Title}** `{result.Name}` of {first.Subject.Title}: **{Shown.Value(result, first, units)}{Shown.Doubt(result, first, units)}**{Shown.Mark(first)}");
        }
        else
        {
            card.Paragraph($"**{result.Title}** `{result.Name}`").Table(nodes.Select(node => new[] { node.Subject.Title, Shown.Marked(result, node, units) }));
        }

        card.Paragraph(bound is not null && first.IsComputed ? Judged(bound, first) : "").Paragraph(Phrase.Capital(result.Meaning)).Paragraph($"= {result.Formula}");
        Explain(spot.View, card, first, units);
        return card.Paragraph($"Source: {result.Source}");
    }

    /// <summary>The same for a tooltip: one result of one subject, with the results it was made from.</summary>
    public static CardText Short(IResult result, Node node, UnitChoice units) => new CardText()
        .Paragraph($"**{result.Title}** of {node.Subject.Title}: **{Shown.Value(result, node, units)}{Shown.Doubt(result, node, units)}**{Shown.Mark(node)}").Paragraph(Phrase.Capital(result.Meaning)).Paragraph($"= {result.Formula}")
        .Table(Parts(node).DistinctBy(part => (part.Result, part.Node.Subject)).Select(part => new[] { part.Result.Title, Shown.Marked(part.Result, part.Node, units) }))
        .Paragraph(ResultLines.Estimates([node]));

    /// <summary>The three steps that would move it most.</summary>
    private static void Moves(CardText card, Node node, UnitChoice units)
    {
        var result = (IResult)node.Computation;
        var moves = WhatMatters.Of(result, node.Subject, units.System).Take(MostMoves)
            .Select(move => new[] { MoveWords.Step(move, units), MoveWords.Effect(move, result, node.Subject, node.Number, units) }).Where(row => UnitChoice.Shows(row[1])).ToList();
        card.Paragraph(moves.Count > 0 ? "What would change it" : "").Table(moves);
    }

    private static string Judged(Bound bound, Node<double> node)
    {
        var wanted = bound.Line.Declaration == PracticeFacts.Limit ? "The limit is" : "Expected";
        var where = bound.Line.Values.ContainsKey("at") ? $" at {bound.Line.PlaceOf("at").Text}" : "";
        return $"{wanted} {bound.Words.TrimStart('=', ' ')}{where}: {(bound.Judge(node.Value) == Miss.None ? "met" : "missed")}";
    }

    /// <summary>Two levels: the results that it was made from, and the facts that all of it rests on.</summary>
    private static void Explain(View view, CardText card, Node node, UnitChoice units)
    {
        var parts = Parts(node).DistinctBy(part => (part.Result, part.Node.Subject)).ToList();
        card.Table(parts.Select(part => new[] { part.Result.Title, Shown.Marked(part.Result, part.Node, units) }));
        var facts = ResultLines.Facts(view.State.Workspace, node, units, view.File).ToList();
        card.Paragraph(facts.Count > 0 ? "From" : "").Bullets(facts, MostFacts).Paragraph(DoubtLines.InBrief(node, units));
        Moves(card, node, units);
        card.Paragraph(ResultLines.Estimates([node]));
    }

    /// <summary>The results that the formula names, and those that were read besides.</summary>
    private static IEnumerable<(IResult Result, Node Node)> Parts(Node node)
    {
        foreach (var word in ((IResult)node.Computation).Formula.Split([' ', '(', ')', ',', ';'], StringSplitOptions.RemoveEmptyEntries))
        {
            if (Catalogue.FindResult(word) is { } named && named != node.Computation && named.Compute(node.Subject) is { Applies: true } term)
            {
                yield return (named, term);
            }
        }

        foreach (var below in node.Reads.OfType<ComputationRead>().Select(read => read.Node))
        {
            if (below.Computation is IResult result)
            {
                yield return (result, below);
            }
        }
    }
}
