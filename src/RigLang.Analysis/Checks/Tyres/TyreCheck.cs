using RigLang.Analysis.Results.Axles;
using RigLang.Analysis.Studies;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Quantities;

namespace RigLang.Analysis.Checks.Tyres;

/// <summary>Looks at the tyres of each axle of a rig.</summary>
public abstract class TyreCheck : RigCheck
{
    public sealed override IEnumerable<Finding> Run(RigStudy rig) => rig.Axles.Where(axle => axle.Axle.Find(axle.Facts.Tyres) is not null).SelectMany(Run);

    private protected abstract IEnumerable<Finding> Run(AxleSubject axle);

    /// <summary>At the rig's line that names the axle's vehicle or trailer, with the tyres' line and others beside it.</summary>
    private protected Finding Report(AxleSubject axle, string message, params FactDeclaration[] beside) =>
        Report(axle.Rig, axle.IsTrailer ? RigFacts.Trailer : RigFacts.Vehicle, message)
            with { About = axle.Title, Related = [.. beside.Prepend(axle.Facts.Tyres).Select(axle.Axle.Find).OfType<Fact>().Select(line => new Related(line.Place, $"`{line.Declaration.Keyword}`"))] };

    /// <summary>What is on each tyre of the finding's axle and what it is good for: "each tyre 455 kg of 500 kg".</summary>
    private protected static string? Carried(Study study, Finding finding) =>
        study is RigStudy rig && rig.Axles.FirstOrDefault(axle => axle.Title == finding.About) is { } axle
        && rig.Compute(TyreResults.Load, axle) is { IsComputed: true } load && rig.Compute(TyreResults.Capacity, axle) is { IsComputed: true } capacity
            ? $"each tyre {Mass(axle, load.Value)} of {Mass(axle, capacity.Value)}"
            : null;

    /// <summary>"axle rear", "trailer axle pair".</summary>
    private protected static string Name(AxleSubject axle) => axle.IsTrailer ? $"trailer axle {axle.Axle.Key}" : $"axle {axle.Axle.Key}";

    /// <summary>In the unit of the axle's rating; in kg where that isn't written.</summary>
    private protected static string Mass(AxleSubject axle, double mass) => Like(axle, axle.Facts.AxleRating, mass, QuantityKinds.Mass);

    /// <summary>In the unit of the axle's pressure.</summary>
    private protected static string Pressure(AxleSubject axle, double pressure) => Like(axle, axle.Facts.Pressure, pressure, QuantityKinds.Pressure);

    private static string Like(AxleSubject axle, FactDeclaration fact, double value, QuantityKind kind) =>
        axle.Axle.Find(fact)?.MeasureOf(Signature.ValueRole) is { } like ? QuantityWriter.WriteLike(value, like) : QuantityWriter.Write(value, kind, DisplaySystem.Metric);
}
