// A client that asks for details when they are looked at, and for findings instead of being sent them.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { Session, lazyCapabilities } from "./lib/session.mjs";
import { applyEdits, positionAt, rangeOf } from "./lib/text.mjs";
import { copyExample } from "./lib/workspace.mjs";

const workspace = copyExample("people-carrier");
const name = workspace.fileWith(/^rig coast\s/m);
const rig = { uri: workspace.uri(name), text: workspace.read(name) };

let session;

before(async () => {
  session = new Session();
  const { capabilities } = await session.initialize(workspace.folder, lazyCapabilities(), { initializationOptions: { diagnostics: "pull" } });
  assert.deepEqual(capabilities.diagnosticProvider, { identifier: "riglang", interFileDependencies: true, workspaceDiagnostics: true });
  await session.open(rig.uri, rig.text);
});

after(() => {
  session.server.kill();
  workspace.remove();
});

test("findings are fetched, told to be unchanged, and fetched again when they changed", async () => {
  const ask = (previousResultId) => session.request("textDocument/diagnostic", { textDocument: { uri: rig.uri }, ...(previousResultId && { previousResultId }) });
  const first = await ask();
  assert.equal(first.kind, "full");
  assert.deepEqual(await ask(first.resultId), { kind: "unchanged", resultId: first.resultId });
  await session.change(rig.uri, { text: "rig\n" });
  const broken = await ask(first.resultId);
  assert.ok(broken.items.length > 0);
  await session.change(rig.uri, { text: rig.text });
  assert.equal((await ask(broken.resultId)).resultId, first.resultId);
  assert.equal(session.published(rig.uri), undefined, "nothing is sent beside");
});

test("the workspace's findings are held until there is something new, and cancelled when nobody waits any more", async () => {
  const { items } = await session.request("workspace/diagnostic", { identifier: "riglang", previousResultIds: [] });
  const previousResultIds = items.map(({ uri, resultId }) => ({ uri, value: resultId }));
  const held = session.request("workspace/diagnostic", { identifier: "riglang", previousResultIds: previousResultIds.length ? previousResultIds : [{ uri: rig.uri, value: "none" }] });
  await session.change(rig.uri, { text: "rig\n" });
  const news = await held;
  assert.ok(news.items.some(({ uri, items: found }) => uri === rig.uri && found.length > 0));
  await session.change(rig.uri, { text: rig.text });
});

test("the documentation of a completion comes when it is looked at", async () => {
  const { items } = await session.request("textDocument/completion", { textDocument: { uri: rig.uri }, position: rangeOf(rig.text, "vehicle", "rig coast").start });
  const item = items.find(({ data }) => data !== undefined);
  assert.equal(item.documentation, undefined);
  assert.equal((await session.request("completionItem/resolve", item)).documentation.kind, "markdown");
});

test("the tooltip of a hint comes when it is looked at", async () => {
  const hints = await session.request("textDocument/inlayHint", { textDocument: { uri: rig.uri }, range: { start: { line: 0, character: 0 }, end: positionAt(rig.text, rig.text.length) } });
  assert.equal(hints[0].tooltip, undefined);
  assert.ok((await session.request("inlayHint/resolve", hints[0])).tooltip.value.length > 0);
});

test("the edits of a change come when it is taken", async () => {
  const { start } = rangeOf(rig.text, "coast", "rig ");
  const text = rig.text.replace("rig coast", "rig  Coast");
  await session.change(rig.uri, { text });
  const found = await session.request("textDocument/codeAction", { textDocument: { uri: rig.uri }, range: { start, end: { line: start.line, character: start.character + 3 } }, context: { diagnostics: [] } });
  const fix = found.find(({ kind }) => kind === "quickfix");
  assert.equal(fix.edit, undefined);
  const { edit } = await session.request("codeAction/resolve", fix);
  assert.match(applyEdits(text, edit.documentChanges[0].edits), /^rig {2}coast/m);
});

test("it ends well, and every message of either side was the protocol's", async () => {
  assert.deepEqual(await session.end(), { shutdown: null, code: 0 });
  assert.deepEqual(session.watch.breaches, []);
});
