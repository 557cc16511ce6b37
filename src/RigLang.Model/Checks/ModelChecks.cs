using System.Collections.Immutable;
using RigLang.Model.Checks.Naming;
using RigLang.Model.Checks.Units;
using RigLang.Syntax.Checks;

namespace RigLang.Model.Checks;

/// <summary>Every check that understanding a file can fire.</summary>
public static class ModelChecks
{
    public static ImmutableArray<CheckDeclaration> All { get; } =
    [
        UnknownKeyword.Declaration, KeywordElsewhere.Declaration, SaidTwice.Declaration, ValueMissing.Declaration, WrongForm.Declaration,
        ArgumentLeftOver.Declaration, NameTaken.Declaration, NameUnknown.Declaration, LikeInCircle.Declaration, LikeTooDeep.Declaration,
        WithoutFindsNothing.Declaration, AddsBesideInherited.Declaration, UsedFileMissing.Declaration, UsedFileOutside.Declaration,
        LinesUnderFact.Declaration, NothingOpen.Declaration, EditionUnknown.Declaration,
        UnitMissing.Declaration, UnitUnknown.Declaration, UnitAmbiguous.Declaration, UnitOfSomethingElse.Declaration, MassOrForce.Declaration,
        UnitSpeltOtherwise.Declaration, UnitNotWanted.Declaration, NumberWithoutValue.Declaration, SumUnclear.Declaration, WrittenUnusually.Declaration,
        MomentUnreadable.Declaration, MustBePositive.Declaration, MagnitudeUnlikely.Declaration, RatioAboveRange.Declaration, HalfWidthOverValue.Declaration,
    ];
}
