using System.Text;
using Spectre.Console;

namespace RigLang.Cli.Terminals;

/// <summary>What the program was started in: where it reads and writes, and from which folder paths are looked at.</summary>
public sealed class Terminal : IDisposable
{
    private const int NarrowestLine = 60;
    private const int WidestLine = 100;
    private const int UsualLine = 80;

    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    private readonly Lazy<(Printout Printout, TextWriter Writer)> output;
    private readonly Lazy<(Printout Printout, TextWriter Writer)> error;

    /// <param name="folder">The current folder, an absolute path.</param>
    /// <param name="input">Standard input, opened when it is first wanted.</param>
    /// <param name="outputStream">Standard output as bytes.</param>
    /// <param name="errorStream">Standard error as bytes.</param>
    public Terminal(string folder, Func<Stream> input, Stream outputStream, Stream errorStream)
        : this(folder, input, () => outputStream, () => Plain(outputStream), () => Plain(errorStream), showsTraces: false)
    {
    }

    private Terminal(
        string folder, Func<Stream> input, Func<Stream> outputStream,
        Func<(Printout Printout, TextWriter Writer)> output, Func<(Printout Printout, TextWriter Writer)> error, bool showsTraces)
    {
        Folder = folder;
        OpenInput = input;
        OpenOutput = outputStream;
        this.output = new(output);
        this.error = new(error);
        ShowsTraces = showsTraces;
    }

    public string Folder { get; }

    public Func<Stream> OpenInput { get; }

    /// <summary>Standard output for whoever writes bytes: JSON, formatted text, the language server. Not to be mixed with <see cref="Out"/>.</summary>
    public Func<Stream> OpenOutput { get; }

    public Printout Out => output.Value.Printout;

    public Printout Error => error.Value.Printout;

    /// <summary>Whether a fault of the program is shown with its trace, for those who mend it.</summary>
    public bool ShowsTraces { get; }

    public static Terminal OfProcess()
    {
        Func<string, string?> environment = Environment.GetEnvironmentVariable;
        var isColoured = string.IsNullOrEmpty(environment("NO_COLOR")) && environment("TERM") != "dumb";
        return new Terminal(
            Environment.CurrentDirectory,
            Console.OpenStandardInput,
            Console.OpenStandardOutput,
            () => Console.IsOutputRedirected || !isColoured ? Plain(Console.OpenStandardOutput(), WidthOf(Console.IsOutputRedirected)) : Coloured(Console.Out),
            () => Console.IsErrorRedirected || !isColoured ? Plain(Console.OpenStandardError(), WidthOf(Console.IsErrorRedirected)) : Coloured(Console.Error),
            environment("RIGLANG_DEBUG") == "1");
    }

    /// <summary>Brings out what is held back. Throws where the output can't be written; a reader that has gone (`riglang check | head`) is no reason to.</summary>
    public void Flush()
    {
        if (output.IsValueCreated)
        {
            output.Value.Writer.Flush();
        }

        if (error.IsValueCreated)
        {
            error.Value.Writer.Flush();
        }
    }

    public void Dispose()
    {
        try
        {
            Flush();
        }
        catch (IOException)
        {
            // Told when it was first tried.
        }
    }

    private static (Printout Printout, TextWriter Writer) Plain(Stream stream, int width = UsualLine)
    {
        var writer = new StreamWriter(stream, Utf8, bufferSize: 16_384, leaveOpen: true) { NewLine = "\n" };
        var console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = AnsiSupport.No,
            ColorSystem = ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Enrichment = new ProfileEnrichment { UseDefaultEnrichers = false },
            Out = new Sheet(writer, width, isTerminal: false),
        });
        return (new Printout(console), writer);
    }

    private static (Printout Printout, TextWriter Writer) Coloured(TextWriter writer)
    {
        Console.OutputEncoding = Utf8;
        var console = AnsiConsole.Create(new AnsiConsoleSettings { Interactive = InteractionSupport.No, Out = new Sheet(writer, WidthOf(false), isTerminal: true) });
        return (new Printout(console), writer);
    }

    private static int WidthOf(bool isRedirected)
    {
        if (isRedirected)
        {
            return UsualLine;
        }

        try
        {
            return Console.WindowWidth > 0 ? Math.Clamp(Console.WindowWidth, NarrowestLine, WidestLine) : UsualLine;
        }
        catch (Exception unknown) when (unknown is IOException or PlatformNotSupportedException)
        {
            return UsualLine;
        }
    }

    private sealed class Sheet(TextWriter writer, int width, bool isTerminal) : IAnsiConsoleOutput
    {
        public TextWriter Writer => writer;

        public bool IsTerminal => isTerminal;

        public int Width => width;

        public int Height => 25;

        public void SetEncoding(Encoding encoding)
        {
        }
    }
}
