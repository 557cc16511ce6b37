const assert = require("node:assert/strict");
const { readdirSync, readFileSync } = require("node:fs");
const path = require("node:path");
const vscode = require("vscode");
const { errors, findings, findingsThat, folder, open, putBack, serious, someError, untitled } = require("./support/documents.cjs");

const extension = () => vscode.extensions.getExtension("riglang.riglang");

const close = () => vscode.commands.executeCommand("workbench.action.revertAndCloseActiveEditor");

describe("the extension", () => {
  it("comes to a folder that has rig files, without one being opened", async () => {
    await extension().activate();
    assert.equal(extension().isActive, true);
  });

  it("has every command that its manifest names", async () => {
    const commands = await vscode.commands.getCommands(true);
    const named = extension().packageJSON.contributes.commands.map(({ command }) => command);
    assert.ok(named.length > 0);
    assert.deepEqual(named.filter((command) => !commands.includes(command)), []);
  });

  it("starts the server anew", async () => {
    const document = await open("overloaded/too-much.rig");
    await someError(document);
    const gone = new Promise((resolve) => {
      const subscription = vscode.languages.onDidChangeDiagnostics(() => {
        if (findings(document).length === 0) {
          subscription.dispose();
          resolve();
        }
      });
    });
    await vscode.commands.executeCommand("riglang.restart");
    await gone;
    await someError(document);
    await putBack(document);
  });

  it("knows rig files by their extension", async () => {
    const document = await vscode.workspace.openTextDocument(vscode.Uri.joinPath(folder(), "firewood/1-hatch.rig"));
    assert.equal(document.languageId, "rig");
  });

  it("begins a new file with a rig to fill in, all questions open", async () => {
    await vscode.commands.executeCommand("riglang.newRig");
    const { document } = vscode.window.activeTextEditor;
    assert.equal(document.languageId, "rig");
    assert.match(document.getText(), /^vehicle car "What pulls"$/m);
    assert.match(document.getText(), /^ {4}trailer +caravan$/m);
    const list = await findingsThat(document, (found) => found.length > 5, "open questions");
    assert.ok(list.every(({ code }) => code.value === "RL171"), list.map(({ message }) => message).join("\n"));
    await close();
  });

  it("its snippets are sound as they come", async () => {
    const snippets = JSON.parse(readFileSync(path.join(extension().extensionPath, "snippets/rig.json"), "utf8"));
    // Later ones name the rig and the hitch of earlier ones.
    const document = await untitled("");
    const editor = vscode.window.activeTextEditor;
    for (const { body } of Object.values(snippets)) {
      const end = document.lineAt(document.lineCount - 1).range.end;
      await editor.insertSnippet(new vscode.SnippetString(`${body.join("\n")}\n\n`), end);
    }
    await findingsThat(document, (found) => found.length > 20, "open questions");
    // Two trips of one name, and two weighings: the snippets aren't meant for one file. A rig without a battery can't charge.
    const twice = errors(document).filter(({ message }) => !/twice|already|declared/.test(message));
    assert.deepEqual(twice.map(({ message }) => message), []);
    await close();
  });

  it("the examples of its first steps are sound, and come to a verdict", async () => {
    const steps = path.join(extension().extensionPath, "walkthrough");
    const blocks = ["vehicle.md", "load.md"].map((name) => readFileSync(path.join(steps, name), "utf8").match(/```rig\n(.*?)```/s)[1]);
    assert.ok(readdirSync(steps).length >= blocks.length);
    // A word astray at the end, so that it shows when everything has been looked at.
    const document = await untitled(`${blocks.join("\n")}    astray\n`);
    await someError(document);
    assert.deepEqual(serious(document).map(({ range }) => document.getText(range)), ["astray"]);
    const hovers = await vscode.commands.executeCommand("vscode.executeHoverProvider", document.uri, document.positionAt(document.getText().indexOf("lake")));
    assert.match(hovers[0].contents[0].value, /Within all \d+ ratings/);
    await close();
  });

  it("shows and hides the computed values by one command", async () => {
    const shown = () => vscode.workspace.getConfiguration("riglang").get("hints");
    assert.equal(shown(), true);
    await vscode.commands.executeCommand("riglang.toggleHints");
    assert.equal(shown(), false);
    await vscode.commands.executeCommand("riglang.toggleHints");
    assert.equal(shown(), true);
  });

  it("says what it does in folders that aren't trusted, and in those that are on no disk", () => {
    const { untrustedWorkspaces, virtualWorkspaces } = extension().packageJSON.capabilities;
    assert.equal(untrustedWorkspaces.supported, "limited");
    assert.deepEqual(untrustedWorkspaces.restrictedConfigurations, ["riglang.serverPath"]);
    assert.equal(virtualWorkspaces.supported, "limited");
  });
});
