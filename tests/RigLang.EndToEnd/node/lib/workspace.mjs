// Folders that a test may change: a copy of an example, or files of its own.
import { cpSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { examples, uriOf } from "./session.mjs";

export class Workspace {
  constructor() {
    this.folder = realpathSync(mkdtempSync(path.join(tmpdir(), "rig files "))); // a blank, since users have them
  }

  file(name) {
    return path.join(this.folder, name);
  }

  uri(name) {
    return uriOf(this.file(name));
  }

  read(name) {
    return readFileSync(this.file(name), "utf8");
  }

  write(name, text) {
    mkdirSync(path.dirname(this.file(name)), { recursive: true });
    writeFileSync(this.file(name), text);
  }

  delete(name) {
    rmSync(this.file(name));
  }

  /** The name of the only rig file whose text fits. */
  fileWith(pattern) {
    const names = readdirSync(this.folder, { recursive: true }).filter((name) => name.endsWith(".rig") && pattern.test(this.read(name)));
    if (names.length !== 1) {
      throw new Error(`${pattern} is in ${names.length} files: ${names.join(", ")}`);
    }
    return names[0].split(path.sep).join("/");
  }

  remove() {
    rmSync(this.folder, { recursive: true, force: true });
  }
}

export function makeWorkspace(files) {
  const workspace = new Workspace();
  for (const [name, text] of Object.entries(files)) {
    workspace.write(name, text);
  }
  return workspace;
}

export function copyExample(name) {
  const workspace = new Workspace();
  cpSync(path.join(examples, name), workspace.folder, { recursive: true });
  return workspace;
}
