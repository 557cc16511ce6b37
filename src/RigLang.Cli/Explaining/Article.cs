using System.Collections.Immutable;

namespace RigLang.Cli.Explaining;

/// <summary>What there is to say about one word of the language, ready to be printed.</summary>
/// <param name="Word">As it is written in files, or a check's code and slug.</param>
/// <param name="What">What sort of word it is: "fact of a vehicle's axle", "result of a rig".</param>
/// <param name="Text">The sentence that says what it means.</param>
/// <param name="Parts">Further points, each under its label.</param>
internal sealed record Article(string Word, string What, string Text, ImmutableArray<ArticlePart> Parts);

/// <summary>A point under a label; code keeps its lines.</summary>
internal sealed record ArticlePart(string Label, string Text, bool IsCode = false);
