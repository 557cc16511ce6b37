// One editing session over a copy of an example, from initialize to exit, as an editor would hold it.
// The tests stand in order and go on from each other.
import assert from "node:assert/strict";
import { readFileSync } from "node:fs";
import { after, before, test } from "node:test";
import { fileURLToPath } from "node:url";
import { Session } from "./lib/session.mjs";
import { applyEdits, positionAt, rangeOf, textIn } from "./lib/text.mjs";
import { copyExample } from "./lib/workspace.mjs";

const workspace = copyExample("people-carrier");
const vehicleFile = workspace.fileWith(/^vehicle van\b/m);
const rigFile = workspace.fileWith(/^rig coast\s/m);
const tripFile = workspace.fileWith(/^trip saddle\b/m);
const vehicle = { uri: workspace.uri(vehicleFile), text: workspace.read(vehicleFile) };
const rig = { uri: workspace.uri(rigFile), text: workspace.read(rigFile) };
const trip = { uri: workspace.uri(tripFile), text: workspace.read(tripFile) };

// An emoji is two UTF-16 units, an e with a combining accent two as well.
const emojiLine = '    note "\u{1F699} cafe\u0301" stray-word\n';

let session;
let capabilities;

const serious = (diagnostics) => diagnostics.filter(({ severity }) => severity <= 2);
const clean = (diagnostics) => serious(diagnostics).length === 0;
const at = ({ uri, text }, sought, behind) => ({ textDocument: { uri }, position: rangeOf(text, sought, behind).start });

async function hoverText(document, sought, behind) {
  const hover = await session.request("textDocument/hover", at(document, sought, behind));
  assert.notEqual(hover, null, `no hover on '${sought}'`);
  return hover.contents.value;
}

/** Replaces a stretch of an open document, found by its text, and gives the version and the range of the new text. */
async function edit(document, sought, replacement, behind) {
  const range = rangeOf(document.text, sought, behind);
  document.text = applyEdits(document.text, [{ range, newText: replacement }]);
  const version = await session.change(document.uri, { range, text: replacement });
  return { version, range: { start: range.start, end: { line: range.start.line, character: range.start.character + replacement.length } } };
}

before(() => {
  session = new Session();
});

after(() => {
  session.server.kill();
  workspace.remove();
});

test("initialize says who answers, how positions count and what is offered", async () => {
  const answer = await session.initialize(workspace.folder);
  capabilities = answer.capabilities;
  assert.equal(answer.serverInfo.name, "riglang");
  assert.equal(capabilities.positionEncoding, "utf-16");
  assert.deepEqual(capabilities.textDocumentSync, { openClose: true, change: 2 });
  for (const provider of ["hover", "definition", "references", "documentSymbol", "foldingRange", "inlayHint", "documentFormatting"]) {
    assert.ok(capabilities[`${provider}Provider`], `${provider} is not offered`);
  }
  assert.ok(capabilities.completionProvider);
});

test("an example has no errors and no warnings when it is opened", async () => {
  for (const document of [vehicle, rig]) {
    await session.open(document.uri, document.text);
    await session.diagnostics(document.uri, clean, 1);
  }
});

test("a wrong unit is reported while it is typed: code, page, severity and the exact place", async () => {
  const { version } = await edit(vehicle, "2.94 m", "2.94 kg", "wheelbase");
  const [finding] = serious(await session.diagnostics(vehicle.uri, (list) => !clean(list), version));
  assert.equal(finding.severity, 1);
  assert.equal(finding.source, "riglang");
  assert.match(finding.code, /^RL2\d\d$/);
  assert.ok(readFileSync(fileURLToPath(finding.codeDescription.href), "utf8").includes(finding.code), "the linked page is about something else");
  assert.match(finding.message, /length/);
  assert.deepEqual(finding.range, rangeOf(vehicle.text, "kg", "wheelbase"));
});

test("places count UTF-16 units, behind an emoji and a combining mark as well", async () => {
  await edit(vehicle, "2.94 kg", "2.94 m", "wheelbase");
  const { version } = await edit(vehicle, "    wheelbase", `${emojiLine}    wheelbase`);
  const list = await session.diagnostics(vehicle.uri, (found) => !clean(found), version);
  assert.deepEqual(serious(list).map((finding) => textIn(vehicle.text, finding.range)), ["stray-word"]);
});

test("the mended text is clean again", async () => {
  const { version } = await edit(vehicle, emojiLine, "");
  await session.diagnostics(vehicle.uri, clean, version);
});

test("hover on a rig shows its computed loads with units", async () => {
  const shown = await hoverText(rig, "coast", "rig ");
  const load = Number(/Axle front\s+(\d+) kg\s+of 1350 kg/.exec(shown)?.[1]);
  assert.ok(load >= 1165 && load <= 1195, `the file expects 1180 kg ± 15 kg, shown is: ${shown}`);
});

