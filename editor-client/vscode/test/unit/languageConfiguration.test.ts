import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { test } from "node:test";

interface Pattern {
  pattern: string;
  flags: string;
}
const configuration: { wordPattern: Pattern; onEnterRules: { beforeText: Pattern; action: { indent: string } }[] } = JSON.parse(
  readFileSync("language-configuration.json", "utf8"),
);

function indentsAfter(line: string): boolean {
  return configuration.onEnterRules.some(({ beforeText, action }) => action.indent === "indent" && new RegExp(beforeText.pattern, beforeText.flags).test(line));
}

for (const line of [
  'vehicle van "Electric people carrier"',
  "rig coast-full like coast",
  "load autumn   # with everything",
  'load autumn "No. 3 # of five"',
  "    axle front",
  "    axle front # steered",
  "    electric",
  "    on vehicle",
  '    leg quarry "Quarry services"',
  "    aboard",
  "    pass slack",
]) {
  test(`the next line is indented behind: ${line}`, () => assert.ok(indentsAfter(line)));
}

for (const line of [
  "vehicle",
  "    vehicle van",
  "    aboard nothing",
  "    axle-rating 1350 kg",
  "    drive electric",
  "    note \"axle front\"",
  "# vehicle van",
  'use "parts/van.rig"',
  "",
]) {
  test(`the next line is not indented behind: ${line}`, () => assert.ok(!indentsAfter(line)));
}

test("a name with hyphens is one word, and so is a number", () => {
  const word = new RegExp(configuration.wordPattern.pattern, `g${configuration.wordPattern.flags}`);
  assert.deepEqual("    front-axle-load 10_400.5 lb  wohnwagen-ä2".match(word), ["front-axle-load", "10_400.5", "lb", "wohnwagen-ä2"]);
});
