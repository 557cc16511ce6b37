import { commands, window, workspace } from "vscode";

/** A new rig file, with the shortest rig that can be judged to fill in. */
export async function newRig(): Promise<void> {
  const document = await workspace.openTextDocument({ language: "rig" });
  await window.showTextDocument(document);
  await commands.executeCommand("editor.action.insertSnippet", { langId: "rig", name: "First rig" });
}
