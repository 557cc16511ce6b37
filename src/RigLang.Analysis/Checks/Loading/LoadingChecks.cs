using System.Collections.Immutable;

namespace RigLang.Analysis.Checks.Loading;

/// <summary>The checks of what is aboard and where.</summary>
public static class LoadingChecks
{
    public static ImmutableArray<Check> All { get; } =
    [
        new WhatWasAboard(), new MassAndCarriesDisagree(), new UnknownTank(), new UnknownTankAboard(), new OverfilledTank(),
        new OverfilledTankAboard(), new DoubledItem(), new UnknownPoint(), new UnknownPointOnTrailer(), new ItemOutOfReach(),
    ];
}
