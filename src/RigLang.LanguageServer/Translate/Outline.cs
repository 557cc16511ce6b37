using RigLang.Editing;
using RigLang.LanguageServer.Documents;
using RigLang.LanguageServer.Protocol;

namespace RigLang.LanguageServer.Translate;

/// <summary>The outline, nested or flat. Only those kinds are used that every client knows (1 to 18).</summary>
internal static class Outline
{
    internal static DocumentSymbol Nested(OutlineEntry entry) => new(
        Name(entry),
        Kind(entry.Sort),
        Places.ToProtocol(entry.Range),
        Places.ToProtocol(NameWithin(entry)),
        entry.Detail.Length > 0 ? entry.Detail : null,
        entry.Children.Length > 0 ? [.. entry.Children.Select(Nested)] : null);

    internal static IEnumerable<SymbolInformation> Flat(IEnumerable<OutlineEntry> entries, string uri, string? container = null) => entries.SelectMany(entry =>
        Flat(entry.Children, uri, Name(entry)).Prepend(new SymbolInformation(Name(entry), Kind(entry.Sort), new Location(uri, Places.ToProtocol(entry.Range)), container)));

    internal static SymbolInformation Found(NamedPlace found, OpenDocuments documents) =>
        new(found.Name, Kind(found.Sort), Places.ToProtocol(found.Place, documents), found.Container.Length > 0 ? found.Container : null);

    /// <summary>The protocol allows no empty name, and a person typing one has none for a moment.</summary>
    private static string Name(OutlineEntry entry) => string.IsNullOrWhiteSpace(entry.Name) ? "(no name)" : entry.Name;

    /// <summary>The protocol wants the name inside the whole; clients refuse the outline otherwise.</summary>
    private static LineRange NameWithin(OutlineEntry entry) =>
        entry.NameRange.Start >= entry.Range.Start && entry.NameRange.End <= entry.Range.End ? entry.NameRange : new LineRange(entry.Range.Start, entry.Range.Start);

    private static int Kind(OutlineSort sort) => sort switch
    {
        OutlineSort.File => 1, // File
        OutlineSort.Vehicle or OutlineSort.Trailer => 5, // Class
        OutlineSort.Hitch => 11, // Interface
        OutlineSort.Load => 4, // Package
        OutlineSort.Rig => 2, // Module
        OutlineSort.Trip or OutlineSort.Run => 12, // Function
        OutlineSort.Weighing => 18, // Array
        OutlineSort.Practice => 3, // Namespace
        _ => 8, // Field
    };
}
