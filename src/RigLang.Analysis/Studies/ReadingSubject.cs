using System.Collections.Immutable;
using RigLang.Analysis.Tracking;
using RigLang.Model.Binding;
using RigLang.Model.Facts;

namespace RigLang.Analysis.Studies;

/// <summary>What a scale said of one or more axles in a pass; two wheels of one axle that were read apart are one reading.</summary>
public sealed class ReadingSubject : ISubject
{
    private ReadingSubject(PassSubject pass, string axles, ImmutableArray<Fact> lines)
    {
        Pass = pass;
        Axles = axles;
        Lines = lines;
    }

    public PassSubject Pass { get; }

    /// <summary>"front", "front rear", "trailer", "tongue".</summary>
    public string Axles { get; }

    /// <summary>One <c>scale</c> line, or the left and the right one.</summary>
    public ImmutableArray<Fact> Lines { get; }

    public Study Study => Pass.Study;

    public string Title => $"{Pass.Title}, {Axles}";

    /// <summary>True where only one side of an axle was read: there is nothing to compare it with.</summary>
    public bool IsOneWheel => Lines.Length == 1 && SideOf(Lines[0]) is not null;

    internal static IEnumerable<ReadingSubject> Of(PassSubject pass) =>
        pass.Block.All(PassFacts.Scale).Where(line => line.IsComplete).GroupBy(AxlesOf).Select(group => new ReadingSubject(pass, group.Key, [.. group]));

    /// <summary>The words of a line that name axles.</summary>
    public static IReadOnlyList<string> WordsOf(Fact line) => line.Values.GetValueOrDefault("axles") is WordsValue words ? words.Words : [];

    private static string AxlesOf(Fact line) => string.Join(' ', WordsOf(line).Where(word => word is not ("left" or "right")));

    private static string? SideOf(Fact line) => WordsOf(line).FirstOrDefault(word => word is "left" or "right");
}
