using BenchmarkDotNet.Running;
using RigLang.Benchmarks;

// `keystrokes`, `results`, `reasons`, `questions`, `answers` and `trips` print the tables of docs/performance.md in a minute; anything else goes to BenchmarkDotNet (`--filter '*'` for all).
if (args is ["keystrokes"])
{
    KeystrokeTable.Print(Console.Out);
    return 0;
}

if (args is ["results"])
{
    ResultTable.Print(Console.Out);
    return 0;
}

if (args is ["questions"])
{
    QuestionTable.Print(Console.Out);
    return 0;
}

if (args is ["reasons"])
{
    ReasonTable.Print(Console.Out);
    return 0;
}

if (args is ["answers"])
{
    AnswerTable.Print(Console.Out);
    return 0;
}

if (args is ["trips"])
{
    TripTable.Print(Console.Out);
    return 0;
}

BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args);
return 0;
