using System.Collections.Concurrent;
using System.Text.Json;
using RigLang.Editing;
using RigLang.LanguageServer.Documents;
using RigLang.LanguageServer.Tests.Support;
using RigLang.Model.Files;

namespace RigLang.LanguageServer.Tests;

/// <summary>
/// Thousands of edits, questions and cancellations over several files, on the real workspace, with letters of several units and all line breaks; then the state is
/// the one that a fresh look at the same texts gives, and every question has had one answer.
/// </summary>
public class StormTests
{
    private static readonly string[] Snippets =
        ["x", " ", "\n", "\r\n", "\r", "    ", "\n    ", "é", "e\u0301", "\U0001F699", "µ", "²", "±", "#", "\"", "kg", "1", "0.5 m", "vehicle ", "van", "load", "item ", "at ", "?", "\ntrip t\n    leg a\n        distance 9 km\n"];

    private static readonly string[] Questions =
    [
        "textDocument/hover", "textDocument/completion", "textDocument/definition", "textDocument/documentHighlight", "textDocument/inlayHint", "textDocument/semanticTokens/full",
        "textDocument/documentSymbol", "textDocument/foldingRange", "textDocument/codeAction", "textDocument/selectionRange", "textDocument/signatureHelp", "textDocument/prepareRename",
    ];

    private static readonly Dictionary<string, string> Texts = new()
    {
        ["/w/parts.rig"] = """
            vehicle van "Größe"
                wheelbase 2.94 m
                overhang 1.09 m
                gross-rating 2950 kg
                axle front
                    carries 1195 kg
                    axle-rating 1350 kg
                axle rear
                    carries 1225 kg
                    axle-rating 1720 kg
                aboard nothing

            trailer wren
                mass 1400 kg
                tongue 90 kg
                coupling-to-axle 4.2 m
                axle pair
                    axle-rating 1800 kg
                aboard nothing
            """.ReplaceLineEndings("\r\n"),
        ["/w/loads.rig"] = """
            load autumn # 🚙 cafe
                on vehicle
                    item driver 84 kg at 1.42 m behind front-axle
                on trailer
                    item tent 60 kg at 0.5 m behind axle
            """,
        ["/w/rigs.rig"] = """
            use "parts.rig"
            use "loads.rig"

            rig coast
                vehicle van
                trailer wren
                load autumn
                expect tongue-ratio 5 % .. 14 %

            rig bare like coast
                without load autumn
            """,
    };

    [Theory]
    [InlineData(1, 3000)]
    [InlineData(2, 1500)]
    public async Task After_a_storm_of_edits_questions_and_cancellations_all_is_as_if_freshly_opened(int seed, int rounds)
    {
        await using var storm = await Storm.BeginAsync(seed);
        for (var round = 0; round < rounds; round++)
        {
            await storm.EditAsync();
            if (round % 2 == 0)
            {
                storm.Ask();
            }

            if (round % 5 == 0)
            {
                await storm.CancelAsync();
            }
        }

        await storm.ComesToRestAsync();
    }

    [Theory]
    [InlineData(3, 600)]
    [InlineData(4, 600)]
    public async Task Files_that_are_opened_closed_renamed_and_deleted_meanwhile_change_nothing_of_that(int seed, int rounds)
    {
        await using var storm = await Storm.BeginAsync(seed);
        for (var round = 0; round < rounds; round++)
        {
            await storm.EditAsync();
            storm.Ask();
            if (round % 3 == 0)
            {
                await storm.DisturbAsync();
            }
        }

        await storm.ComesToRestAsync();
    }

    private sealed class Storm : IAsyncDisposable
    {
        private readonly Random _random;
        private readonly ConcurrentDictionary<FileId, string> _disk = new(Texts.Select(text => KeyValuePair.Create(new FileId(text.Key), text.Value)));
        private readonly Dictionary<string, (string Text, int Version)> _open = [];
        private readonly List<(int Id, Task<JsonElement> Answer)> _asked = [];
        private readonly RunningServer _server;

        private Storm(int seed)
        {
            _random = new Random(seed);
            _server = RunningServer.Silent(factory: () => new EditorWorkspace(new Source(_disk)));
        }

        public static async Task<Storm> BeginAsync(int seed)
        {
            var storm = new Storm(seed);
            await storm._server.Client.ResultAsync("initialize", new { processId = (int?)null, rootUri = "file:///w", capabilities = RunningServer.FullCapabilities });
            await storm._server.Client.NotifyAsync("initialized");
            foreach (var path in Texts.Keys)
            {
                await storm.OpenAsync(path);
            }

            return storm;
        }

