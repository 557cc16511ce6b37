using RigLang.Analysis.Tracking;
using RigLang.Quantities;
using RigLang.Syntax;

namespace RigLang.Analysis.Solving;

/// <summary>Answers in words, in the units of the line's author.</summary>
public static class AnswerWords
{
    /// <summary>A value of the fact: "78.4 km/h".</summary>
    public static string Value(Unknown unknown, double value) => QuantityWriter.WriteWithHalfWidth(value, 0, Rounding.UnitOf(unknown));

    /// <summary>A value of the result, with a digit more than the wished one has.</summary>
    public static string Result(Answer answer, double value, DisplaySystem system = DisplaySystem.Metric) =>
        answer.Unknown.Target is { Units: [var unit] } target ? QuantityWriter.Write(value, unit, target.Decimals + 1)
        : answer.Unknown.Target is { } compound ? QuantityWriter.WriteLike(value, compound)
        : answer.Unknown.Result.Write(answer.Subject!, value, system);

    /// <summary>"from 60 km/h to 95 km/h".</summary>
    public static string Range(Answer answer) => $"from {Value(answer.Unknown, answer.Range.Low)} to {Value(answer.Unknown, answer.Range.High)}";

    /// <summary>"leg linden", where the result is one of something else than the line's own block.</summary>
    public static string Where(Answer answer) => answer.Subject is { } subject ? $" of {subject.Title}" : "";

    /// <summary>What keeps the result from going further; empty where nothing does.</summary>
    public static string Binds(Answer answer)
    {
        var at = Value(answer.Unknown, answer.Value);
        var result = answer.Unknown.Result.Name;
        return answer.Binds switch
        {
            Binding.LowEnd => $"{at} is the lower end of the range looked at{HowToWiden(answer)}",
            Binding.HighEnd => $"{at} is the upper end of the range looked at{HowToWiden(answer)}",
            Binding.Turn => $"with more and with less of it `{result}` moves away again",
            Binding.Flat => $"beyond {at} it changes nothing more: something else binds",
            Binding.Jump => $"there `{result}` jumps over what is wished",
            Binding.NotComputed => $"beyond {at} `{result}` isn't computed",
            _ => "",
        };
    }

    private static string HowToWiden(Answer answer) => answer.Unknown.Within is null ? "; `within LOW .. HIGH` behind the question looks elsewhere" : "";
}
