import { statSync } from "node:fs";
import { homedir } from "node:os";
import { type Disposable, EventEmitter, type ExtensionContext, type LogOutputChannel, workspace } from "vscode";
import { CloseAction, ErrorAction, type ErrorHandler, LanguageClient, type LanguageClientOptions, RevealOutputChannelOn, type ServerOptions, State } from "vscode-languageclient/node";
import { showDocument } from "./report";
import { RestartLimit } from "./restartLimit";
import { findServer, type ServerCommand } from "./serverLocation";
import { served, type ServerState } from "./serverState";
import { serverPath, serverSettings } from "./settings";

/** Errors go to the log; what the user has to know is said once, by us. */
class QuietClient extends LanguageClient {
  override error(message: string, data?: unknown): void {
    super.error(message, data, false);
  }
}

/** The one server of this window: found, started, stopped, started anew. Whatever happens to it is told by `onState`. */
export class Server implements Disposable {
  #client: LanguageClient | undefined;
  #state: ServerState = { kind: "stopped" };
  /** What is under way; the next start or stop waits for it, so two never overlap. */
  #turn: Promise<void> = Promise.resolve();
  readonly #changed = new EventEmitter<ServerState>();
  readonly onState = this.#changed.event;

  constructor(
    private readonly context: ExtensionContext,
    private readonly log: LogOutputChannel,
  ) {}

  get state(): ServerState {
    return this.#state;
  }

  start(): Promise<void> {
    return this.#next(() => this.#start());
  }

  restart(): Promise<void> {
    return this.#next(async () => {
      await this.#stop();
      await this.#start();
    });
  }

  stop(): Promise<void> {
    return this.#next(() => this.#stop());
  }

  dispose(): void {
    this.#changed.dispose();
  }

  #next(work: () => Promise<void>): Promise<void> {
    this.#turn = this.#turn.then(work, work);
    return this.#turn;
  }

  async #start(): Promise<void> {
    this.#become({ kind: "starting" });
    const found = findServer({
      setting: serverPath(),
      folder: workspace.workspaceFolders?.find((folder) => folder.uri.scheme === "file")?.uri.fsPath,
      home: homedir(),
      environment: process.env,
      extensionFolder: this.context.extensionPath,
      platform: process.platform,
      isFile: (file) => statSync(file, { throwIfNoEntry: false })?.isFile() ?? false,
    });
    if ("problem" in found) {
      this.log.error(found.problem);
      this.#become({ kind: "missing", problem: found.problem });
      return;
    }

    const line = [found.command, ...found.args].join(" ");
    this.log.info(`Starting ${line} (from the ${found.origin})`);
    const client = this.#makeClient(found);
    this.#client = client;
    try {
      await client.start();
      this.#becomeRunning(client, found);
    } catch (error) {
      this.log.error(`The server did not start: ${error instanceof Error ? error.message : String(error)}`);
      this.#become({ kind: "missing", problem: `The server did not start (${line}).` });
    }
  }

  async #stop(): Promise<void> {
    const running = this.#client;
    this.#client = undefined;
    if (running?.needsStop()) {
      await running.stop();
    }
    await running?.dispose();
    this.#become({ kind: "stopped" });
  }

  #makeClient(found: ServerCommand): LanguageClient {
    // Without a transport named it is standard input and output, and nothing is added to the arguments.
    const server: ServerOptions = { command: found.command, args: [...found.args] };
    const options: LanguageClientOptions = {
      documentSelector: served.map((scheme) => ({ language: "rig", scheme })),
      outputChannel: this.log,
      initializationOptions: serverSettings(),
      middleware: { window: { showDocument } },
      errorHandler: this.#errorHandler(),
      // One message of ours says so; nothing is tried again.
      initializationFailedHandler: () => false,
      revealOutputChannelOn: RevealOutputChannelOn.Never,
    };
    const made = new QuietClient("riglang", "RigLang", server, options);
    made.onDidChangeState(({ newState }) => {
      if (made !== this.#client) {
        return; // one that was stopped on purpose
      }
      if (newState === State.Stopped) {
        this.log.info("The server has stopped.");
        this.#become({ kind: "stopped" });
      } else if (newState === State.Running && this.#state.kind !== "starting") {
        this.#becomeRunning(made, found); // it had crashed, and was started again
      }
    });
    return made;
  }

  /** Nothing pops up: the status item says how the server is, the log says why. */
  #errorHandler(): ErrorHandler {
    const limit = new RestartLimit();
    return {
      error: (error) => {
        this.log.warn(`The connection to the server: ${error.message}`);
        return { action: ErrorAction.Continue, handled: true };
      },
      closed: () => {
        const again = this.#state.kind !== "missing" && limit.allows(Date.now());
        this.log.warn(again ? "The server ended by itself; it is started anew." : "The server ended by itself, and is not started again.");
        return { action: again ? CloseAction.Restart : CloseAction.DoNotRestart, handled: true };
      },
    };
  }

  #becomeRunning(client: LanguageClient, found: ServerCommand): void {
    const about = client.initializeResult?.serverInfo;
    const version = `${about?.name ?? "riglang"} ${about?.version ?? ""}`.trim();
    this.log.info(`The server is ready: ${version}`);
    this.#become({ kind: "running", version, origin: found.origin });
  }

  #become(state: ServerState): void {
    this.#state = state;
    this.#changed.fire(state);
  }
}