        /// <summary>One edit in one file, at a place that an editor could name; now and then the text as it was at first.</summary>
        public async Task EditAsync()
        {
            if (_open.Count == 0)
            {
                return;
            }

            var path = _open.Keys.ElementAt(_random.Next(_open.Count));
            var (text, version) = _open[path];
            if (_random.Next(40) == 0 || text.Length > 4000)
            {
                _open[path] = (Texts[path], version + 1);
                await _server.ReplaceAsync(Uri(path), Texts[path], version + 1);
                return;
            }

            var start = Whole(text, _random.Next(text.Length + 1));
            var end = Whole(text, Math.Min(text.Length, start + (_random.Next(3) == 0 ? _random.Next(12) : 0)));
            var insert = Snippets[_random.Next(Snippets.Length)];
            _open[path] = (text[..start] + insert + text[end..], version + 1);
            await _server.Client.NotifyAsync("textDocument/didChange", new
            {
                textDocument = new { uri = Uri(path), version = version + 1 },
                contentChanges = new[] { new { range = new { start = Position(text, start), end = Position(text, end) }, text = insert } },
            });
        }

        public void Ask()
        {
            var path = Texts.Keys.ElementAt(_random.Next(Texts.Count));
            var text = _open.TryGetValue(path, out var open) ? open.Text : "";
            var position = Position(text, Whole(text, _random.Next(text.Length + 1)));
            var request = _server.Client.Request(Questions[_random.Next(Questions.Length)], new
            {
                textDocument = new { uri = Uri(path) }, position, positions = new[] { position },
                range = new { start = new { line = 0, character = 0 }, end = position }, context = new { diagnostics = Array.Empty<object>(), triggerKind = 1, isRetrigger = false },
            });
            _asked.Add(request);
        }

        public async Task CancelAsync() => await _server.Client.NotifyAsync("$/cancelRequest", new { id = _asked[_random.Next(_asked.Count)].Id });

        public async Task DisturbAsync()
        {
            var path = Texts.Keys.ElementAt(_random.Next(Texts.Count));
            var file = new FileId(path);
            switch (_random.Next(6))
            {
                case 0 when _open.Remove(path):
                    await _server.CloseAsync(Uri(path));
                    break;
                case 1 when !_open.ContainsKey(path):
                    await OpenAsync(path);
                    break;
                case 2:
                    _disk.TryRemove(file, out _);
                    await TellAsync(path, 3);
                    break;
                case 3:
                    _disk[file] = Texts[path];
                    await TellAsync(path, 1);
                    break;
                case 4:
                    _asked.Add(_server.Client.Request("workspace/willRenameFiles", new { files = new[] { new { oldUri = Uri(path), newUri = Uri("/w/elsewhere.rig") } } }));
                    _disk.TryRemove(file, out var moved);
                    _disk[new FileId("/w/elsewhere.rig")] = moved ?? "";
                    await _server.Client.NotifyAsync("workspace/didRenameFiles", new { files = new[] { new { oldUri = Uri(path), newUri = Uri("/w/elsewhere.rig") } } });
                    break;
                default:
                    _disk.TryRemove(new FileId("/w/elsewhere.rig"), out _);
                    await _server.Client.NotifyAsync("workspace/didDeleteFiles", new { files = new[] { new { uri = Uri("/w/elsewhere.rig") } } });
                    break;
            }
        }

