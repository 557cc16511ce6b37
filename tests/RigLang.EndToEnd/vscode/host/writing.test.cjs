const assert = require("node:assert/strict");
const vscode = require("vscode");
const { ask, eventually, noErrors, open, placeOf, putBack, rangeOf, replace, someError, untitled } = require("./support/documents.cjs");

const labels = ({ items }) => items.map(({ label }) => (typeof label === "string" ? label : label.label));

describe("writing", () => {
  it("completion offers the facts that fit and aren't there yet", async () => {
    const van = await open("people-carrier/1-van.rig");
    await replace(van, "    wheelbase", "    \n    wheelbase");
    const offered = labels(await ask("vscode.executeCompletionItemProvider", van, rangeOf(van, "    \n    wheelbase").start.translate(0, 4)));
    assert.ok(offered.includes("roof-rating"));
    assert.ok(!offered.includes("wheelbase"), "wheelbase is there already");
    assert.ok(!offered.includes("track-width"), "track-width belongs to an axle");
    await putBack(van);
  });

  it("completion of a reference offers the names of that kind", async () => {
    const rigs = await open("people-carrier/6-rigs.rig");
    const offered = labels(await ask("vscode.executeCompletionItemProvider", rigs, placeOf(rigs, "van", "    vehicle")));
    assert.ok(offered.includes("van"));
    assert.ok(!offered.includes("wren"), "wren is a trailer");
    await putBack(rigs);
  });

  it("a whole declaration is put in as a snippet", async () => {
    const document = await untitled("");
    const { items } = await ask("vscode.executeCompletionItemProvider", document, new vscode.Position(0, 0));
    const vehicle = items.find(({ label, insertText }) => (label.label ?? label).startsWith("vehicle") && insertText instanceof vscode.SnippetString && insertText.value.includes("wheelbase"));
    assert.ok(vehicle, `offered: ${labels({ items })}`);
    await vscode.window.activeTextEditor.insertSnippet(vehicle.insertText, new vscode.Range(0, 0, 0, 0));
    assert.match(document.getText(), /^vehicle name "title"\n {4}wheelbase/);
    await vscode.commands.executeCommand("workbench.action.revertAndCloseActiveEditor");
  });

  it("formatting sets blanks right and leaves the rest", async () => {
    const van = await open("people-carrier/1-van.rig");
    const sound = van.getText();
    await replace(van, "2.94 m", "2.94 m   ", "wheelbase");
    await vscode.commands.executeCommand("editor.action.formatDocument");
    assert.equal(van.getText(), sound);
    await putBack(van);
  });

  it("the next line is indented behind an opening, and comments are toggled by #", async () => {
    const document = await untitled("vehicle van");
    const type = (text) => vscode.commands.executeCommand("type", { text });
    await vscode.commands.executeCommand("cursorBottom");
    await type("\n");
    await type("axle front");
    await type("\n");
    await type("carries 1195 kg");
    assert.equal(document.getText(), "vehicle van\n    axle front\n        carries 1195 kg");
    await vscode.commands.executeCommand("editor.action.commentLine");
    assert.equal(document.lineAt(2).text, "        # carries 1195 kg");
    await vscode.commands.executeCommand("workbench.action.revertAndCloseActiveEditor");
  });

  it("a file that is on no disk is checked too", async () => {
    const document = await untitled("vehicle van\n    wheelbase 3 kg\n");
    await someError(document);
    await replace(document, "kg", "m");
    await noErrors(document);
    await vscode.commands.executeCommand("workbench.action.revertAndCloseActiveEditor");
  });

  it("a line of several parts shows which one is being written", async () => {
    const van = await open("people-carrier/1-van.rig");
    const help = await ask("vscode.executeSignatureHelpProvider", van, rangeOf(van, "84 kg", "item driver").end.translate(0, 1), " ");
    assert.match(help.signatures[0].label, /^item /);
    assert.ok(help.signatures[0].parameters.length > 1);
    await putBack(van);
  });

  it("a quantity is written in another unit, its meaning kept", async () => {
    const van = await open("people-carrier/1-van.rig");
    const offered = await ask("vscode.executeCodeActionProvider", van, rangeOf(van, "2.94", "wheelbase"), vscode.CodeActionKind.Refactor.value, 50);
    const feet = offered.find(({ title }) => /\b(ft|in)\b/.test(title));
    assert.ok(feet, `offered: ${offered.map(({ title }) => title)}`);
    assert.ok(await vscode.workspace.applyEdit(feet.edit));
    assert.match(van.getText(), /wheelbase +[\d. ]+(ft|in)/);
    await noErrors(van);
    await putBack(van);
  });

  it("the line that is left with Enter is put in order", async () => {
    const van = await open("people-carrier/1-van.rig");
    const at = placeOf(van, "\n", "wheelbase");
    const line = van.lineAt(at.line).text;
    vscode.window.activeTextEditor.selection = new vscode.Selection(at, at);
    await vscode.commands.executeCommand("type", { text: "   " });
    assert.equal(van.lineAt(at.line).text, `${line}   `);
    await vscode.commands.executeCommand("type", { text: "\n" });
    await eventually("the blanks to go", () => van.lineAt(at.line).text === line, vscode.workspace.onDidChangeTextDocument);
    await putBack(van);
  });
});
