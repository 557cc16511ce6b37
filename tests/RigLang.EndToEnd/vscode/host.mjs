// Runs host/*.test.cjs by mocha inside the editor's own extension host and prints what mocha prints: the Test Anything Protocol, then "# pass N", "# fail N".
import path from "node:path";
import { fileURLToPath } from "node:url";
import { startBrowser } from "./lib/browser.mjs";
import { Editor, patience } from "./lib/editor.mjs";

const tests = path.join(path.dirname(fileURLToPath(import.meta.url)), "host");
const editor = await Editor.start();
let browser;
let code = 1;
try {
  const started = await startBrowser();
  browser = started.browser;
  const { page } = started;
  const ended = new Promise((resolve, reject) => {
    const late = setTimeout(() => reject(new Error("the tests didn't come to an end")), 3 * patience);
    // What the editor says about itself comes the same way; mocha's part begins with its first line.
    let begun = false;
    void page.exposeFunction("codeAutomationLog", (type, args) => {
      begun ||= String(args[0]).startsWith("TAP version");
      if (begun) {
        console.log(...args);
      }
    });
    void page.exposeFunction("codeAutomationExit", (exitCode) => {
      clearTimeout(late);
      resolve(exitCode);
    });
  });
  const { host } = new URL(editor.address);
  const payload = JSON.stringify([
    ["extensionDevelopmentPath", `vscode-remote://${host}${editor.extension}`],
    ["extensionTestsPath", `vscode-remote://${host}${path.join(tests, "index.cjs")}`],
    ["skipWelcome", "true"],
  ]);
  await page.goto(`${editor.address}/?folder=${encodeURIComponent(editor.workspace)}&payload=${encodeURIComponent(payload)}`);
  code = await ended;
} catch (error) {
  console.error(error);
} finally {
  await browser?.close();
  editor.stop();
}
process.exit(code);
