using System.Collections.Immutable;
using RigLang.Syntax.Tree;

namespace RigLang.Editing.Signing;

/// <summary>What may stand behind a <c>?</c>: the wish to have the value found.</summary>
internal static class QuestionSignature
{
    public const string Meaning = "Asked and not known; with a wish behind it, the value is looked for\n\nFor instance `? for tongue-ratio = 9 %`";

    private static readonly (string Words, string Meaning) Within = ("[within LOW .. HIGH]", "the range to look in");

    public static (ImmutableArray<(string Words, string Meaning)> Parts, int Active) Of(QuerySyntax query) => query.Goal switch
    {
        QueryGoal.Value => (
            [("for RESULT", "the result that is to have a value"), ("[at VALUE]", "the value at which it is looked at, such as a speed"), ("= VALUE", "the value it is to have"), Within],
            query.Result is null ? 0 : query.Target is null ? 2 : 3),
        QueryGoal.Least => ([("least RESULT", "the result that is to be as small as can be"), Within], query.Result is null ? 0 : 1),
        QueryGoal.Most => ([("most RESULT", "the result that is to be as large as can be"), Within], query.Result is null ? 0 : 1),
        _ => ([("[for RESULT = VALUE]", "the value for which a result is reached"), ("[least RESULT]", "the value that makes a result least"), ("[most RESULT]", "the value that makes a result most")], 0),
    };
}
