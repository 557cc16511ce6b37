using RigLang.Analysis.Curing;
using RigLang.Analysis.Results.Ratings;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Checks.Ratings;

/// <summary>Something carries more than a plate allows. One family of the list of ratings each; no practice loosens them.</summary>
public abstract class RatingCheck(RatingFamily family) : RigCheck
{
    public override IEnumerable<Finding> Run(RigStudy rig) =>
        RatingTable.Of(rig).Where(line => line.Rating.Family == family && line.IsOver).Select(line => Over(rig, line));

    public override string? Figure(Study study, Finding finding) =>
        study is RigStudy rig && RatingTable.Of(rig).FirstOrDefault(line => line.IsKnown && line.Rating.Title == finding.About) is { } line ? Effects.Rating(line) : null;

    /// <summary>The message's beginning, before the load: "Axle rear carries".</summary>
    private protected abstract string Says(RatingLine line);

    /// <summary>What to do, as sentences.</summary>
    private protected abstract string Advice(RatingLine line);

    /// <summary>The keyword of the rig's line at which the finding stands.</summary>
    private protected abstract FactDeclaration At(RatingLine line);

    private protected virtual string Limit(RatingLine line) => $"{OwnerOf(line)} `{line.Rating.Limit.Keyword}` of {QuantityWriter.WriteLike(line.Limit!.Value, line.Limit)}";

    /// <summary>"the vehicle's", or "its" where the message already names whose it is.</summary>
    private protected static string OwnerOf(RatingLine line) => line.Rating.Owner.Declaration.Kind switch
    {
        _ when line.Rating.Owner.Outer is not null => "its",
        DeclarationKind.Vehicle => "the vehicle's",
        DeclarationKind.Trailer => "the trailer's",
        _ => "the hitch's",
    };

    /// <summary>The line that names the owner of the limit.</summary>
    internal static FactDeclaration NamingOwner(RatingLine line) => line.Rating.Owner.Declaration.Kind switch
    {
        DeclarationKind.Vehicle => RigFacts.Vehicle,
        DeclarationKind.Trailer => RigFacts.Trailer,
        _ => RigFacts.Hitch,
    };

    private Finding Over(RigStudy rig, RatingLine line)
    {
        var load = QuantityWriter.WriteAgainst(line.Load.Value, line.Limit!);
        var over = QuantityWriter.WriteLike(-line.Room, line.Limit!);
        var mark = line.IsEstimated ? " (estimated)" : "";
        return Report(rig, At(line), $"{Says(line)} {load}{mark}, {over} over {Limit(line)}. {Advice(line)}")
            with { About = line.Rating.Title, Related = line.LimitLine is { } limit ? [new Related(limit.Place, "the rating")] : [] };
    }
}