        /// <summary>Every question is answered once, by a result or one of the three errors that a client expects; findings, hints, colours and outline are those of a fresh look.</summary>
        public async Task ComesToRestAsync()
        {
            foreach (var answer in await Task.WhenAll(_asked.Select(asked => asked.Answer)))
            {
                (answer.TryGetProperty("result", out _) || answer.GetProperty("error").GetProperty("code").GetInt32() is -32800 or -32801 or -32803).Should().BeTrue("{0}", answer);
            }

            _disk.TryRemove(new FileId("/w/elsewhere.rig"), out _);
            foreach (var path in Texts.Keys)
            {
                _disk[new FileId(path)] = Texts[path];
                await TellAsync(path, 1);
                await OpenAsync(path);
            }

            await _server.Client.NotifyAsync("workspace/didDeleteFiles", new { files = new[] { new { uri = Uri("/w/elsewhere.rig") } } });
            foreach (var path in Texts.Keys)
            {
                // An edit that changes nothing: the set that follows it is the last one.
                var version = _open[path].Version + 1;
                _open[path] = _open[path] with { Version = version };
                await _server.Client.NotifyAsync("textDocument/didChange", new { textDocument = new { uri = Uri(path), version }, contentChanges = new[] { new { range = new { start = new { line = 0, character = 0 }, end = new { line = 0, character = 0 } }, text = "" } } });
            }

            var last = await LastSetsAsync();
            var fresh = new EditorWorkspace(new Source(_disk));
            fresh.SetFolders(["/w"]);
            foreach (var (path, (text, _)) in _open)
            {
                fresh.Open(new FileId(path), text);
            }

            foreach (var path in Texts.Keys)
            {
                var file = new FileId(path);
                last[path].GetProperty("diagnostics").EnumerateArray().Select(found => $"{Start(found)} {found.GetProperty("code")} {found.GetProperty("message")}").Should()
                    .Equal(fresh.Current.Findings(file, default).Select(found => $"{found.Range.Start.Line}:{found.Range.Start.Character} {found.Check.Code} {found.Message}"), path);
                var whole = new LineRange(default, new Syntax.LinePosition(9999, 0));
                (await ResultAsync("textDocument/inlayHint", path)).EnumerateArray().Select(hint => hint.GetProperty("label").GetString()).Should()
                    .Equal(fresh.Current.InlayNotes(file, whole, default).Select(note => note.Label), path);
                (await ResultAsync("textDocument/semanticTokens/full", path)).GetProperty("data").EnumerateArray().Select(number => number.GetUInt32()).Should()
                    .Equal(Translate.MeaningTokens.ToProtocol(fresh.Current.MeaningTokens(file, null, default)), path);
                (await ResultAsync("textDocument/documentSymbol", path)).GetArrayLength().Should().Be(fresh.Current.Outline(file, default).Length, path);
            }

            _server.Client.Received.Where(message => message.TryGetProperty("method", out var method) && method.ValueEquals("window/logMessage")).Should().BeEmpty("nothing failed");
        }

        public async ValueTask DisposeAsync() => await _server.DisposeAsync();

        private async Task<Dictionary<string, JsonElement>> LastSetsAsync()
        {
            var last = new Dictionary<string, JsonElement>();
            while (!Texts.Keys.All(path => last.TryGetValue(path, out var set) && set.TryGetProperty("version", out var version) && version.GetInt32() == _open[path].Version))
            {
                var set = await _server.NextSetAsync();
                last[FileUri.Decode(set.GetProperty("uri").GetString()!).Path] = set;
            }

            return last;
        }

        private Task<JsonElement> ResultAsync(string method, string path) => _server.Client.ResultAsync(method, new
        {
            textDocument = new { uri = Uri(path) }, range = new { start = new { line = 0, character = 0 }, end = new { line = 9999, character = 0 } },
        });

        private async Task OpenAsync(string path)
        {
            if (!_open.ContainsKey(path))
            {
                _open[path] = (Texts[path], 1);
                await _server.OpenAsync(Uri(path), Texts[path]);
            }
        }

        private Task TellAsync(string path, int type) => _server.Client.NotifyAsync("workspace/didChangeWatchedFiles", new { changes = new[] { new { uri = Uri(path), type } } });

        private static string Uri(string path) => "file://" + path;

        private static string Start(JsonElement found) => $"{found.GetProperty("range").GetProperty("start").GetProperty("line")}:{found.GetProperty("range").GetProperty("start").GetProperty("character")}";

        /// <summary>A place between two characters: not inside a pair of units, nor inside a line break of two.</summary>
        private static int Whole(string text, int offset) =>
            offset > 0 && offset < text.Length && ((char.IsLowSurrogate(text[offset]) && char.IsHighSurrogate(text[offset - 1])) || (text[offset] == '\n' && text[offset - 1] == '\r')) ? offset - 1 : offset;

        /// <summary>Lines end in CR LF, LF or CR, as the protocol has it.</summary>
        private static object Position(string text, int offset)
        {
            var (line, start) = (0, 0);
            for (var at = 0; at < offset; at++)
            {
                if (text[at] == '\n' || (text[at] == '\r' && (at + 1 >= text.Length || text[at + 1] != '\n')))
                {
                    (line, start) = (line + 1, at + 1);
                }
            }

            return new { line, character = offset - start };
        }

        private sealed class Source(ConcurrentDictionary<FileId, string> disk) : IFileSource
        {
            public FileText Read(FileId file) => disk.TryGetValue(file, out var text) ? FileText.Of(text) : FileText.None("no such file");

            public IReadOnlyList<FileId> RigFilesUnder(string folder) => [.. disk.Keys.Where(file => FilePaths.IsUnder(file, [folder])).OrderBy(file => file.Path, StringComparer.Ordinal)];
        }
    }
}
