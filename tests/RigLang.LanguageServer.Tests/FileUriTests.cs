using FsCheck.Xunit;
using RigLang.LanguageServer.Documents;
using RigLang.Model.Files;

namespace RigLang.LanguageServer.Tests;

public class FileUriTests
{
    [Theory]
    [InlineData("file:///home/ann/coast.rig", "/home/ann/coast.rig")]
    [InlineData("FILE:///home/ann/coast.rig", "/home/ann/coast.rig")]
    [InlineData("file:/home/ann/coast.rig", "/home/ann/coast.rig")]
    [InlineData("file://localhost/home/ann/coast.rig", "/home/ann/coast.rig")]
    [InlineData("file:///home/ann/my%20rig.rig", "/home/ann/my rig.rig")]
    [InlineData("file:///home/ann/my rig.rig", "/home/ann/my rig.rig")]
    [InlineData("file:///home/ann/a%23b.rig", "/home/ann/a#b.rig")]
    [InlineData("file:///home/ann/a#b.rig", "/home/ann/a#b.rig")]
    [InlineData("file:///home/ann/a%3Fb.rig", "/home/ann/a?b.rig")]
    [InlineData("file:///home/ann/100%25.rig", "/home/ann/100%.rig")]
    [InlineData("file:///home/ann/100%2525.rig", "/home/ann/100%25.rig")]
    [InlineData("file:///home/ann/100%.rig", "/home/ann/100%.rig")]
    [InlineData("file:///home/ann/%zz.rig", "/home/ann/%zz.rig")]
    [InlineData("file:///home/ann/%c3%a9t%C3%A9.rig", "/home/ann/été.rig")]
    [InlineData("file:///home/ann/été.rig", "/home/ann/été.rig")]
    [InlineData("file:///home/ann/%F0%9F%9A%99.rig", "/home/ann/🚙.rig")]
    [InlineData("file:///home/ann/%FF.rig", "/home/ann/%FF.rig")]
    [InlineData("file:///home/ann/a%2Bb+c.rig", "/home/ann/a+b+c.rig")]
    [InlineData("file:///C:/Rigs/coast.rig", "C:/Rigs/coast.rig")]
    [InlineData("file:///c:/Rigs/coast.rig", "C:/Rigs/coast.rig")]
    [InlineData("file:///c%3A/Rigs/coast.rig", "C:/Rigs/coast.rig")]
    [InlineData("file:///c%3a/Rigs/coast.rig", "C:/Rigs/coast.rig")]
    [InlineData("file://c:/Rigs/coast.rig", "C:/Rigs/coast.rig")]
    [InlineData("file:///C:/Rigs%5Ccoast.rig", "C:/Rigs/coast.rig")]
    [InlineData("file:///a/back%5Cslash.rig", "/a/back\\slash.rig")]
    [InlineData("file:///cc:/coast.rig", "/cc:/coast.rig")]
    [InlineData("file://Server/share/coast.rig", "//server/share/coast.rig")]
    [InlineData("untitled:Untitled-1", "untitled:Untitled-1")]
    [InlineData("untitled:/home/ann/new%20one.rig", "untitled:/home/ann/new%20one.rig")]
    [InlineData("vscode-vfs://github/x/y%20z.rig", "vscode-vfs://github/x/y%20z.rig")]
    [InlineData("file://", "")]
    [InlineData("", "")]
    public void A_uri_means_a_file(string uri, string path) => FileUri.Decode(uri).Should().Be(new FileId(path));

    [Theory]
    [InlineData("/home/ann/my rig.rig", "file:///home/ann/my%20rig.rig")]
    [InlineData("/a#b?c%d.rig", "file:///a%23b%3Fc%25d.rig")]
    [InlineData("/été/🚙.rig", "file:///%C3%A9t%C3%A9/%F0%9F%9A%99.rig")]
    [InlineData("C:/Rigs/coast.rig", "file:///C:/Rigs/coast.rig")]
    [InlineData("//server/share/a b.rig", "file://server/share/a%20b.rig")]
    [InlineData("untitled:Untitled-1", "untitled:Untitled-1")]
    public void A_file_has_a_uri(string path, string uri) => FileUri.Encode(new FileId(path)).Should().Be(uri);

    [Property]
    public bool A_path_comes_back_from_its_uri(string name)
    {
        var path = "/" + new string([.. (name ?? "").Where(c => !char.IsSurrogate(c))]).TrimStart('/');
        var isDrive = path.Length > 2 && path[2] == ':'; // "/c:" is how a URI writes a drive, so such a path is the drive's
        return isDrive || FileUri.Decode(FileUri.Encode(new FileId(path))).Path == path;
    }

    [Property]
    public bool Any_text_is_decoded_without_complaint(string uri) => FileUri.Decode(uri ?? "").Path is not null && FileUri.Decode("file:" + uri).Path is not null;

    [Theory]
    [InlineData("file:///home/ann/", "/home/ann")]
    [InlineData("file:///home/ann", "/home/ann")]
    [InlineData("file:///", "/")]
    [InlineData("file:///c%3A/Rigs/", "C:/Rigs")]
    public void A_folder_has_no_slash_at_its_end(string uri, string path) => FileUri.DecodeFolder(uri).Should().Be(path);
}
