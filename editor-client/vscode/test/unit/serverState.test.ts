import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";
import { type ServerState, wordsFor } from "../../src/serverState";

const states: ServerState[] = [
  { kind: "starting" },
  { kind: "running", version: "riglang 0.1.0", origin: "PATH" },
  { kind: "stopped" },
  { kind: "missing", problem: "It is not there." },
];

test("a running server is named with its version and where it came from", () => {
  const words = wordsFor(states[1]!);
  assert.equal(words.detail, "riglang 0.1.0, from the PATH");
  assert.equal(words.severity, "information");
  assert.equal(words.busy, false);
});

test("a server that is not there is an error with its reason, one that stopped a warning", () => {
  assert.deepEqual([wordsFor(states[3]!).severity, wordsFor(states[3]!).detail], ["error", "It is not there."]);
  assert.equal(wordsFor(states[2]!).severity, "warning");
});

test("only a starting server is busy", () => {
  assert.deepEqual(states.filter((state) => wordsFor(state).busy).map(({ kind }) => kind), ["starting"]);
});

test("every state offers a command that there is", () => {
  const manifest = JSON.parse(readFileSync("package.json", "utf8"));
  const commands = manifest.contributes.commands.map(({ command }: { command: string }) => command);
  for (const state of states) {
    assert.ok(commands.includes(wordsFor(state).command.command), state.kind);
  }
});

test("a file that the server doesn't see isn't said to be checked", () => {
  assert.match(wordsFor(states[1]!, "vscode-vfs").text, /doesn't check this file/);
  assert.match(wordsFor(states[1]!, "untitled").text, /checks as you type/);
  assert.equal(wordsFor(states[3]!, "vscode-vfs").severity, "error");
});
