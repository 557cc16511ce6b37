import { commands, type TextDocument, Uri, window } from "vscode";
import type { Middleware } from "vscode-languageclient/node";
import { subjectAt } from "./subject";

const scheme = "riglang-report";

/** The server asks for a report to be shown; a report is read, not edited, so it is shown as it looks when printed. */
export const showDocument: NonNullable<NonNullable<Middleware["window"]>["showDocument"]> = async (params, token, next) => {
  const uri = Uri.parse(params.uri, true);
  if (uri.scheme !== scheme) {
    return next(params, token);
  }
  await commands.executeCommand("markdown.showPreviewToSide", uri);
  return { success: true };
};

/** The report of what the cursor stands in, or of the whole file. */
export async function showReport(): Promise<void> {
  const editor = window.activeTextEditor;
  if (editor?.document.languageId !== "rig") {
    void window.showInformationMessage("A report is made of the rig file that is open; there is none.");
    return;
  }
  // The server's own command; there is none while the server isn't running.
  const known = await commands.getCommands(true);
  if (!known.includes("riglang.openReport")) {
    void window.showInformationMessage("There is no report: the server isn't running.");
    return;
  }
  const subject = subjectAt(linesOf(editor.document), editor.selection.active.line);
  await commands.executeCommand("riglang.openReport", editor.document.uri.toString(), ...(subject === undefined ? [] : [subject]));
}

function linesOf(document: TextDocument): string[] {
  return document.getText().split(/\r\n|\r|\n/);
}
