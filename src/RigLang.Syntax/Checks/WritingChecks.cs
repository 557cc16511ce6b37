using System.Collections.Immutable;
using RigLang.Syntax.Checks.Writing;

namespace RigLang.Syntax.Checks;

/// <summary>Everything that this floor reports: how a file is written, whatever it means. In order of codes.</summary>
public static class WritingChecks
{
    public static ImmutableArray<CheckDeclaration> All { get; } =
    [
        TabInIndent.Check,
        IndentMatchesNothing.Check,
        FactInFirstColumn.Check,
        NestedTooDeep.Check,
        LineTooLong.Check,
        UnclosedText.Check,
        OtherQuotes.Check,
        CommaInNumber.Check,
        CommaInLine.Check,
        ExponentNumber.Check,
        LeadingZero.Check,
        NumberUnreadable.Check,
        FeetAndInchMarks.Check,
        MissingBlank.Check,
        UnitInPieces.Check,
        RangeWithHyphen.Check,
        RangeWithoutEnd.Check,
        BoundWithoutValue.Check,
        HalfWidthWithoutValue.Check,
        CountWithoutQuantity.Check,
        SumWithoutSummand.Check,
        QuestionUnfinished.Check,
        DateUnreadable.Check,
        NameNotLowerCase.Check,
        NameMalformed.Check,
        OpeningWithoutName.Check,
        OpeningOutOfOrder.Check,
        UnknownKind.Check,
        UseWithoutPath.Check,
        LanguageNotFirst.Check,
        LanguageEdition.Check,
        TyreUnreadable.Check,
        TyreSpelling.Check,
        BracketOrFormula.Check,
        InvisibleCharacter.Check,
        StrayText.Check,
        LineWithoutKeyword.Check,
    ];
}
