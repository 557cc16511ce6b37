// Starts the editor with the packed extension over a copy of the examples, in folders of its own.
import { execFileSync, spawn } from "node:child_process";
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, realpathSync, rmSync, writeFileSync } from "node:fs";
import { createServer } from "node:net";
import { tmpdir } from "node:os";
import path from "node:path";
import { fileURLToPath } from "node:url";

const here = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "..");
const root = path.resolve(here, "../../..");
const program = path.join(here, "node_modules/code-server");
export const vscodeFolder = path.join(program, "lib/vscode");

/** How long anything may take before the test fails. Waiting ends as soon as the thing is there. */
export const patience = 45_000;

/** The packed extension. RIGLANG_VSIX names another one. */
const vsix = process.env.RIGLANG_VSIX ?? path.join(root, "editor-client/vscode/riglang.vsix");

const userSettings = {
  "files.autoSave": "off",
  "files.simpleDialog.enable": true,
  "git.enabled": false,
  "workbench.startupEditor": "none",
  "workbench.tips.enabled": false,
  "workbench.colorTheme": "Default Light Modern",
  "editor.inlayHints.enabled": "on",
  "editor.minimap.enabled": false,
  "chat.disableAIFeatures": true,
  "chat.commandCenter.enabled": false,
  "security.workspace.trust.startupPrompt": "never",
};

/** No look-ups outside. */
const noGallery = JSON.stringify({
  serviceUrl: "",
  itemUrl: "",
  resourceUrlTemplate: "",
  controlUrl: "",
  recommendationsUrl: "",
  nlsBaseUrl: "",
  publisherUrl: "",
});

export class Editor {
  /**
   * Starts it and comes back when it answers.
   * `prepare` may change the folder before it is opened; `trusted: false` has the editor ask whether the folder is to be trusted.
   */
  static async start({ settings = {}, trusted = true, prepare = () => {} } = {}) {
    const editor = new Editor();
    try {
      editor.#install({ "security.workspace.trust.enabled": !trusted, ...settings });
      prepare(editor.workspace);
      await editor.#serve(trusted);
      return editor;
    } catch (error) {
      editor.stop();
      throw error;
    }
  }

  #said = "";

  constructor() {
    this.folder = realpathSync(mkdtempSync(path.join(tmpdir(), "riglang-vscode-")));
    this.workspace = path.join(this.folder, "examples");
  }

  /** The extension as the package brought it, unpacked. */
  get extension() {
    const folder = path.join(this.folder, "extensions");
    const name = readdirSync(folder).find((one) => one.startsWith("riglang.riglang-"));
    return path.join(folder, name);
  }

  #install(settings) {
    if (!existsSync(vsix)) {
      throw new Error(`${vsix} is not there; run: npm run package (in editor-client/vscode)`);
    }
    cpSync(path.join(root, "examples"), this.workspace, { recursive: true });
    const user = path.join(this.folder, "data/User");
    mkdirSync(user, { recursive: true });
    writeFileSync(path.join(user, "settings.json"), JSON.stringify({ ...userSettings, ...settings }));
    execFileSync(process.execPath, [...this.#command(), "--install-extension", vsix], { env: this.#environment(), stdio: "pipe" });
  }

  async #serve(trusted) {
    const port = await freePort();
    this.address = `http://127.0.0.1:${port}`;
    const options = ["--auth", "none", "--bind-addr", `127.0.0.1:${port}`, "--disable-telemetry", "--disable-update-check"];
    options.push("--disable-getting-started-override", ...(trusted ? ["--disable-workspace-trust"] : []));
    this.process = spawn(process.execPath, [...this.#command(), ...options], { env: this.#environment(), stdio: ["ignore", "pipe", "pipe"], detached: true });
    for (const stream of [this.process.stdout, this.process.stderr]) {
      stream.setEncoding("utf8").on("data", (text) => (this.#said += text));
    }
    const late = Date.now() + patience;
    while (!(await this.#answers())) {
      if (this.process.exitCode !== null || Date.now() > late) {
        throw new Error(`the editor doesn't answer; it said:\n${this.#said}`);
      }
      await new Promise((resolve) => setTimeout(resolve, 100));
    }
  }

  async #answers() {
    try {
      return (await fetch(`${this.address}/healthz`)).ok;
    } catch {
      return false;
    }
  }

  #command() {
    const folders = ["--user-data-dir", path.join(this.folder, "data"), "--extensions-dir", path.join(this.folder, "extensions")];
    return [path.join(program, "out/node/entry.js"), ...folders, "--config", "/dev/null"];
  }

  #environment() {
    // The program on the PATH would win over the packed one, which is what is tested.
    const folders = (process.env.PATH ?? "").split(":").filter((folder) => !existsSync(path.join(folder, "riglang")));
    return {
      ...process.env,
      PATH: folders.join(":"),
      HOME: this.folder,
      XDG_DATA_HOME: path.join(this.folder, "xdg-data"),
      XDG_CONFIG_HOME: path.join(this.folder, "xdg-config"),
      EXTENSIONS_GALLERY: noGallery,
    };
  }

  stop() {
    if (this.process?.pid !== undefined && this.process.exitCode === null) {
      process.kill(-this.process.pid, "SIGKILL"); // with the extension host, and with the server that it started
    }
    rmSync(this.folder, { recursive: true, force: true, maxRetries: 5 });
  }
}

function freePort() {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.on("error", reject);
    probe.listen(0, "127.0.0.1", () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });
}
