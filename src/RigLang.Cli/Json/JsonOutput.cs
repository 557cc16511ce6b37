using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using RigLang.Cli.Checking;
using RigLang.Cli.Comparing;
using RigLang.Cli.Explaining;
using RigLang.Cli.Planning;
using RigLang.Cli.Showing;

namespace RigLang.Cli.Json;

/// <summary>What the program writes for other programs. Names are only added within a version; a change of meaning makes a new one.</summary>
[JsonSerializable(typeof(CheckDocument))]
[JsonSerializable(typeof(ShowDocument))]
[JsonSerializable(typeof(CompareDocument))]
[JsonSerializable(typeof(PlanDocument))]
[JsonSerializable(typeof(WhyDocument))]
internal sealed partial class JsonOutput : JsonSerializerContext
{
    private static readonly Lazy<JsonOutput> Readable = new(() => new JsonOutput(new JsonSerializerOptions
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
        WriteIndented = true,
        NewLine = "\n",
        // Signs such as ± and ² as themselves: the output is UTF-8 and nobody's web page.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    }));

    public static void Write<T>(Stream stream, T document)
    {
        JsonSerializer.Serialize(stream, document, (JsonTypeInfo<T>)Readable.Value.GetTypeInfo(typeof(T))!);
        stream.Write("\n"u8);
        stream.Flush();
    }
}
