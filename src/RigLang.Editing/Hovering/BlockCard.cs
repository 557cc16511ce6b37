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
        return block is null ? null : Of(spot, spot.Linked!, block);
    }

    public static CardText? Of(Spot spot, Declaration declaration, Block block)
    {
        if (declaration.Kind == DeclarationKind.Weighing)
        {
            return spot.State.Analysis.Weighing(declaration)?.Passes.FirstOrDefault(pass => ReferenceEquals(pass.Block, block)) is { } pass ? WeighingCard.Of(spot, pass) : null;
        }

        var subjects = Subjects.Of(spot, declaration, block).ToList();
        return subjects.FirstOrDefault() switch
        {
            LegSubject leg => TripCard.Of(spot, leg),
            StopSubject stop => TripCard.Of(spot, stop),
            AxleSubject => OfAxle(spot, declaration, block, [.. subjects.OfType<AxleSubject>()]),
            _ => null,
        };
    }

    private static CardText OfAxle(Spot spot, Declaration declaration, Block block, List<AxleSubject> axles)
    {
        var card = new CardText().Paragraph($"**{block.Opener!.Title}** of {declaration}");
        foreach (var axle in axles)
        {
            var units = SubjectUnits.Of(axle, spot.State.Units);
            var rating = RatingTable.Of(axle.Rig).FirstOrDefault(line => ReferenceEquals(line.Rating.Subject, axle) && line.IsKnown && line.Rating.Limit == axle.Facts.AxleRating);
            card.Paragraph($"In {axle.Rig.Title}{(rating is null ? "" : $": {string.Join(' ', RigCard.Row(rating).Skip(1).Take(2))}, {RigCard.Row(rating)[3]}")}")
                .Table(ResultLines.Rows(Catalogue.Of(ResultScope.Axle).Where(result => result.Compute(axle) is { IsComputed: true }), axle, units));
        }

        return card.Paragraph(ResultLines.Estimates(axles.SelectMany(axle => Catalogue.Of(ResultScope.Axle).Select(result => result.Compute(axle)!)).Where(node => node.IsComputed)));
    }
}
