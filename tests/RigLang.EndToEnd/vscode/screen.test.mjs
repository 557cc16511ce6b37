// What somebody sees and does on the editor's screen. The tests stand in order and go on from each other; the pictures lie in TestResults.
import assert from "node:assert/strict";
import { after, before, test } from "node:test";
import { startBrowser } from "./lib/browser.mjs";
import { Editor } from "./lib/editor.mjs";
import { Screen } from "./lib/screen.mjs";

let editor;
let browser;
let screen;

before(async () => {
  editor = await Editor.start();
  const started = await startBrowser();
  browser = started.browser;
  screen = new Screen(started.page, editor);
  await screen.begin();
});

after(async () => {
  await screen?.picture("last").catch(() => {});
  await browser?.close();
  editor?.stop();
});

test("a rig that is too heavy is marked under the line that says which trailer", async () => {
  await screen.open("too-much.rig", "# A rig with nearly everything wrong");
  await screen.press("Control+End");
  await screen.marked("error", "trailer                 palace", "rig too-much");
  await screen.picture("1-marks");
});

test("a hover over the mark says how much too much, and links to the check's page", async () => {
  const shown = await screen.hover("palace", "rig too-much", /Vehicle and trailer weigh \d+ kg/);
  assert.match(shown, /Vehicle and trailer weigh \d+ kg, \d+ kg over.*RL303/s);
  await screen.picture("2-hover-finding");
});

test("a wrong unit is marked while it is typed", async () => {
  await screen.open("1-van.rig", "# An electric people carrier");
  await screen.click("2.94 m", "wheelbase");
  await screen.press("End");
  await screen.press("Backspace");
  await screen.type("kg");
  await screen.marked("error", "kg", "wheelbase               2.94 ");
  await screen.picture("3-wrong-unit");
  await screen.press("Backspace");
  await screen.press("Backspace");
  await screen.type("m");
  await screen.unmarked("error");
});

test("a quick fix chosen from the list mends a misspelled keyword", async () => {
  await screen.click("overhang");
  await screen.press("Home");
  await screen.type("x");
  await screen.marked("error", "xoverhang");
  await screen.press("Control+.");
  await screen.page.locator(".action-widget .monaco-list-row.focused", { hasText: "overhang" }).waitFor();
  await screen.picture("4-fix-list");
  await screen.press("Enter");
  await screen.gone("xoverhang");
  await screen.unmarked("error");
  await screen.picture("5-fixed");
});

test("completion lists the facts that fit, with what they are, and puts one in", async () => {
  await screen.click("2.94 m", "wheelbase");
  await screen.press("End");
  await screen.press("Enter");
  await screen.type("roof");
  const row = screen.page.locator(".suggest-widget .monaco-list-row", { hasText: "roof-rating" }).first();
  await row.waitFor();
  await screen.picture("6-completion");
  await screen.press("Tab");
  await screen.drawn("    roof-rating");
  await screen.putBack();
});

test("a hover over a rig's name shows its limits and loads", async () => {
  await screen.open("6-rigs.rig", "# What is driven");
  const shown = await screen.hover("coast", "rig ", /Axle front\s+\d+ kg/);
  const load = Number(/Axle front\s+(\d+) kg\s+of 1350 kg/.exec(shown)?.[1]);
  assert.ok(load >= 1165 && load <= 1195, `the file expects 1180 kg ± 15 kg, shown is: ${shown}`);
  await screen.picture("7-hover-rig");
});

test("hints behind the lines show computed values", async () => {
  const { line } = await screen.drawn("wren", "trailer ");
  const written = "    trailer                 wren";
  assert.ok(line.length > written.length && /\d/.test(line.slice(written.length)), `the line is: ${line}`);
  await screen.picture("8-hints");
});

test("the verdict above a rig opens its report, as it looks when printed", async () => {
  const verdict = await screen.topmost(".codelens-decoration a", "Within all");
  await screen.picture("8-verdict");
  await verdict.click();
  const report = await screen.preview();
  await report.getByText("Front axle load").first().waitFor();
  assert.equal(await report.getByRole("heading", { level: 1 }).innerText(), "rig coast");
  await screen.picture("8-report");
  await screen.closeInFront();
  await screen.drawn("wren", "trailer ");
});

test("the braces beside the language say how the server is", async () => {
  assert.match(await screen.serverState("RigLang checks as you type"), /riglang \d+\.\d+\.\d+.*packed with the extension/);
  await screen.picture("9-status");
});

test("the eye above the file hides the values behind the lines, and shows them again", async () => {
  const hint = (await screen.drawn("wren", "trailer ")).line.slice("    trailer                 wren".length);
  const eye = screen.page.locator(".editor-actions a[aria-label='Show or Hide Computed Values']");
  await eye.click();
  await screen.gone(hint);
  await eye.click();
  await screen.drawn(hint);
});

test("a new name typed over an old one goes to every file, and back", async () => {
  await screen.rename("coast", "rig ", "shore");
  await screen.picture("10-rename");
  await screen.press("Enter");
  await screen.drawn("shore", "rig ");
  await screen.drawn("coast-full like shore");
  await screen.open("saddle.rig", "trip saddle");
  await screen.drawn("shore", "rig ");
  await screen.picture("11-renamed");
  await screen.rename("shore", "rig ", "coast");
  await screen.press("Enter");
  await screen.drawn("coast", "rig ");
  await screen.open("6-rigs.rig", "# What is driven");
  await screen.drawn("coast-full like coast");
});

test("a place of a trip and its stop are typed over together", async () => {
  await screen.open("north.rig", "trip north");
  await screen.click("mill", "    leg ");
  // The editor has learnt what goes together.
  await screen.page.locator(".linked-editing-decoration").first().waitFor({ state: "attached" });
  await screen.type("x");
  const name = /leg (\S+)/.exec((await screen.drawn("x", "    leg ")).line)[1];
  assert.match(name, /^m?i?l?l?xm?i?l?l?$/);
  await screen.drawn(`    stop ${name}`);
  await screen.picture("12-linked");
  await screen.putBack();
});

test("the first steps lead from the server to the units, and begin a new file", async () => {
  await screen.command("RigLang: Show the First Steps");
  const steps = screen.page.locator(".getting-started-step");
  const begin = steps.filter({ hasText: "Begin a file" });
  await begin.waitFor();
  assert.equal(await steps.count(), 6);
  await begin.click();
  await screen.picture("13-first-steps");
  await screen.page.locator(".getting-started-step .monaco-button", { hasText: "New Rig File" }).click();
  await screen.drawn("car", "vehicle ");
  await screen.drawn("What is pulled");
  await screen.picture("14-new-file");
});
