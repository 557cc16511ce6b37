// What the tests do in the editor: open, type, find a place by its text, wait for findings.
const assert = require("node:assert/strict");
const path = require("node:path");
const vscode = require("vscode");

/** How long anything may take before the test fails. Waiting ends as soon as the thing is there. */
const patience = 30_000;

const folder = () => vscode.workspace.workspaceFolders[0].uri;

const uriOf = (name) => vscode.Uri.joinPath(folder(), name);

async function open(name) {
  const document = await vscode.workspace.openTextDocument(uriOf(name));
  await vscode.window.showTextDocument(document, { preview: false });
  return document;
}

/** A document that is on no disk. */
async function untitled(content) {
  const document = await vscode.workspace.openTextDocument({ language: "rig", content });
  await vscode.window.showTextDocument(document, { preview: false });
  return document;
}

/** The range of the first `sought` behind the first `behind`. */
function rangeOf(document, sought, behind = "") {
  const text = document.getText();
  const from = text.indexOf(behind);
  const start = from < 0 ? -1 : text.indexOf(sought, from + behind.length);
  assert.ok(start >= 0, `'${sought}' is not behind '${behind}' in:\n${text}`);
  return new vscode.Range(document.positionAt(start), document.positionAt(start + sought.length));
}

const placeOf = (document, sought, behind) => rangeOf(document, sought, behind).start;

async function replace(document, sought, replacement, behind) {
  const edit = new vscode.WorkspaceEdit();
  edit.replace(document.uri, rangeOf(document, sought, behind), replacement);
  assert.ok(await vscode.workspace.applyEdit(edit));
}

/** Back to what is on the disk, and shut. */
async function putBack(...documents) {
  for (const document of documents) {
    await vscode.window.showTextDocument(document, { preview: false });
    await vscode.commands.executeCommand("workbench.action.revertAndCloseActiveEditor");
  }
}

/** `probe`'s first value that isn't false, asked again whenever `event` comes. */
function eventually(what, probe, event) {
  return new Promise((resolve, reject) => {
    const late = setTimeout(() => end(reject, new Error(`waited in vain for ${typeof what === "function" ? what() : what}`)), patience);
    const subscription = event(() => look());
    const end = (settle, value) => {
      clearTimeout(late);
      subscription.dispose();
      settle(value);
    };
    const look = async () => {
      const value = await probe();
      if (value) {
        end(resolve, value);
      }
    };
    void look();
  });
}

const findings = (document) => vscode.languages.getDiagnostics(document.uri);
const serious = (document) => findings(document).filter(({ severity }) => severity <= vscode.DiagnosticSeverity.Warning);
const errors = (document) => findings(document).filter(({ severity }) => severity === vscode.DiagnosticSeverity.Error);

/** The findings of a document as soon as they fit. */
function findingsThat(document, fits, what) {
  const shown = () => `${what} in ${path.basename(document.fileName)}; there are: ${findings(document).map((one) => `${one.range.start.line + 1}: ${one.message}`).join("\n")}`;
  return eventually(shown, () => fits(findings(document)) && findings(document), vscode.languages.onDidChangeDiagnostics);
}

const noErrors = (document) => findingsThat(document, () => errors(document).length === 0, "no errors");
const someError = (document) => findingsThat(document, () => errors(document).length > 0, "an error");

const ask = (command, document, ...more) => vscode.commands.executeCommand(command, document.uri, ...more);

async function hoverText(document, sought, behind) {
  const hovers = await ask("vscode.executeHoverProvider", document, placeOf(document, sought, behind));
  return hovers.flatMap(({ contents }) => contents.map((content) => content.value)).join("\n");
}

module.exports = { ask, errors, eventually, findings, findingsThat, folder, hoverText, noErrors, open, placeOf, putBack, rangeOf, replace, serious, someError, untitled, uriOf };
