const assert = require("node:assert/strict");
const vscode = require("vscode");
const { findings, folder, open, putBack, someError } = require("./support/documents.cjs");

const extension = () => vscode.extensions.getExtension("riglang.riglang");

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
});
