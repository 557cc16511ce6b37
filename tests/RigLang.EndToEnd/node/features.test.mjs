// Every feature that session.test.mjs doesn't come by, asked as an editor asks, over a copy of an example; every message held against the protocol.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { Session, uriOf } from "./lib/session.mjs";
import { applyEdits, positionAt, rangeOf, textIn } from "./lib/text.mjs";
import { copyExample } from "./lib/workspace.mjs";

const workspace = copyExample("people-carrier");
const open = (pattern) => {
  const name = workspace.fileWith(pattern);
  return { name, uri: workspace.uri(name), text: workspace.read(name) };
};
const vehicle = open(/^vehicle van\b/m);
const rig = open(/^rig coast\s/m);
const trip = open(/^trip saddle\b/m);
const day = open(/^trip north\b/m);
const load = open(/^load autumn\b/m);
const spare = { uri: workspace.uri("spare.rig"), text: "load spare\n    on vehicle\n        item wheel 18 kg at rear-axle\n        item jack 4 kg at rear-axle\n" };
const documents = [vehicle, rig, trip, day, load, spare];

let session;
let offer;

const at = ({ uri, text }, sought, behind) => ({ textDocument: { uri }, position: rangeOf(text, sought, behind).start });
const whole = ({ uri, text }) => ({ textDocument: { uri }, range: { start: { line: 0, character: 0 }, end: positionAt(text, text.length) } });
const ask = (method, params) => session.request(method, params);
const texts = (ranges, { text }) => ranges.map((range) => textIn(text, range));

async function change(document, range, newText) {
  document.text = applyEdits(document.text, [{ range, newText }]);
  return session.change(document.uri, { range, text: newText });
}

/** The texts of all files as an edit of the workspace leaves them. */
function applied(edit) {
  const after = new Map(documents.map(({ uri, text }) => [uri, text]));
  for (const { textDocument, edits } of edit.documentChanges) {
    after.set(textDocument.uri, applyEdits(after.get(textDocument.uri) ?? workspace.read(decodeURIComponent(textDocument.uri.slice(uriOf(workspace.folder).length + 1))), edits));
  }
  return after;
}

async function actions(document, sought, only) {
  const { position } = at(document, sought);
  return ask("textDocument/codeAction", { textDocument: { uri: document.uri }, range: { start: position, end: position }, context: { diagnostics: [], ...(only && { only }) } });
}

before(async () => {
  session = new Session();
  offer = (await session.initialize(workspace.folder)).capabilities;
  for (const { uri, text } of documents) {
    await session.open(uri, text);
  }
});

after(() => {
  session.server.kill();
  workspace.remove();
});

test("all of it is offered", () => {
  for (const name of ["typeDefinition", "documentHighlight", "rename", "linkedEditingRange", "selectionRange", "documentLink", "workspaceSymbol", "signatureHelp", "codeLens", "documentOnTypeFormatting", "codeAction"]) {
    assert.ok(offer[`${name}Provider`], `${name} is not offered`);
  }
  assert.deepEqual(offer.semanticTokensProvider.full, { delta: true });
  assert.deepEqual(offer.workspace.textDocumentContent, { schemes: ["riglang-report"] });
  assert.equal(offer.diagnosticProvider, undefined, "findings are sent to a client that takes them");
});

test("the same name is highlighted, where it is made apart from where it is used", async () => {
  const found = await ask("textDocument/documentHighlight", at(trip, "quarry", "leg "));
  assert.ok(found.length >= 2);
  assert.ok(texts(found.map(({ range }) => range), trip).every((text) => text === "quarry"));
  assert.deepEqual(new Set(found.map(({ kind }) => kind)), new Set([2, 3]));
});

test("behind the name of a part is the part it is like, or itself", async () => {
  const found = await ask("textDocument/typeDefinition", at(rig, "van", "    vehicle"));
  assert.deepEqual(found.map(({ uri }) => uri), [vehicle.uri]);
});

test("a rename goes through all files and leaves every finding as it was", async () => {
  const prepared = await ask("textDocument/prepareRename", at(vehicle, "van", "vehicle "));
  assert.equal(prepared.placeholder, "van");
  const edit = await ask("textDocument/rename", { ...at(vehicle, "van", "vehicle "), newName: "kombi" });
  const after = applied(edit);
  assert.match(after.get(vehicle.uri), /^vehicle kombi\b/m);
  assert.match(after.get(rig.uri), /^ {4}vehicle +kombi\b/m);
  assert.ok(![...after.values()].some((text) => /\bvehicle +van\b/.test(text)));
});

