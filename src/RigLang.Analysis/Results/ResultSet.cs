using RigLang.Analysis.Tracking;
using RigLang.Quantities;

namespace RigLang.Analysis.Results;

/// <summary>The results of one sort of subject, in the order in which they are shown. A result is added by declaring it.</summary>
public sealed class ResultSet<TSubject>(ResultScope scope)
    where TSubject : class, ISubject
{
    private readonly List<ResultDeclaration<TSubject>> all = [];

    public IReadOnlyList<ResultDeclaration<TSubject>> All => all;

    /// <param name="kind">What it is measured in; the function returns SI. Axle and tongue loads are masses in kg, as scales and plates show them.</param>
    /// <param name="writer">How a value is shown, where that isn't as a plain quantity.</param>
    /// <param name="noneIsAnswer">Whether a refusal is an answer by itself: "none up to 200 km/h".</param>
    public ResultDeclaration<TSubject> Add(
        string name, QuantityKind kind, string title, string meaning, string formula, string source, Func<Reader, TSubject, double> function,
        Func<TSubject, double, DisplaySystem, string>? writer = null, bool noneIsAnswer = false)
    {
        var result = new ResultDeclaration<TSubject>(scope, name, kind, title, meaning, formula, source, function) { Writer = writer, NoneIsAnswer = noneIsAnswer };
        all.Add(result);
        return result;
    }
}
