// A plain client of the language server: starts the real program, speaks the protocol, notes what it hears.
import assert from "node:assert/strict";
import { spawn } from "node:child_process";
import { existsSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { createMessageConnection, StreamMessageReader, StreamMessageWriter } from "vscode-jsonrpc/node";
import { ProtocolWatch } from "./protocol.mjs";

/** How long anything may take before the test fails. Waiting ends as soon as the thing is there. */
export const patience = 30_000;

const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "../../../..");

/** The built program. RIGLANG_DLL names another one. */
export function serverCommand() {
  const dll = process.env.RIGLANG_DLL ?? path.join(root, "src/RigLang.Cli/bin/Debug/net10.0/riglang.dll");
  assert.ok(existsSync(dll), `${dll} is not there; build the solution first`);
  return dll.endsWith(".mjs") ? [process.execPath, [dll]] : ["dotnet", [dll, "lsp"]];
}

export const examples = path.join(root, "examples");

/** Within `patience`, or fails with what was waited for. `what` is a text or a function that makes one. */
export async function within(promise, what) {
  let timer;
  const late = new Promise((_, reject) => {
    timer = setTimeout(() => reject(new Error(`waited in vain for ${typeof what === "function" ? what() : what}`)), patience);
  });
  try {
    return await Promise.race([promise, late]);
  } finally {
    clearTimeout(timer);
  }
}

/** The server's process, with what it wrote to its error output. */
export class ServerProcess {
  errors = "";

  constructor() {
    const [command, args] = serverCommand();
    this.child = spawn(command, args, { stdio: "pipe" });
    this.child.stderr.setEncoding("utf8").on("data", (text) => (this.errors += text));
    this.child.stdin.on("error", () => {}); // it may end while we write
    this.ended = new Promise((resolve) => this.child.on("exit", (code, signal) => resolve(code ?? signal)));
  }

  exitCode() {
    return within(this.ended, () => `the server to end; it said: ${this.errors}`);
  }

  kill() {
    this.child.kill("SIGKILL");
  }
}

export class Session {
  watch = new ProtocolWatch();
  registrations = [];
  log = [];
  settings = {};
  #published = new Map();
  #waiting = new Set();
  #versions = new Map();
  #refreshed = () => {};

  constructor() {
    this.server = new ServerProcess();
    const reader = new StreamMessageReader(this.server.child.stdout);
    const writer = new StreamMessageWriter(this.server.child.stdin);
    const listen = reader.listen.bind(reader);
    reader.listen = (callback) =>
      listen((message) => {
        this.watch.see("server", message);
        callback(message);
      });
    const write = writer.write.bind(writer);
    writer.write = (message) => {
      this.watch.see("client", JSON.parse(JSON.stringify(message)));
      return write(message);
    };

    this.connection = createMessageConnection(reader, writer);
    this.connection.onNotification("textDocument/publishDiagnostics", (set) => {
      this.#published.set(set.uri, set);
      for (const check of this.#waiting) {
        check();
      }
    });
    this.connection.onNotification("window/logMessage", (entry) => this.log.push(entry));
    this.connection.onRequest("client/registerCapability", ({ registrations }) => {
      this.registrations.push(...registrations);
      return null;
    });
    this.connection.onRequest("workspace/configuration", ({ items }) => items.map(({ section }) => this.settings[section] ?? null));
    for (const method of ["workspace/semanticTokens/refresh", "workspace/codeLens/refresh", "workspace/diagnostic/refresh", "window/workDoneProgress/create"]) {
      this.connection.onRequest(method, () => null);
    }
    this.connection.onRequest("workspace/textDocumentContent/refresh", ({ uri }) => {
      this.#note("refreshed content", uri);
      return null;
    });
    this.connection.onRequest("window/showDocument", ({ uri }) => {
      this.#note("shown document", uri);
      return { success: true };
    });
    this.connection.onNotification("$/logTrace", ({ message }) => this.#note("trace", message));
    this.connection.onUnhandledNotification(({ method, params }) => method === "$/progress" && this.#note("progress", params.value.kind));
    this.connection.onRequest("workspace/inlayHint/refresh", () => {
      this.#refreshed();
      return null;
    });
    this.connection.listen();
  }

  request(method, params) {
    const answer = params === undefined ? this.connection.sendRequest(method) : this.connection.sendRequest(method, params);
    return this.#within(answer, () => `an answer to ${method}`);
  }

  /** Waits no longer than the server lives. */
  #within(promise, what) {
    const ended = this.server.ended.then((code) => {
      throw new Error(`the server ended with ${code} before ${what()}; it said: ${this.server.errors}`);
    });
    return within(Promise.race([promise, ended]), () => `${what()}; the server said: ${this.server.errors}`);
  }

  notify(method, params) {
    return params === undefined ? this.connection.sendNotification(method) : this.connection.sendNotification(method, params);
  }

  async initialize(folder, capabilities = fullCapabilities, more = {}) {
    const uri = uriOf(folder);
    const answer = await this.request("initialize", {
      processId: process.pid,
      clientInfo: { name: "session test", version: "1" },
      rootUri: uri,
      workspaceFolders: [{ uri, name: path.basename(folder) }],
      capabilities,
      ...more,
    });
    await this.notify("initialized", {});
    return answer;
  }

  #notes = [];

  #note(what, value) {
    this.#notes.push({ what, value });
    for (const check of this.#waiting) {
      check();
    }
  }

