namespace RigLang.LanguageServer.Queue;

/// <summary>What becomes of a read when its file is edited while it runs.</summary>
internal enum ReadSort
{
    /// <summary>It is about a place or a name and still of use: it runs to its end on the state it was given.</summary>
    Lasting,

    /// <summary>It covers the text as it stood, or would edit it: it is broken off and answered "content modified", and the client asks again.</summary>
    OfText,
}
