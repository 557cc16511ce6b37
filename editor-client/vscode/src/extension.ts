import { existsSync, statSync } from "node:fs";
import { homedir } from "node:os";
import { commands, type ExtensionContext, type LogOutputChannel, Uri, window, workspace } from "vscode";
import { LanguageClient, type LanguageClientOptions, type ServerOptions, State } from "vscode-languageclient/node";
import { findServer, type ServerCommand } from "./serverLocation";
import { serverPath, serverSettings } from "./settings";

let client: LanguageClient | undefined;
let log: LogOutputChannel;

export async function activate(context: ExtensionContext): Promise<void> {
  log = window.createOutputChannel("RigLang", { log: true });
  context.subscriptions.push(
    log,
    commands.registerCommand("riglang.restart", () => restart(context)),
    commands.registerCommand("riglang.showLog", () => log.show()),
    commands.registerCommand("riglang.showInstructions", () => showInstructions(context)),
    workspace.onDidChangeConfiguration(async (change) => {
      if (change.affectsConfiguration("riglang.serverPath")) {
        await restart(context);
      }
    }),
  );
  await start(context);
}

export async function deactivate(): Promise<void> {
  await stop();
}

async function restart(context: ExtensionContext): Promise<void> {
  await stop();
  await start(context);
}

async function stop(): Promise<void> {
  const running = client;
  client = undefined;
  if (running?.needsStop()) {
    await running.stop();
  }
  await running?.dispose();
}

async function start(context: ExtensionContext): Promise<void> {
  const found = findServer({
    setting: serverPath(),
    folder: workspace.workspaceFolders?.find((folder) => folder.uri.scheme === "file")?.uri.fsPath,
    home: homedir(),
    pathVariable: process.env["PATH"] ?? "",
    extensionFolder: context.extensionPath,
    platform: process.platform,
    isFile: (file) => existsSync(file) && statSync(file).isFile(),
  });
  if ("problem" in found) {
    reportMissing(context, found.problem);
    return;
  }

  log.info(`Starting ${[found.command, ...found.args].join(" ")} (from the ${found.origin})`);
  client = makeClient(found);
  try {
    await client.start();
    log.info(`The server is ready: ${client.initializeResult?.serverInfo?.name ?? "riglang"} ${client.initializeResult?.serverInfo?.version ?? ""}`);
  } catch (error) {
    log.error(`The server did not start: ${error instanceof Error ? error.message : String(error)}`);
    reportMissing(context, `The server did not start: ${[found.command, ...found.args].join(" ")}`);
  }
}

function makeClient(found: ServerCommand): LanguageClient {
  // Without a transport named it is standard input and output, and nothing is added to the arguments.
  const server: ServerOptions = { command: found.command, args: [...found.args] };
  const options: LanguageClientOptions = {
    documentSelector: [
      { language: "rig", scheme: "file" },
      { language: "rig", scheme: "untitled" },
    ],
    outputChannel: log,
    initializationOptions: serverSettings(),
  };
  const made = new LanguageClient("riglang", "RigLang", server, options);
  made.onDidChangeState(({ newState }) => {
    if (newState === State.Stopped) {
      log.info("The server has stopped.");
    }
  });
  return made;
}

function reportMissing(context: ExtensionContext, problem: string): void {
  log.error(problem);
  const howTo = "Show how to install it";
  const showLog = "Show the log";
  // Not awaited: the message may stand for hours.
  void window.showErrorMessage(`${problem} Rig files are coloured, but not checked.`, howTo, showLog).then(async (answer) => {
    if (answer === howTo) {
      await showInstructions(context);
    } else if (answer === showLog) {
      log.show();
    }
  });
}

async function showInstructions(context: ExtensionContext): Promise<void> {
  // Packing writes its name in small letters.
  const name = ["readme.md", "README.md"].find((file) => existsSync(context.asAbsolutePath(file))) ?? "README.md";
  await commands.executeCommand("markdown.showPreview", Uri.joinPath(context.extensionUri, name));
}
