using System.Diagnostics;
using System.Globalization;

namespace RigLang.Published.Outside;

/// <summary>A program of other people that computes what one of our models computes too.</summary>
/// <param name="Name">As its users call it.</param>
/// <param name="Install">How to get it, for the line that says why its checks were skipped.</param>
/// <param name="Command">What is started.</param>
/// <param name="Arguments">What comes before the script.</param>
/// <param name="Probe">A script that prints 1 where the program is there.</param>
/// <param name="Folder">Where it is started, under the folder of these tests.</param>
public sealed record OutsideProgram(string Name, string Install, string Command, string[] Arguments, string Probe, string Folder = ".")
{
    private readonly Lazy<string?> absence = new(() => Absence(Command, Arguments, Probe, Folder, Name, Install));

    /// <summary>Debian's GNU units, 2.22: asked for pairs of lines, what to convert and what to.</summary>
    public static OutsideProgram Units { get; } = new("GNU units", "apt-get install units", "units", ["-q", "-t", "-o", "%.15g"], "m\nm\n");

    /// <summary>Debian's python3-fluids; the system's own Python, since its packages are no other Python's.</summary>
    public static OutsideProgram Fluids { get; } = new("python3-fluids", "apt-get install python3-fluids", "/usr/bin/python3", ["-"], "import fluids.atmosphere\nprint(1)\n");

    /// <summary>The psychrolib of the npm registry, fixed by the lock file beside this one.</summary>
    public static OutsideProgram Psychrolib { get; } = new(
        "psychrolib", "npm ci in tests/RigLang.Published/Outside/node", "node", ["-"], "require('psychrolib'); console.log(1)\n", "Outside/node");

    /// <summary>Why its checks can't run, with what to do; null where it is there.</summary>
    public string? WhyAbsent => absence.Value;

    /// <summary>What it prints, number by number, for a script.</summary>
    public IReadOnlyList<double> Numbers(string script)
    {
        var (output, errors, code) = Run(Command, Arguments, script, Folder);
        if (code != 0)
            throw new InvalidOperationException($"{Name} ended with {code}: {errors}{output}");
        return [.. output.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).Select(Number)];
    }

    private double Number(string word) => double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out double number)
        ? number
        : throw new InvalidOperationException($"{Name} says '{word}' where a number was asked for.");

    private static string? Absence(string command, string[] arguments, string probe, string folder, string name, string install)
    {
        try
        {
            var (output, _, code) = Run(command, arguments, probe, folder);
            return code == 0 && output.Trim() == "1" ? null : $"{name} is not there: {install}";
        }
        catch (Exception exception) when (exception is System.ComponentModel.Win32Exception or IOException)
        {
            return $"{name} is not there: {install}";
        }
    }

    private static (string Output, string Errors, int Code) Run(string command, string[] arguments, string script, string folder)
    {
        var start = new ProcessStartInfo(command, arguments)
        {
            RedirectStandardInput = true, RedirectStandardOutput = true, RedirectStandardError = true, WorkingDirectory = Path.Combine(Root(), "tests", "RigLang.Published", folder),
        };
        start.Environment["LC_ALL"] = "C";
        using Process process = Process.Start(start)!;
        Task<string> output = process.StandardOutput.ReadToEndAsync(), errors = process.StandardError.ReadToEndAsync();
        process.StandardInput.Write(script);
        process.StandardInput.Close();
        process.WaitForExit();
        return (output.Result, errors.Result, process.ExitCode);
    }

    internal static string Root()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "RigLang.sln")))
            folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException("No folder above the tests holds RigLang.sln.");
    }
}

/// <summary>A test that asks an outside program; skipped, with the reason and what to do, where that is not there.</summary>
[AttributeUsage(AttributeTargets.Method)]
public sealed class AsksAttribute : FactAttribute
{
    public AsksAttribute(string program)
    {
        Program = program;
        Skip = (program switch
        {
            nameof(OutsideProgram.Units) => OutsideProgram.Units,
            nameof(OutsideProgram.Fluids) => OutsideProgram.Fluids,
            _ => OutsideProgram.Psychrolib,
        }).WhyAbsent;
    }

    public string Program { get; }
}
