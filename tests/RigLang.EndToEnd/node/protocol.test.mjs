// That the watch over the protocol sees what it is there for.
import assert from "node:assert/strict";
import { test } from "node:test";
import { ProtocolWatch } from "./lib/protocol.mjs";

const place = { start: { line: 0, character: 0 }, end: { line: 0, character: 3 } };
const publish = (diagnostic, more = {}) => ({ jsonrpc: "2.0", method: "textDocument/publishDiagnostics", params: { uri: "file:///a.rig", diagnostics: [diagnostic], ...more } });

function breaches(...messages) {
  const watch = new ProtocolWatch();
  for (const [from, message] of messages) {
    watch.see(from, message);
  }
  return watch.breaches;
}

test("messages as they should be pass", () => {
  assert.deepEqual(
    breaches(
      ["server", publish({ range: place, severity: 1, code: "RL204", message: "no" }, { version: 3 })],
      ["client", { jsonrpc: "2.0", id: 1, method: "textDocument/hover", params: { textDocument: { uri: "file:///a.rig" }, position: place.start } }],
      ["server", { jsonrpc: "2.0", id: 1, result: { contents: { kind: "markdown", value: "x" } } }],
      ["client", { jsonrpc: "2.0", id: 2, method: "shutdown" }],
      ["server", { jsonrpc: "2.0", id: 2, result: null }],
      ["client", { jsonrpc: "2.0", method: "$/cancelRequest", params: { id: 7 } }],
    ),
    [],
  );
});

for (const [what, message] of [
  ["a misspelt member", publish({ range: place, message: "no", serverity: 1 })],
  ["a missing member", publish({ range: place })],
  ["a severity that doesn't exist", publish({ range: place, message: "no", severity: 5 })],
  ["half a character", publish({ range: { start: { line: 0, character: 0.5 }, end: place.end }, message: "no" })],
  ["a place before the text", publish({ range: { start: { line: -1, character: 0 }, end: place.end }, message: "no" })],
  ["a notification that nobody knows", { jsonrpc: "2.0", method: "textDocument/publishFindings", params: {} }],
  ["an answer that nobody asked for", { jsonrpc: "2.0", id: 9, result: null }],
  ["an answer without a result", { jsonrpc: "2.0", id: 9 }],
]) {
  test(`${what} is seen`, () => assert.equal(breaches(["server", message]).length, 1));
}

test("an answer of the wrong form is seen", () => {
  const asked = ["client", { jsonrpc: "2.0", id: 1, method: "textDocument/foldingRange", params: { textDocument: { uri: "file:///a.rig" } } }];
  assert.equal(breaches(asked, ["server", { jsonrpc: "2.0", id: 1, result: [{ startLine: 1 }] }]).length, 1);
});
