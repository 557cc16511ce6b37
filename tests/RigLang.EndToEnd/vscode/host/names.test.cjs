const assert = require("node:assert/strict");
const { ask, open, placeOf, putBack, rangeOf } = require("./support/documents.cjs");

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
});
