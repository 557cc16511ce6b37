namespace RigLang.Fuzzing.Targets;

/// <summary>A part of the program that takes whatever comes.</summary>
internal interface IFuzzTarget
{
    /// <summary>Its name on the command line, and its folder under <c>Corpus</c>.</summary>
    string Name { get; }

    /// <summary>Takes the input and looks whether what must always hold does; throws if not.</summary>
    void Run(ReadOnlySpan<byte> input);
}
