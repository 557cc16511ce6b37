const assert = require("node:assert/strict");
const vscode = require("vscode");
const { ask, errors, findingsThat, hoverText, noErrors, open, placeOf, putBack, rangeOf, uriOf } = require("./support/documents.cjs");

const flat = (symbols) => symbols.flatMap((symbol) => [symbol, ...flat(symbol.children ?? [])]);

describe("names", () => {
  it("lead to their declaration in another file", async () => {
    const rigs = await open("people-carrier/6-rigs.rig");
    const van = await open("people-carrier/1-van.rig");
    const found = await ask("vscode.executeDefinitionProvider", rigs, placeOf(rigs, "van", "    vehicle"));
    assert.deepEqual(found.map(({ uri, targetUri, range, targetSelectionRange }) => [(uri ?? targetUri).path, van.getText(range ?? targetSelectionRange)]), [[van.uri.path, "van"]]);
    await putBack(van, rigs);
  });

  it("are found where they are used, in other files too", async () => {
    const van = await open("people-carrier/1-van.rig");
    const found = await ask("vscode.executeReferenceProvider", van, placeOf(van, "van", "vehicle "));
    assert.ok(found.some(({ uri }) => uri.path.endsWith("/6-rigs.rig")), found.map(({ uri }) => uri.path).join());
    assert.ok(found.every(({ uri, range }) => uri.path !== van.uri.path || van.getText(range) === "van"));
    await putBack(van);
  });

  it("make the outline: declarations with their blocks inside", async () => {
    const van = await open("people-carrier/1-van.rig");
    const symbols = await ask("vscode.executeDocumentSymbolProvider", van);
    const declared = symbols.find(({ name }) => name === "van");
    assert.match(declared.detail, /Electric people carrier/);
    assert.equal(flat(declared.children).filter(({ name }) => /front|rear/.test(name)).length >= 2, true);
    assert.ok(declared.range.contains(rangeOf(van, "wheelbase")));
    await putBack(van);
  });

  it("declarations and blocks fold", async () => {
    const van = await open("people-carrier/1-van.rig");
    const starts = (await ask("vscode.executeFoldingRangeProvider", van)).map(({ start }) => start);
    assert.ok(starts.includes(placeOf(van, "vehicle van").line));
    assert.ok(starts.includes(placeOf(van, "    axle front").line));
    await putBack(van);
  });

  it("the same name is lit up where it stands in the file", async () => {
    const rigs = await open("people-carrier/6-rigs.rig");
    const found = await ask("vscode.executeDocumentHighlights", rigs, placeOf(rigs, "coast", "\nrig "));
    assert.deepEqual(found.map(({ range }) => rigs.getText(range)), ["coast", "coast"]);
    await putBack(rigs);
  });

  it("a rename reaches every file, and what was sound stays sound", async () => {
    const van = await open("people-carrier/1-van.rig");
    const rigs = await open("people-carrier/6-rigs.rig");
    const before = await hoverText(rigs, "coast", "\nrig ");
    const edit = await ask("vscode.executeDocumentRenameProvider", rigs, placeOf(rigs, "van", "    vehicle"), "carrier");
    assert.ok(edit.entries().length >= 2, "one file alone is edited");
    assert.ok(await vscode.workspace.applyEdit(edit));
    assert.match(van.getText(), /^vehicle carrier "/m);
    assert.match(rigs.getText(), /^ {4}vehicle +carrier$/m);
    await noErrors(rigs);
    assert.equal(await hoverText(rigs, "coast", "\nrig "), before.replaceAll("vehicle van", "vehicle carrier").replaceAll("`van`", "`carrier`"));
    for (const [uri] of edit.entries()) {
      await putBack(await vscode.workspace.openTextDocument(uri));
    }
  });

  it("a rename to what is no name, or is taken, is refused with the reason", async () => {
    const rigs = await open("people-carrier/6-rigs.rig");
    const at = placeOf(rigs, "coast", "\nrig ");
    await assert.rejects(ask("vscode.executeDocumentRenameProvider", rigs, at, "No Name"), /\S/);
    await assert.rejects(ask("vscode.executeDocumentRenameProvider", rigs, at, "coast-full"), /coast-full/);
    const prepared = await ask("vscode.prepareRename", rigs, at);
    assert.equal(rigs.getText(prepared.range ?? prepared), "coast");
    await putBack(rigs);
  });

  it("of the whole folder are found by some of their letters", async () => {
    const found = await vscode.commands.executeCommand("vscode.executeWorkspaceSymbolProvider", "wren");
    const wren = found.find(({ name }) => name === "wren");
    assert.ok(wren, `found: ${found.map(({ name }) => name)}`);
    assert.ok(wren.location.uri.path.endsWith("people-carrier/2-caravan.rig"));
  });

  it("a path opens its file: of `use`, and of a track", async () => {
    const rigs = await open("people-carrier/6-rigs.rig");
    const links = await ask("vscode.executeLinkProvider", rigs, 100);
    const van = links.find(({ range }) => rigs.getText(range).includes("1-van.rig"));
    assert.equal(van.target.path, uriOf("people-carrier/1-van.rig").path);
    const trip = await open("people-carrier/trips/saddle.rig");
    const tracks = (await ask("vscode.executeLinkProvider", trip, 100)).filter(({ target }) => target.path.endsWith(".gpx"));
    assert.ok(tracks.length > 0);
    await putBack(trip, rigs);
  });

  it("a file that gets another name is used by its new one", async () => {
    const rigs = await open("people-carrier/6-rigs.rig");
    const [from, to] = [uriOf("people-carrier/3-hitch.rig"), uriOf("people-carrier/bars.rig")];
    const move = async (one, other) => {
      const edit = new vscode.WorkspaceEdit();
      edit.renameFile(one, other);
      assert.ok(await vscode.workspace.applyEdit(edit));
    };
    await move(from, to);
    assert.match(rigs.getText(), /^use "bars\.rig"$/m);
    await findingsThat(rigs, () => errors(rigs).length === 0, "no errors");
    await move(to, from);
    assert.match(rigs.getText(), /^use "3-hitch\.rig"$/m);
    await noErrors(rigs);
    await putBack(rigs);
  });

  it("a selection widens by meaning", async () => {
    const van = await open("people-carrier/1-van.rig");
    const [first] = await ask("vscode.executeSelectionRangeProvider", van, [placeOf(van, "1195", "carries")]);
    const widened = [];
    for (let one = first; one !== undefined; one = one.parent) {
      widened.push(van.getText(one.range));
    }
    const lines = widened.map((text) => text.split("\n")[0]);
    assert.ok(lines.includes("1195 kg") || lines.includes("1195"), lines.join(" | "));
    assert.ok(widened.some((text) => text.trim().startsWith("axle front")), "the block is not among them");
    assert.ok(widened.some((text) => text.startsWith("vehicle van")), "the declaration is not among them");
    await putBack(van);
  });
});