test("a rename that would change a meaning is refused in words", async () => {
  await assert.rejects(ask("textDocument/rename", { ...at(vehicle, "van", "vehicle "), newName: "No Name" }), (error) => error.code === -32803 && /no name/.test(error.message));
});

test("a trip's place and its stops are typed over together", async () => {
  const { ranges, wordPattern } = await ask("textDocument/linkedEditingRange", at(day, "mill", "leg "));
  assert.ok(texts(ranges, day).every((text) => text === "mill") && ranges.length >= 2);
  assert.match("other-name", new RegExp(`^(?:${wordPattern})$`));
  // A trip in another file that is like this one means its places too.
  assert.equal(await ask("textDocument/linkedEditingRange", at(trip, "quarry", "leg ")), null);
});

test("a selection widens by meaning up to the file", async () => {
  const { position } = at(vehicle, "2.94");
  const [selection] = await ask("textDocument/selectionRange", { textDocument: { uri: vehicle.uri }, positions: [position] });
  const widening = [];
  for (let one = selection; one; one = one.parent) {
    widening.push(textIn(vehicle.text, one.range));
  }
  assert.deepEqual(widening.slice(0, 3), ["", "2.94", "2.94 m"]);
  assert.equal(widening.at(-1), vehicle.text);
});

test("paths of other files are links to them", async () => {
  const links = await ask("textDocument/documentLink", { textDocument: { uri: rig.uri } });
  assert.ok(links.some(({ target }) => target === vehicle.uri));
});

test("declarations of all files are found by some of their letters", async () => {
  const found = await ask("workspace/symbol", { query: "coas" });
  assert.ok(found.some(({ name, location }) => name === "coast" && location.uri === rig.uri));
});

test("a file that gets another name changes the paths that name it", async () => {
  const edit = await ask("workspace/willRenameFiles", { files: [{ oldUri: vehicle.uri, newUri: workspace.uri("parts/bus.rig") }] });
  assert.match(applied(edit).get(rig.uri), /^use "parts\/bus\.rig"/m);
});

test("while a line is written its parts are shown", async () => {
  const { position } = at(load, "item ");
  const { signatures, activeParameter } = await ask("textDocument/signatureHelp", {
    textDocument: { uri: load.uri }, position: { line: position.line, character: position.character + 5 }, context: { triggerKind: 2, triggerCharacter: " ", isRetrigger: false },
  });
  assert.match(signatures[0].label, /^item NAME MASS/);
  assert.equal(signatures[0].label.slice(...signatures[0].parameters[activeParameter].label), "NAME");
});

test("colours come of a stretch, and as what changed", async () => {
  const full = await ask("textDocument/semanticTokens/full", { textDocument: { uri: vehicle.uri } });
  const head = await ask("textDocument/semanticTokens/range", { textDocument: { uri: vehicle.uri }, range: { start: { line: 0, character: 0 }, end: { line: 4, character: 0 } } });
  assert.deepEqual(full.data.slice(0, head.data.length), head.data);
  const range = rangeOf(vehicle.text, "2.94");
  await change(vehicle, range, "12.94");
  const delta = await ask("textDocument/semanticTokens/full/delta", { textDocument: { uri: vehicle.uri }, previousResultId: full.resultId });
  const again = await ask("textDocument/semanticTokens/full", { textDocument: { uri: vehicle.uri } });
  const patched = [...full.data];
  for (const { start, deleteCount, data = [] } of delta.edits) {
    patched.splice(start, deleteCount, ...data);
  }
  assert.deepEqual(patched, again.data);
  await change(vehicle, rangeOf(vehicle.text, "12.94"), "2.94");
});

test("the line that was left is put in order", async () => {
  const range = rangeOf(vehicle.text, "2.94 m");
  await change(vehicle, range, "2.94m   \n    ");
  const edits = await ask("textDocument/onTypeFormatting", { textDocument: { uri: vehicle.uri }, position: { line: range.start.line + 1, character: 4 }, ch: "\n", options: { tabSize: 4, insertSpaces: true } });
  assert.ok(edits.length > 0 && edits.every(({ range: { start, end } }) => start.line === range.start.line && end.line === range.start.line));
  assert.match(applyEdits(vehicle.text, edits), /wheelbase +2\.94 ?m\n/);
  await change(vehicle, { start: range.start, end: { line: range.start.line + 1, character: 4 } }, "2.94 m");
});

