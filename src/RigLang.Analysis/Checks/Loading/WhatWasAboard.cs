using RigLang.Analysis.Checks.Examples;
using RigLang.Model.Binding;
using RigLang.Model.Declaring;
using RigLang.Model.Facts;
using RigLang.Model.Linking;
using RigLang.Syntax.Checks;

namespace RigLang.Analysis.Checks.Loading;

/// <summary>A weighed mass doesn't say what was aboard.</summary>
public sealed class WhatWasAboard : DeclarationCheck
{
    public override CheckDeclaration Declaration { get; } = new()
    {
        Code = "RL310",
        Slug = "what-was-aboard",
        Severity = Severity.Warning,
        Summary = "A weighed mass doesn't say what was aboard.",
        Why = "A load names everybody and everything. If the driver sat in the vehicle on the scale and nobody says so, the driver counts twice; a trailer weighed with full gas bottles carries them twice.",
        Bad = RigExample.Pair.With(("        carries 1150 kg\n        axle-rating 1700 kg\n    aboard nothing", "        carries 1150 kg\n        axle-rating 1700 kg")),
        Good = RigExample.Pair,
        Fix = "Write `aboard nothing`, or a block `aboard` that lists who and what was aboard.",
    };

    public override IEnumerable<Finding> Run(Declaration declaration)
    {
        var block = declaration.Block;
        var (aboard, weighed) = declaration.Kind switch
        {
            DeclarationKind.Vehicle => (VehicleFacts.Aboard, block.Find(VehicleFacts.Mass) ?? CarriesOf(block).FirstOrDefault()),
            DeclarationKind.Trailer => (TrailerFacts.Aboard, block.Find(TrailerFacts.Mass) ?? block.Find(TrailerFacts.Tongue)),
            _ => default,
        };

        // An inherited mass is asked about where it is written.
        if (weighed?.MeasureOf(Signature.ValueRole) is null || block.Find(aboard) is not null || weighed.Place.Declaration != declaration.Own.Syntax)
        {
            yield break;
        }

        yield return Report(
            weighed.Place,
            $"What was aboard {declaration} when this was weighed? Write `aboard nothing`, or a block `aboard` with the items and fills; until then it counts as weighed empty.");
    }

    private static IEnumerable<Fact> CarriesOf(Block vehicle) => vehicle.AllBlocks(AxleFacts.Vehicle.Block).Select(axle => axle.Find(AxleFacts.Vehicle.Carries!)).OfType<Fact>();
}
