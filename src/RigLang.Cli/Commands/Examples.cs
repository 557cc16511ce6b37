namespace RigLang.Cli.Commands;

/// <summary>The end of each help page: what people type.</summary>
internal static class Examples
{
    public static IEnumerable<(string Title, string[] Lines)> Of(string command, bool isRoot) => (isRoot ? "" : command) switch
    {
        "" =>
        [
            ("Examples", ["riglang check examples", "riglang show coast", "riglang plan saddle", "riglang explain tongue-ratio"]),
            ("Ends with", ["0  nothing wrong, or notes and warnings only", "1  warnings with --strict; unformatted files with format --check", "2  errors in the files", "3  could not run"]),
        ],
        "check" => [("Examples", ["riglang check", "riglang check rigs/coast.rig trips --strict", "riglang check --json > findings.json"])],
        "show" => [("Examples", ["riglang show coast", "riglang show trip saddle --in examples", "riglang show examples/overloaded", "riglang show coast --units us", "riglang show coast --json"])],
        "plan" =>
        [
            ("Examples", ["riglang plan saddle", "riglang plan examples/people-carrier/trips", "riglang plan saddle --json"]),
            ("Ends with", ["0  there is a plan", "1  a trip can't be done", "3  a fact is missing; could not run"]),
        ],
        "explain" => [("Examples", ["riglang explain axle-rating", "riglang explain RL201", "riglang explain lbf", "riglang explain --list results", "riglang explain tongue-ratio --of coast"])],
        "format" => [("Examples", ["riglang format", "riglang format --check .", "riglang format - < draft.rig"])],
        _ => [],
    };
}
