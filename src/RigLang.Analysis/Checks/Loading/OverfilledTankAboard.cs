using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Loading;

/// <summary>A tank is filled with more than it holds in a block `aboard`.</summary>
public sealed class OverfilledTankAboard : DeclarationCheck
{
    public override CheckDeclaration Declaration { get; } = new OverfilledTank().Declaration;

    public override IEnumerable<Finding> Run(Declaration declaration)
    {
        if (declaration.Kind is not (DeclarationKind.Vehicle or DeclarationKind.Trailer))
        {
            yield break;
        }

        var aboard = declaration.Kind == DeclarationKind.Vehicle ? CargoFacts.AboardVehicle : CargoFacts.AboardTrailer;
        foreach (var fill in declaration.Block.AllBlocks(aboard.Block).SelectMany(block => block.All(aboard.Fill)).Where(fill => fill.IsComplete))
        {
            var tank = LoadLines.TanksOf(declaration).FirstOrDefault(tank => tank.Key == fill.Key);
            if (tank is not null && fill.Place.Declaration == declaration.Own.Syntax && OverfilledTank.IsOver(fill, tank))
            {
                yield return Report(fill.PlaceOf("level"), OverfilledTank.Message(fill, tank)) with { Related = [new Related(tank.Place, "the tank")] };
            }
        }
    }
}
