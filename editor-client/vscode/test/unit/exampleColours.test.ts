import assert from "node:assert/strict";
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { test } from "node:test";
import { createOnigScanner, createOnigString, loadWASM } from "vscode-oniguruma";
import { type IGrammar, INITIAL, parseRawGrammar, Registry } from "vscode-textmate";

const examples = "../../examples";
const grammarFile = "syntaxes/rig.tmLanguage.json";

async function loadGrammar(): Promise<IGrammar> {
  const wasm = readFileSync(path.join(path.dirname(require.resolve("vscode-oniguruma")), "onig.wasm"));
  await loadWASM(wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength));
  const registry = new Registry({
    onigLib: Promise.resolve({ createOnigScanner, createOnigString }),
    loadGrammar: async () => parseRawGrammar(readFileSync(grammarFile, "utf8"), grammarFile),
  });
  const grammar = await registry.loadGrammar("source.rig");
  assert.ok(grammar);
  return grammar;
}

/** The scope of the first word of each line, "none" where it has none of its own. */
function keywordScopes(grammar: IGrammar, text: string): { line: string; scope: string; illegal: boolean }[] {
  let state = INITIAL;
  return text.split(/\r?\n/).flatMap((line) => {
    const { tokens, ruleStack } = grammar.tokenizeLine(line, state);
    state = ruleStack;
    const first = line.search(/\S/);
    if (first < 0) {
      return [];
    }
    const scopes = tokens.find(({ startIndex, endIndex }) => startIndex <= first && first < endIndex)?.scopes ?? [];
    const own = scopes.filter((scope) => scope !== "source.rig" && !scope.startsWith("meta."));
    return [{ line, scope: own[0] ?? "none", illegal: tokens.some((token) => token.scopes.some((scope) => scope.startsWith("invalid."))) }];
  });
}

test("every line of the examples begins with a word that the grammar knows", async () => {
  const grammar = await loadGrammar();
  const files = readdirSync(examples, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".rig"));
  assert.ok(files.length > 0, "there are no examples");
  const unknown = files.flatMap((name) =>
    keywordScopes(grammar, readFileSync(path.join(examples, name), "utf8"))
      .filter(({ scope, illegal }) => scope === "none" || illegal)
      .map(({ line }) => `${name}: ${line}`),
  );
  assert.deepEqual(unknown, []);
});

test("a word that the language doesn't have stays without a colour", async () => {
  const grammar = await loadGrammar();
  assert.deepEqual(
    keywordScopes(grammar, "vehicle van\n    wheelbose 2.94 m\nvehikel van").map(({ scope }) => scope),
    ["storage.type.declaration.rig", "none", "none"],
  );
});
