using System.Diagnostics;
using System.Globalization;
using System.Text;
using RigLang.Cli.Files;

namespace RigLang.Cli.Revisions;

/// <summary>Reads stored files one after the other from one git process. Safe to use from several threads.</summary>
internal sealed class BlobReader(string root) : IDisposable
{
    private readonly Lock gate = new();
    private Process? process;

    /// <param name="id">Of the blob.</param>
    public DiskText Read(string id)
    {
        lock (gate)
        {
            process ??= GitProgram.Start(root, "cat-file", "--batch");
            if (process is null)
            {
                return new DiskText(null, "the git program isn't found", false);
            }

            process.StandardInput.Write(id + "\n");
            process.StandardInput.Flush();
            var stream = process.StandardOutput.BaseStream;
            var head = ReadLine(stream).Split(' ');
            if (head is not [_, "blob", var size] || !long.TryParse(size, NumberStyles.None, CultureInfo.InvariantCulture, out var length))
            {
                return new DiskText(null, "git doesn't have it here (a partial clone?)", false);
            }

            using var part = new Stretch(stream, length);
            var text = DiskText.Read(part);
            part.Drain();
            stream.ReadByte(); // the line feed behind the blob
            return text;
        }
    }

    public void Dispose()
    {
        lock (gate)
        {
            process?.StandardInput.Close();
            process?.WaitForExit(1000);
            process?.Dispose();
            process = null;
        }
    }

    private static string ReadLine(Stream stream)
    {
        var line = new StringBuilder();
        for (int next; (next = stream.ReadByte()) is >= 0 and not '\n';)
        {
            line.Append((char)next);
        }

        return line.ToString();
    }

    /// <summary>So many bytes of a stream that goes on behind them.</summary>
    private sealed class Stretch(Stream inner, long left) : Stream
    {
        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count)
        {
            var read = inner.Read(buffer, offset, (int)Math.Min(count, left));
            left -= read;
            return read;
        }

        public void Drain()
        {
            var buffer = new byte[32 * 1024];
            while (left > 0 && Read(buffer, 0, buffer.Length) > 0)
            {
            }
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();
    }
}
