const assert = require("node:assert/strict");
const vscode = require("vscode");
const { ask, errors, findings, findingsThat, noErrors, open, placeOf, putBack, rangeOf, replace, serious, someError } = require("./support/documents.cjs");

describe("findings", () => {
  it("of the overloaded example say what is too much, each with its code, page and place", async () => {
    const document = await open("overloaded/too-much.rig");
    await someError(document);
    const place = rangeOf(document, "trailer                 palace", "rig too-much");
    const { line } = place.start;
    const over = errors(document).find(({ code, range }) => code.value === "RL306" && range.start.line === line);
    assert.equal(over.source, "riglang");
    assert.match(over.message, /tongue load is \d+ kg, \d+ kg over/);
    assert.ok(place.contains(over.range));
    assert.match(over.relatedInformation[0].message, /rating/);
    const page = await vscode.workspace.fs.readFile(over.code.target);
    assert.match(Buffer.from(page).toString("utf8"), /RL306/);
    await putBack(document);
  });

  it("there are none in a sound example", async () => {
    const document = await open("people-carrier/6-rigs.rig");
    // Opened behind it, so reported behind it.
    const other = await open("overloaded/too-much.rig");
    await someError(other);
    assert.deepEqual(serious(document), []);
    await putBack(other, document);
  });

  it("a wrong unit is marked while it is typed, and nothing once it is mended", async () => {
    const document = await open("people-carrier/1-van.rig");
    await replace(document, "2.94 m", "2.94 kg", "wheelbase");
    const [finding] = (await someError(document)).filter(({ severity }) => severity === vscode.DiagnosticSeverity.Error);
    assert.deepEqual(finding.range, rangeOf(document, "kg", "wheelbase"));
    assert.match(finding.message, /length/);
    await replace(document, "2.94 kg", "2.94 m", "wheelbase");
    await noErrors(document);
    await putBack(document);
  });

  it("follow unsaved text of another file", async () => {
    const rigs = await open("people-carrier/6-rigs.rig");
    const van = await open("people-carrier/1-van.rig");
    await replace(van, "vehicle van", "vehicle vann");
    await findingsThat(rigs, (list) => list.some(({ range }) => rigs.getText(range) === "van"), "a name that is nowhere");
    await replace(van, "vehicle vann", "vehicle van");
    await noErrors(rigs);
    await putBack(van, rigs);
  });

  it("a quick fix mends a misspelled keyword", async () => {
    const document = await open("people-carrier/1-van.rig");
    const sound = document.getText();
    await replace(document, "wheelbase", "wheelbse");
    await someError(document);
    const at = placeOf(document, "wheelbse");
    const offered = await ask("vscode.executeCodeActionProvider", document, new vscode.Range(at, at), vscode.CodeActionKind.QuickFix.value, 50);
    const fix = offered.find(({ title }) => title.includes("wheelbase"));
    assert.ok(fix, `offered: ${offered.map(({ title }) => title)}`);
    assert.ok(await vscode.workspace.applyEdit(fix.edit));
    assert.equal(document.getText(), sound);
    await noErrors(document);
    await putBack(document);
  });

  it("a finding is accepted with a reason", async () => {
    const document = await open("overloaded/too-much.rig");
    const note = (await findingsThat(document, (list) => list.some(({ code }) => code?.value === "RL412"), "a note")).find(({ code }) => code.value === "RL412");
    const offered = await ask("vscode.executeCodeActionProvider", document, note.range, undefined, 50);
    const accept = offered.find(({ title, edit }) => /accept/i.test(title) && edit !== undefined && JSON.stringify(edit).includes("no-sway-device"));
    assert.ok(accept, `offered: ${offered.map(({ title }) => title)}`);
    assert.ok(await vscode.workspace.applyEdit(accept.edit));
    assert.match(document.getText(), /allow +no-sway-device +because/);
    await findingsThat(document, (list) => list.every(({ code }) => code?.value !== "RL412"), "the note to go");
    await putBack(document);
    assert.deepEqual(findings(document).filter(({ code }) => code === undefined), []);
  });

  it("stand at the right place with CRLF, and behind characters of several units", async () => {
    const document = await open("people-carrier/1-van.rig");
    await vscode.window.activeTextEditor.edit((edit) => edit.setEndOfLine(vscode.EndOfLine.CRLF));
    assert.match(document.getText(), /\r\n/);
    // An emoji is two UTF-16 units, an e with a combining accent two as well.
    await replace(document, "    wheelbase", '    note "\u{1F699} cafe\u0301" astray\n    wheelbase');
    await findingsThat(document, () => serious(document).length > 0, "a stray word");
    assert.deepEqual(serious(document).map(({ range }) => document.getText(range)), ["astray"]);
    await replace(document, " astray", "   ");
    await noErrors(document);
    await vscode.commands.executeCommand("editor.action.formatDocument");
    assert.match(document.getText(), /^    note "\u{1F699} cafe\u0301"\r$/mu);
    assert.doesNotMatch(document.getText(), /[^\r]\n/);
    await putBack(document);
  });
});
