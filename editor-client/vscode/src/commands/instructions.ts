import { existsSync } from "node:fs";
import { commands, type ExtensionContext, type LogOutputChannel, Uri, window } from "vscode";

export async function showInstructions(context: ExtensionContext): Promise<void> {
  // Packing writes its name in small letters.
  const name = ["readme.md", "README.md"].find((file) => existsSync(context.asAbsolutePath(file))) ?? "README.md";
  await commands.executeCommand("markdown.showPreview", Uri.joinPath(context.extensionUri, name));
}

export function reportMissing(context: ExtensionContext, problem: string, log: LogOutputChannel): void {
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
