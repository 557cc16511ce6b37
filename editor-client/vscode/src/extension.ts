import { commands, type ExtensionContext, window, workspace } from "vscode";
import { chooseUnits } from "./commands/chooseUnits";
import { newRig } from "./commands/newRig";
import { reportMissing, showInstructions } from "./commands/instructions";
import { toggleHints } from "./commands/toggleHints";
import { showReport } from "./report";
import { Server } from "./server";
import { showState } from "./statusItem";

let server: Server | undefined;

export async function activate(context: ExtensionContext): Promise<void> {
  const log = window.createOutputChannel("RigLang", { log: true });
  const made = new Server(context, log);
  server = made;
  context.subscriptions.push(
    log,
    made,
    ...showState(made),
    made.onState((state) => {
      void commands.executeCommand("setContext", "riglang.running", state.kind === "running");
      if (state.kind === "missing") {
        reportMissing(context, state.problem, log);
      }
    }),
    commands.registerCommand("riglang.newRig", newRig),
    commands.registerCommand("riglang.chooseUnits", chooseUnits),
    commands.registerCommand("riglang.toggleHints", toggleHints),
    commands.registerCommand("riglang.showReport", showReport),
    commands.registerCommand("riglang.restart", () => made.restart()),
    commands.registerCommand("riglang.showLog", () => log.show()),
    commands.registerCommand("riglang.showInstructions", () => showInstructions(context)),
    commands.registerCommand("riglang.showFirstSteps", () =>
      commands.executeCommand("workbench.action.openWalkthrough", `${context.extension.id}#riglang.first-rig`, false),
    ),
    workspace.onDidChangeConfiguration(async (change) => {
      if (change.affectsConfiguration("riglang.serverPath")) {
        await made.restart();
      }
    }),
    // Its own path of the server counts from now on.
    workspace.onDidGrantWorkspaceTrust(() => made.restart()),
  );
  await made.start();
}

export async function deactivate(): Promise<void> {
  await server?.stop();
}
