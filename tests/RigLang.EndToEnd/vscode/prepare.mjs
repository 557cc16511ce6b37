// Completes what `npm ci` installed. The editor's own install step would download programs from outside the package registry:
// its packages are installed here instead, without their steps, and the searcher of the system is lent to it.
import { execFileSync } from "node:child_process";
import { existsSync, mkdirSync, symlinkSync } from "node:fs";
import path from "node:path";
import { vscodeFolder } from "./lib/editor.mjs";

const done = path.join(vscodeFolder, "node_modules", ".package-lock.json");
if (!existsSync(done)) {
  execFileSync("npm", ["install", "--omit=dev", "--ignore-scripts", "--no-fund", "--no-audit"], { cwd: vscodeFolder, stdio: "inherit" });
}

const searcher = path.join(vscodeFolder, "node_modules/@vscode/ripgrep/bin/rg");
if (!existsSync(searcher)) {
  mkdirSync(path.dirname(searcher), { recursive: true });
  symlinkSync(execFileSync("sh", ["-c", "command -v rg"], { encoding: "utf8" }).trim(), searcher);
}
