namespace RigLang.Fuzzing;

/// <summary>Small changes to kept inputs: bytes turned, left out, doubled, and pieces of one input put into another.</summary>
internal static class Mutation
{
    private static readonly byte[][] Pieces =
        [.. new[] { "\n", "\r", "\t", "    ", "?", "±", "..", "°", "\"", "#", "-", "1e308", "999999999999999999999", "0", "?", "at ", "kg", "least ", "\uFEFF", "\0", "<", "]]>", "{", "}", "\r\n\r\n" }.Select(System.Text.Encoding.UTF8.GetBytes), [0xFF], [0xC3], [0xF0, 0x9F]];

    public static byte[] Of(List<(string Path, byte[] Bytes)> inputs, Random random)
    {
        List<byte> bytes = [.. inputs[random.Next(inputs.Count)].Bytes];
        for (var changes = random.Next(1, 6); changes > 0; changes--)
        {
            var at = random.Next(bytes.Count + 1);
            var length = Math.Min(random.Next(1, 40), bytes.Count - at);
            switch (random.Next(5))
            {
                case 0 when at < bytes.Count:
                    bytes[at] ^= (byte)(1 << random.Next(8));
                    break;
                case 1:
                    bytes.RemoveRange(at, length);
                    break;
                case 2:
                    bytes.InsertRange(at, bytes.GetRange(at, length));
                    break;
                case 3:
                    var other = inputs[random.Next(inputs.Count)].Bytes;
                    var from = random.Next(other.Length + 1);
                    bytes.InsertRange(at, other.Skip(from).Take(random.Next(80)));
                    break;
                default:
                    bytes.InsertRange(at, Pieces[random.Next(Pieces.Length)]);
                    break;
            }
        }

        return [.. bytes];
    }
}