  /** Comes back when the server has said such a thing, at any time since the session began. */
  noted(what, fits) {
    const found = new Promise((resolve) => {
      const check = () => {
        const note = this.#notes.find((one) => one.what === what && fits(one.value));
        if (note !== undefined) {
          this.#waiting.delete(check);
          resolve(note.value);
        }
      };
      this.#waiting.add(check);
      check();
    });
    return this.#within(found, () => `${what}; noted were ${JSON.stringify(this.#notes)}`);
  }

  /** Comes back when the server next asks for the hints on the screen to be fetched again. */
  refreshed() {
    return this.#within(new Promise((resolve) => (this.#refreshed = resolve)), () => "the server to ask for a refresh");
  }

  // ---- Documents

  async open(uri, text) {
    this.#versions.set(uri, 1);
    await this.notify("textDocument/didOpen", { textDocument: { uri, languageId: "rig", version: 1, text } });
  }

  /** Sends the changes as one edit and gives its version. */
  async change(uri, ...contentChanges) {
    const version = this.#versions.get(uri) + 1;
    this.#versions.set(uri, version);
    await this.notify("textDocument/didChange", { textDocument: { uri, version }, contentChanges });
    return version;
  }

  async close(uri) {
    await this.notify("textDocument/didClose", { textDocument: { uri } });
  }

  /** The published diagnostics of a file as soon as they fit; `fits` gets the list. */
  diagnostics(uri, fits, version) {
    const found = new Promise((resolve) => {
      const check = () => {
        const set = this.#published.get(uri);
        if (set !== undefined && (version === undefined || set.version === version) && fits(set.diagnostics)) {
          this.#waiting.delete(check);
          resolve(set.diagnostics);
        }
      };
      this.#waiting.add(check);
      check();
    });
    return this.#within(found, () => `diagnostics of ${uri} that fit; the last were ${JSON.stringify(this.#published.get(uri), null, 2)}`);
  }

  /** What was published last for a file. */
  published(uri) {
    return this.#published.get(uri);
  }

  async end() {
    const shutdown = await this.request("shutdown");
    await this.notify("exit");
    const code = await this.server.exitCode();
    this.connection.dispose();
    return { shutdown, code };
  }
}

export function uriOf(file) {
  return `file://${file.split("/").map(encodeURIComponent).join("/")}`;
}

/** One that fetches what it can fetch later, and findings too. */
export const lazyCapabilities = () => {
  const lazy = structuredClone(fullCapabilities);
  lazy.textDocument.completion.completionItem.resolveSupport = { properties: ["documentation"] };
  lazy.textDocument.inlayHint.resolveSupport = { properties: ["tooltip"] };
  lazy.textDocument.codeAction.resolveSupport = { properties: ["edit"] };
  lazy.textDocument.diagnostic = { dynamicRegistration: false, relatedDocumentSupport: false };
  lazy.workspace.diagnostics = { refreshSupport: true };
  return lazy;
};

/** A client that takes everything the server might offer. */
export const fullCapabilities = {
  general: { positionEncodings: ["utf-16"] },
  workspace: {
    configuration: true,
    workspaceFolders: true,
    workspaceEdit: { documentChanges: true },
    didChangeConfiguration: { dynamicRegistration: true },
    didChangeWatchedFiles: { dynamicRegistration: true },
    inlayHint: { refreshSupport: true },
    semanticTokens: { refreshSupport: true },
    codeLens: { refreshSupport: true },
    symbol: {},
    executeCommand: {},
    fileOperations: { willRename: true, didRename: true, didDelete: true },
    textDocumentContent: {},
  },
  window: { workDoneProgress: true, showDocument: { support: true } },
  textDocument: {
    synchronization: { didSave: true },
    publishDiagnostics: { relatedInformation: true, versionSupport: true, codeDescriptionSupport: true, dataSupport: true, tagSupport: { valueSet: [1, 2] } },
    hover: { contentFormat: ["markdown", "plaintext"] },
    completion: { completionItem: { snippetSupport: true, documentationFormat: ["markdown", "plaintext"] } },
    definition: {},
    references: {},
    typeDefinition: {},
    documentHighlight: {},
    documentLink: { tooltipSupport: true },
    rename: { prepareSupport: true },
    linkedEditingRange: {},
    selectionRange: {},
    signatureHelp: { signatureInformation: { documentationFormat: ["markdown"], parameterInformation: { labelOffsetSupport: true } } },
    codeLens: {},
    onTypeFormatting: {},
    documentSymbol: { hierarchicalDocumentSymbolSupport: true },
    foldingRange: { lineFoldingOnly: true },
    formatting: {},
    rangeFormatting: {},
    inlayHint: {},
    codeAction: { codeActionLiteralSupport: { codeActionKind: { valueSet: ["quickfix"] } }, isPreferredSupport: true, dataSupport: true },
    semanticTokens: {
      requests: { full: { delta: true }, range: true },
      tokenTypes: ["keyword", "class", "property", "number", "string", "enumMember", "variable", "comment", "operator", "type"],
      tokenModifiers: ["declaration"],
      formats: ["relative"],
    },
  },
};
