using RigLang.Editing.Tests.Support;
using RigLang.Model.Files;
using RigLang.Syntax;

namespace RigLang.Editing.Tests;

/// <summary>Whole cards over the examples; the texts are in the folder Golden.</summary>
public class HoverGoldenTests
{
    [Theory]
    [InlineData("rig", "people-carrier/6-rigs.rig", "rig coast \"", "coast")]
    [InlineData("rig-us", "pick-up/5-rigs.rig", "rig tour \"", "tour")]
    [InlineData("rig-over", "overloaded/too-much.rig", "rig too-much", "rig")]
    [InlineData("rig-like", "people-carrier/6-rigs.rig", "rig coast-full", "like")]
    [InlineData("vehicle-named", "people-carrier/6-rigs.rig", "    vehicle ", "van")]
    [InlineData("load-named", "people-carrier/6-rigs.rig", "    load ", "autumn")]
    [InlineData("hitch-named", "pick-up/5-rigs.rig", "    hitch ", "bars")]
    [InlineData("practice-named", "pick-up/5-rigs.rig", "    practice ", "common-na")]
    [InlineData("fact", "people-carrier/1-van.rig", "    wheelbase", "2.94")]
    [InlineData("fact-estimated", "people-carrier/1-van.rig", "    yaw-inertia", "yaw-inertia")]
    [InlineData("fact-choice", "people-carrier/2-caravan.rig", "    brakes", "electric")]
    [InlineData("question", "people-carrier/1-van.rig", "    yaw-inertia", "?")]
    [InlineData("unit", "pick-up/1-pick-up.rig", "    wheelbase", "in")]
    [InlineData("axle", "people-carrier/1-van.rig", "    axle rear", "axle")]
    [InlineData("trailer-axle-us", "pick-up/2-travel-trailer.rig", "    axle pair", "pair")]
    [InlineData("tank-level", "people-carrier/4-loads.rig", "        fill fresh", "fill")]
    [InlineData("tank-named", "people-carrier/4-loads.rig", "        fill fresh", "fresh")]
    [InlineData("item", "people-carrier/4-loads.rig", "        item awning", "item")]
    [InlineData("point", "people-carrier/4-loads.rig", "        item awning", "axle")]
    [InlineData("expect", "people-carrier/6-rigs.rig", "    expect front-axle-load", "front-axle-load")]
    [InlineData("expect-at-speed", "people-carrier/6-rigs.rig", "    expect damping", "expect")]
    [InlineData("leg", "people-carrier/trips/saddle.rig", "    leg top", "leg")]
    [InlineData("stop", "people-carrier/trips/saddle.rig", "    stop quarry", "stop")]
    [InlineData("trip-solved", "people-carrier/trips/north.rig", "trip north", "trip")]
    [InlineData("trip-fuel", "firewood/3-saturday.rig", "trip yard", "trip")]
    [InlineData("pass", "people-carrier/weighings/2026-09-05.rig", "    pass slack", "pass")]
    [InlineData("weighing", "pick-up/weighings/2026-05-02.rig", "weighing ", "weighing")]
    [InlineData("use", "people-carrier/6-rigs.rig", "use \"4-loads", "4-loads")]
    public void The_card_reads_as_it_is_kept(string name, string path, string line, string word)
    {
        var file = new FileId($"{Examples.Folder}/{path}");
        var lines = Examples.Read(path).ReplaceLineEndings("\n").Split('\n');
        var number = Array.FindIndex(lines, text => text.StartsWith(line, StringComparison.Ordinal));
        var at = lines[number].LastIndexOf(word, StringComparison.Ordinal);
        var card = Examples.Open(path).Current.Hover(file, new LinePosition(number, at), default);
        Golden.Holds(name, card?.Markdown ?? "(nothing)");
    }
}
