using RigLang.Fuzzing.Targets;
using SharpFuzz;

// Run by the fuzzer, with the name of a target; each input comes over standard input.
if (args is not [var name])
{
    Console.Error.WriteLine($"usage: RigLang.Fuzzing {string.Join('|', FuzzTargets.All.Select(target => target.Name))}   (see the script `fuzz` in this folder)");
    return 2;
}

var target = FuzzTargets.Find(name);
Fuzzer.Run(stream =>
{
    using var bytes = new MemoryStream();
    stream.CopyTo(bytes);
    target.Run(bytes.ToArray());
});
return 0;
