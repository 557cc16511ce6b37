// A folder that isn't trusted, and names a program of its own as the server: it is not started before the folder is trusted.
import assert from "node:assert/strict";
import { existsSync, mkdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { after, before, test } from "node:test";
import { startBrowser } from "./lib/browser.mjs";
import { Editor } from "./lib/editor.mjs";
import { Screen } from "./lib/screen.mjs";

let editor;
let browser;
let screen;
let started;

before(async () => {
  editor = await Editor.start({
    trusted: false,
    prepare: (folder) => {
      started = path.join(folder, "started");
      const program = path.join(folder, "program");
      writeFileSync(program, `#!/bin/sh\ntouch '${started}'\n`, { mode: 0o755 });
      mkdirSync(path.join(folder, ".vscode"));
      writeFileSync(path.join(folder, ".vscode/settings.json"), JSON.stringify({ "riglang.serverPath": program }));
    },
  });
  const opened = await startBrowser();
  browser = opened.browser;
  screen = new Screen(opened.page, editor);
  await screen.begin();
});

after(async () => {
  await screen?.picture("last-trust").catch(() => {});
  await browser?.close();
  editor?.stop();
});

test("a folder that isn't trusted is checked by the packed server, not by the program that its settings name", async () => {
  await screen.open("too-much.rig", "# A rig with nearly everything wrong");
  await screen.page.getByText("Restricted Mode").first().waitFor();
  await screen.press("Control+End");
  await screen.marked("error", "trailer                 palace", "rig too-much");
  assert.match(await screen.serverState("RigLang checks as you type"), /packed with the extension/);
  assert.equal(existsSync(started), false);
});

test("the program of its settings counts as soon as the folder is trusted, and says so when it is no server", async () => {
  await screen.command("Workspaces: Manage Workspace Trust");
  await screen.page.locator(".workspace-trust-buttons-row .monaco-button", { hasText: "Trust" }).first().click();
  await screen.page.locator(".tab", { hasText: "too-much.rig" }).click();
  assert.match(await screen.serverState("RigLang is not installed"), /did not start \(.*program lsp\)/);
  assert.equal(existsSync(started), true);
  await screen.picture("15-missing");
});
