using RigLang.Analysis.Results;
using RigLang.Analysis.Results.Rigs;
using RigLang.Analysis.Studies;
using RigLang.Editing.Locating;
using RigLang.Editing.Reasons;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Editing.Hovering;

/// <summary>An item or a tank's level in a load: what it does to the axles of each rig that carries it, found by leaving it at home.</summary>
internal static class ItemCard
{
    /// <summary>Kilograms that nobody would look for.</summary>
    private const double LeastShown = 0.05;

    public static CardText? Of(Spot spot, Fact line, CancellationToken cancel)
    {
        if (spot.Linked is not { Kind: DeclarationKind.Load } load || (line.Declaration != CargoFacts.Load.Item && line.Declaration != CargoFacts.Load.Fill))
        {
            return null;
        }

        var card = new CardText().Paragraph($"**{line.Title}** on {spot.Block?.Key} in {load}").Paragraph(BlockWords.Value(line))
            .Paragraph(line.MeasureOf("mass") is { } mass ? FactCard.Both(mass) : "");
        foreach (var rig in Subjects.Rigs(spot.View, load))
        {
            cancel.ThrowIfCancellationRequested();
            var without = new RigStudy(rig.Parts with { Absent = rig.Parts.Absent.Add(line.Title) });
            var units = SubjectUnits.Of(rig, spot.State.Units);
            var rows = new IResult[] { LoadResults.FrontAxleLoad, LoadResults.RearAxleLoad, LoadResults.TrailerAxleLoad, LoadResults.TongueLoad }
                .Select(result => (Result: result, With: result.Compute(rig)!, Without: result.Compute(without)!))
                .Where(row => row.With.IsComputed && row.Without.IsComputed && Math.Abs(row.With.Value - row.Without.Value) >= LeastShown)
                .Select(row => new[] { row.Result.Title, Signed(row.With.Value - row.Without.Value, row.Result.Kind, units), $"to {Shown.Marked(row.Result, row.With, units)}" }).ToList();
            card.Paragraph(rows.Count > 0 ? $"In {rig.Title} it does" : "").Table(rows);
        }

        return card;
    }

    private static string Signed(double value, QuantityKind kind, UnitChoice units)
    {
        var text = units.Write(value, kind);
        return text.StartsWith('-') ? text : "+" + text;
    }
}