test("hover on a fact shows its meaning and the value as written", async () => {
  const shown = await hoverText(vehicle, "wheelbase");
  assert.match(shown, /2\.94\sm/);
  assert.match(shown, /axle/);
});

test("completion offers the facts that fit where the cursor is, and none that don't", async () => {
  await edit(vehicle, "    wheelbase", "    \n    wheelbase");
  const { line } = rangeOf(vehicle.text, "    \n    wheelbase").start;
  const { items } = await session.request("textDocument/completion", { textDocument: { uri: vehicle.uri }, position: { line, character: 4 } });
  const { version } = await edit(vehicle, "    \n    wheelbase", "    wheelbase");
  await session.diagnostics(vehicle.uri, clean, version);
  const labels = items.map(({ label }) => label);
  assert.ok(labels.includes("roof-rating"));
  assert.ok(!labels.includes("wheelbase"), "wheelbase is there already");
  assert.ok(!labels.includes("track-width"), "track-width belongs to an axle");
  assert.ok(!labels.includes("coupling-to-axle"), "coupling-to-axle belongs to a trailer");
});

test("completion of a reference offers the declared names of that kind", async () => {
  const { items } = await session.request("textDocument/completion", at(rig, "van", "    vehicle"));
  const labels = items.map(({ label }) => label);
  assert.ok(labels.includes("van"));
  assert.ok(!labels.includes("wren"), "wren is a trailer");
});

test("a name leads to its declaration in another file", async () => {
  const found = await session.request("textDocument/definition", at(rig, "van", "    vehicle"));
  assert.deepEqual([found].flat().map(({ uri, range }) => [uri, textIn(vehicle.text, range)]), [[vehicle.uri, "van"]]);
});

test("references of a declaration are found in other files", async () => {
  const found = await session.request("textDocument/references", { ...at(vehicle, "van", "vehicle "), context: { includeDeclaration: false } });
  assert.ok(found.some(({ uri, range }) => uri === rig.uri && textIn(rig.text, range) === "van"));
  assert.ok(found.every(({ uri, range }) => uri !== vehicle.uri || textIn(vehicle.text, range) !== "wheelbase"));
});

test("the outline holds the declaration with its blocks inside", async () => {
  const symbols = await session.request("textDocument/documentSymbol", { textDocument: { uri: vehicle.uri } });
  const van = symbols.find(({ name }) => name === "van");
  assert.ok(van, `no van among ${symbols.map(({ name }) => name)}`);
  assert.match(van.detail, /Electric people carrier/);
  assert.equal(van.children.filter(({ name }) => /front|rear/.test(name)).length, 2);
});

test("a declaration and a block can be folded", async () => {
  const folds = await session.request("textDocument/foldingRange", { textDocument: { uri: vehicle.uri } });
  const starts = folds.map(({ startLine }) => startLine);
  assert.ok(starts.includes(rangeOf(vehicle.text, "vehicle van").start.line));
  assert.ok(starts.includes(rangeOf(vehicle.text, "    axle front").start.line));
});

test("hints show short computed values behind the lines of a rig and of a trip", async () => {
  await session.open(trip.uri, trip.text);
  await session.diagnostics(trip.uri, clean);
  for (const document of [rig, trip]) {
    const hints = await session.request("textDocument/inlayHint", {
      textDocument: { uri: document.uri },
      range: { start: { line: 0, character: 0 }, end: positionAt(document.text, document.text.length) },
    });
    const labels = hints.map(({ label }) => label);
    assert.ok(labels.some((label) => /\d/.test(label)), `no computed value among ${labels}`);
    assert.deepEqual(labels.filter((label) => label.length >= 40), []);
  }
});

test("an example needs no formatting, and untidy text is mended without touching a value", async () => {
  const ask = () => session.request("textDocument/formatting", { textDocument: { uri: vehicle.uri }, options: { tabSize: 4, insertSpaces: true } });
  assert.deepEqual((await ask()) ?? [], []);
  const tidy = vehicle.text;
  await edit(vehicle, "2.94 m", "2.94 m  ");
  const mended = applyEdits(vehicle.text, await ask());
  await edit(vehicle, "2.94 m  ", "2.94 m");
  assert.equal(mended, tidy);
});

test("semantic tokens come in the order of the text and inside it", async () => {
  const { data } = await session.request("textDocument/semanticTokens/full", { textDocument: { uri: vehicle.uri } });
  assert.ok(data.length > 0 && data.length % 5 === 0);
  const lines = vehicle.text.split("\n");
  let [line, character] = [0, 0];
  for (let i = 0; i < data.length; i += 5) {
    character = data[i] === 0 ? character + data[i + 1] : data[i + 1];
    line += data[i];
    assert.ok(character + data[i + 2] <= lines[line].length, `a token leaves line ${line + 1}`);
    assert.ok(data[i + 3] < capabilities.semanticTokensProvider.legend.tokenTypes.length);
  }
});

