using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Loading;

/// <summary>A `fill` line under `aboard` names a tank that the vehicle or trailer doesn't have.</summary>
public sealed class UnknownTankAboard : DeclarationCheck
{
    public override CheckDeclaration Declaration { get; } = new UnknownTank().Declaration;

    public override IEnumerable<Finding> Run(Declaration declaration)
    {
        if (declaration.Kind is not (DeclarationKind.Vehicle or DeclarationKind.Trailer))
        {
            yield break;
        }

        var aboard = declaration.Kind == DeclarationKind.Vehicle ? CargoFacts.AboardVehicle : CargoFacts.AboardTrailer;
        var tanks = LoadLines.TanksOf(declaration).Select(tank => tank.Key).ToList();
        foreach (var fill in declaration.Block.AllBlocks(aboard.Block).SelectMany(block => block.All(aboard.Fill)))
        {
            if (fill.IsComplete && !tanks.Contains(fill.Key) && fill.Place.Declaration == declaration.Own.Syntax)
            {
                yield return Report(fill.PlaceOf("tank"), $"{declaration} has no tank `{fill.Key}`. {UnknownTank.Known(tanks)}");
            }
        }
    }
}
