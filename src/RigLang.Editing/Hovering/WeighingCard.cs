using RigLang.Analysis.Results;
using RigLang.Analysis.Results.Weighings;
using RigLang.Analysis.Studies;
using RigLang.Editing.Locating;
using RigLang.Editing.Reasons;
using RigLang.Syntax;

namespace RigLang.Editing.Hovering;

/// <summary>A visit to the scale, or one pass over it: the scale beside the model.</summary>
internal static class WeighingCard
{
    public static CardText Of(View view, WeighingStudy weighing)
    {
        var units = SubjectUnits.Of(weighing, view.State.Units);
        var card = new CardText().Heading(weighing.Title, weighing.Parts.Weighing.Title).Paragraph($"Of {weighing.Rig.Title}")
            .Table(ResultLines.Rows([.. WeighingResults.Set.All, .. WeighingFitResults.Set.All], weighing, units));
        foreach (var pass in weighing.Passes)
        {
            AddReadings(card, pass, units);
        }

        return card;
    }

    public static CardText Of(View view, PassSubject pass) => AddReadings(new CardText(), pass, SubjectUnits.Of(pass, view.State.Units));

    private static CardText AddReadings(CardText card, PassSubject pass, UnitChoice units) =>
        card.Heading(pass.Title).Table(pass.Readings.Select(reading => Row(reading, units)));

    private static string[] Row(ReadingSubject reading, UnitChoice units)
    {
        var nodes = ReadingResults.Set.All.Select(result => (Result: (IResult)result, Node: result.Compute(reading)!)).Where(pair => pair.Node.Applies).ToList();
        return [reading.Axles, .. nodes.Select(pair => pair.Node.IsComputed ? $"{Phrase.Small(pair.Result.Title)} {Shown.Marked(pair.Result, pair.Node, units)}" : Shown.NotComputed(pair.Node))];
    }
}