test("a value is converted, asked for, written out; and a load made of some lines", async () => {
  const titles = async (document, sought) => (await actions(document, sought)).map(({ title }) => title);
  assert.ok((await titles(vehicle, "2.94 m")).some((title) => /^Convert to 115\.7 in$/.test(title)));
  assert.ok((await titles(vehicle, "2.94 m")).some((title) => title.startsWith("Ask for it")));
  assert.ok((await titles(vehicle, "?\n")).some((title) => title.startsWith("Write the estimate out")));
  const [extract] = await actions(spare, "item ", ["refactor.extract"]);
  assert.equal(extract.kind, "refactor.extract");
  assert.match(applied(extract.edit).get(spare.uri), new RegExp(`^load ${/`(.*?)`/.exec(extract.title)[1]}$`, "m"));
});

test("a finding is accepted with a reason, and what is written wrong is mended in the whole file", async () => {
  await change(vehicle, rangeOf(vehicle.text, "2.94 m"), "29 m,");
  const found = await actions(vehicle, "29 m,");
  const accept = found.find(({ title }) => title.startsWith("Accept `"));
  assert.ok(accept, `no acceptance among ${found.map(({ title }) => title)}`);
  assert.match(applied(accept.edit).get(vehicle.uri), /allow [a-z-]+ because ""/);
  assert.ok(accept.diagnostics.length > 0);
  const [mend] = await actions(vehicle, "29 m,", ["source.fixAll"]);
  assert.match(applied(mend.edit).get(vehicle.uri), /wheelbase +29 m\n/);
  await change(vehicle, rangeOf(vehicle.text, "29 m,"), "2.94 m");
});

test("above a rig stands its verdict, and a click opens the report", async () => {
  const lenses = await ask("textDocument/codeLens", { textDocument: { uri: rig.uri } });
  const above = lenses.find(({ range }) => textIn(rig.text, range) === "coast");
  const { command } = await ask("codeLens/resolve", above);
  assert.match(command.title, /^(Within|Over) /);
  const { uri, text } = await ask("workspace/executeCommand", { command: command.command, arguments: command.arguments });
  assert.equal(await session.noted("shown document", () => true), uri);
  assert.match(text, /^# rig coast\n/);
  assert.equal((await ask("workspace/textDocumentContent", { uri })).text, text);
  await change(vehicle, rangeOf(vehicle.text, "2.94 m"), "2.99 m");
  await session.noted("refreshed content", (refreshed) => refreshed === uri);
  assert.notEqual((await ask("workspace/textDocumentContent", { uri })).text, text);
  await change(vehicle, rangeOf(vehicle.text, "2.99 m"), "2.94 m");
  assert.equal((await ask("riglang/report", { textDocument: { uri: rig.uri }, subject: "rig coast" })).text, text);
});

test("a practice and severities are settings that take effect at once", async () => {
  session.settings = { riglang: { severity: { "open-question": "off" } } };
  await session.notify("workspace/didChangeConfiguration", { settings: null });
  await session.diagnostics(vehicle.uri, (list) => !list.some(({ message }) => /yaw-inertia/.test(message)));
});

test("a trace says what was answered", async () => {
  await session.notify("$/setTrace", { value: "messages" });
  await ask("textDocument/hover", at(rig, "coast", "rig "));
  assert.match(await session.noted("trace", (message) => message.startsWith("textDocument/hover")), /answered after [\d.]+ ms$/);
  await session.notify("$/setTrace", { value: "off" });
});

test("a folder that is taken away takes its findings with it", async () => {
  await session.notify("workspace/didChangeWorkspaceFolders", { event: { added: [], removed: [{ uri: uriOf(workspace.folder), name: "w" }] } });
  await session.notify("workspace/didChangeWorkspaceFolders", { event: { added: [{ uri: uriOf(workspace.folder), name: "w" }], removed: [] } });
  const found = await ask("workspace/symbol", { query: "coast" });
  assert.ok(found.some(({ location }) => location.uri === rig.uri));
});

test("it ends well, and every message of either side was the protocol's", async () => {
  assert.deepEqual(await session.end(), { shutdown: null, code: 0 });
  assert.equal(session.server.errors, "");
  assert.deepEqual(session.watch.breaches, []);
});
