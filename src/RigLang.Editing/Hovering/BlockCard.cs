using RigLang.Analysis.Results;
using RigLang.Analysis.Results.Ratings;
using RigLang.Analysis.Studies;
using RigLang.Editing.Locating;
using RigLang.Editing.Reasons;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Linking;

namespace RigLang.Editing.Hovering;

/// <summary>A line that opens a block: an axle with its loads, a leg, a stop, a pass.</summary>
internal static class BlockCard
{
    public static CardText? Of(Spot spot, Fact line, CancellationToken cancel)
    {
        cancel.ThrowIfCancellationRequested();
        var block = spot.Linked?.Block.WithInner().FirstOrDefault(block => ReferenceEquals(block.Opener, line));
        return block is null ? null : Of(spot.View, spot.Linked!, block);
    }

    public static CardText? Of(View view, Declaration declaration, Block block)
    {
        if (declaration.Kind == DeclarationKind.Weighing)
        {
            return view.State.Analysis.Weighing(declaration)?.Passes.FirstOrDefault(pass => ReferenceEquals(pass.Block, block)) is { } pass ? WeighingCard.Of(view, pass) : null;
        }

        var subjects = Subjects.Of(view, declaration, block).ToList();
        return subjects.FirstOrDefault() switch
        {
            LegSubject leg => TripCard.Of(view, leg),
            StopSubject stop => TripCard.Of(view, stop),
            AxleSubject => OfAxle(view, declaration, block, [.. subjects.OfType<AxleSubject>()]),
            _ => null,
        };
    }

    private static CardText OfAxle(View view, Declaration declaration, Block block, List<AxleSubject> axles)
    {
        var card = new CardText().Paragraph($"**{block.Opener!.Title}** of {declaration}");
        foreach (var axle in axles)
        {
            var units = SubjectUnits.Of(axle, view.State.Units);
            var rating = RatingTable.Of(axle.Rig).FirstOrDefault(line => ReferenceEquals(line.Rating.Subject, axle) && line.IsKnown && line.Rating.Limit == axle.Facts.AxleRating);
            card.Paragraph($"In {axle.Rig.Title}{(rating is null ? "" : $": {string.Join(' ', RigCard.Row(rating)[1..3])}, {string.Join(' ', RigCard.Row(rating)[3..])}")}")
                .Table(ResultLines.Rows(Catalogue.Of(ResultScope.Axle).Where(result => result.Compute(axle) is { IsComputed: true }), axle, units));
        }

        return card.Paragraph(ResultLines.EstimatesInBrief(axles.SelectMany(axle => Catalogue.Of(ResultScope.Axle).Select(result => result.Compute(axle)!)).Where(node => node.IsComputed)));
    }
}