test("unsaved text wins over the disk, for other files too", async () => {
  const before = await hoverText(rig, "coast", "rig ");
  await edit(vehicle, "1195 kg", "1295 kg", "carries");
  const unsaved = await hoverText(rig, "coast", "rig ");
  await edit(vehicle, "1295 kg", "1195 kg", "carries");
  assert.notEqual(unsaved, before);
  assert.equal(await hoverText(rig, "coast", "rig "), before);
});

test("an open file that another one depends on is checked again when the other changes", async () => {
  const misses = (list) => serious(list).some((finding) => textIn(rig.text, finding.range) === "van");
  await edit(vehicle, "vehicle van", "vehicle vann");
  await session.diagnostics(rig.uri, misses);
  await edit(vehicle, "vehicle vann", "vehicle van");
  await session.diagnostics(rig.uri, (list) => !misses(list));
});

test("a closed file counts as it is on the disk, and a change there is noticed", async () => {
  await edit(vehicle, "1195 kg", "1295 kg", "carries");
  const unsaved = await hoverText(rig, "coast", "rig ");
  await session.close(vehicle.uri);
  const saved = await hoverText(rig, "coast", "rig ");
  assert.notEqual(saved, unsaved);
  workspace.write(vehicleFile, vehicle.text);
  await session.notify("workspace/didChangeWatchedFiles", { changes: [{ uri: vehicle.uri, type: 2 }] });
  assert.equal(await hoverText(rig, "coast", "rig "), unsaved);
  workspace.write(vehicleFile, vehicle.text.replace("1295 kg", "1195 kg"));
  await session.notify("workspace/didChangeWatchedFiles", { changes: [{ uri: vehicle.uri, type: 2 }] });
  assert.equal(await hoverText(rig, "coast", "rig "), saved);
});

test("a file that goes from the disk is missed, and found again", async () => {
  const text = workspace.read(vehicleFile);
  workspace.delete(vehicleFile);
  await session.notify("workspace/didChangeWatchedFiles", { changes: [{ uri: vehicle.uri, type: 3 }] });
  await session.diagnostics(rig.uri, (list) => !clean(list));
  workspace.write(vehicleFile, text);
  await session.notify("workspace/didChangeWatchedFiles", { changes: [{ uri: vehicle.uri, type: 1 }] });
  await session.diagnostics(rig.uri, clean);
});

test("the server asks to be told of rig files that change on the disk", () => {
  const watched = session.registrations.filter(({ method }) => method === "workspace/didChangeWatchedFiles");
  assert.ok(watched.some(({ registerOptions }) => registerOptions.watchers.some(({ globPattern }) => globPattern.includes("rig"))));
});

test("computed values come in the units of the settings, as soon as they change", async () => {
  // A refresh that an earlier edit still owed may come first; the one for the settings comes behind it.
  const shownIn = async (unitSystem, unit) => {
    session.settings = { riglang: { unitSystem, hints: true } };
    let refreshed = session.refreshed();
    await session.notify("workspace/didChangeConfiguration", { settings: null });
    for (;;) {
      await refreshed;
      refreshed = session.refreshed();
      refreshed.catch(() => {});
      const shown = await hoverText(rig, "coast", "rig ");
      if (new RegExp(`Trailer axles together\\s+\\d+ ${unit}`).test(shown)) return shown;
    }
  };
  const us = await shownIn("us", "lb");
  const asWritten = await shownIn("asWritten", "kg");
  const axles = (shown, unit) => Number(new RegExp(`Trailer axles together\\s+(\\d+) ${unit}`).exec(shown)?.[1]);
  const [pounds, kilograms] = [axles(us, "lb"), axles(asWritten, "kg")];
  assert.ok(Math.abs(pounds - kilograms / 0.45359237) <= 2, `${pounds} lb are not ${kilograms} kg in:\n${us}`); // the pound's definition; both are rounded
});

test("a whole new text is taken in one change", async () => {
  const version = await session.change(rig.uri, { text: "rig\n" });
  await session.diagnostics(rig.uri, (list) => !clean(list), version);
  await session.diagnostics(rig.uri, clean, await session.change(rig.uri, { text: rig.text }));
});

test("shutdown and exit end the session with code 0", async () => {
  await session.close(rig.uri);
  assert.deepEqual(await session.end(), { shutdown: null, code: 0 });
  assert.equal(session.server.errors, "");
});

test("every message of either side was the protocol's", () => {
  assert.ok(session.watch.seen.has("textDocument/publishDiagnostics"));
  assert.deepEqual(session.watch.breaches, []);
});
