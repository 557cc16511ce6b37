using Spectre.Console;
using Spectre.Console.Rendering;

namespace RigLang.Cli.Terminals;

/// <summary>
/// Writes lines in inks. What a file says is shown but never obeyed: control characters, and those that turn the direction of text, are replaced before
/// they reach the terminal.
/// </summary>
public sealed class Printout(IAnsiConsole console)
{
    /// <summary>The most columns of a line.</summary>
    public int Width { get; } = console.Profile.Width;

    /// <summary>One line, however long.</summary>
    public void Line(params ReadOnlySpan<Piece> pieces) => console.Write(new Segments(pieces));

    /// <summary>Text broken between words where a line is full; lines after the first stand <paramref name="indent"/> columns in.</summary>
    public void Wrapped(int indent, params ReadOnlySpan<Piece> pieces)
    {
        foreach (var line in Wrapping.Lines(pieces, Width, indent))
        {
            Line(line);
        }
    }

    private sealed class Segments : IRenderable
    {
        private readonly List<Segment> segments = [];

        public Segments(ReadOnlySpan<Piece> pieces)
        {
            foreach (var piece in pieces)
            {
                if (piece.Text.Length > 0)
                {
                    segments.Add(new Segment(Cells.Visible(piece.Text), piece.Ink.Style()));
                }
            }

            segments.Add(Segment.LineBreak);
        }

        public Measurement Measure(RenderOptions options, int maxWidth) => new(maxWidth, maxWidth);

        public IEnumerable<Segment> Render(RenderOptions options, int maxWidth) => segments;
    }
}
