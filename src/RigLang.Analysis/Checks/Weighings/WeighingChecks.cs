using System.Collections.Immutable;

namespace RigLang.Analysis.Checks.Weighings;

/// <summary>The checks of a weighing.</summary>
public static class WeighingChecks
{
    public static ImmutableArray<Check> All { get; } =
    [
        new TotalsDisagree(), new ScaleOffModel(), new TongueWaysDisagree(), new WeighingIncomplete(), new WeighedOverRating(), new ScaledAxleUnknown(), new AbsentNotAboard(),
        new ReadingOutOfLine(), new CoupleWaysDisagree(),
    ];
}
