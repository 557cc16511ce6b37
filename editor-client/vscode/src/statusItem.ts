import { type Disposable, languages, LanguageStatusSeverity, window } from "vscode";
import type { Server } from "./server";
import { wordsFor } from "./serverState";

const severities = {
  information: LanguageStatusSeverity.Information,
  warning: LanguageStatusSeverity.Warning,
  error: LanguageStatusSeverity.Error,
};

/** The server's state beside the language's name, for rig files. */
export function showState(server: Server): Disposable[] {
  const item = languages.createLanguageStatusItem("riglang.server", { language: "rig" });
  item.name = "RigLang server";
  const show = () => {
    const words = wordsFor(server.state, window.activeTextEditor?.document.uri.scheme);
    item.text = words.text;
    item.detail = words.detail;
    item.severity = severities[words.severity];
    item.busy = words.busy;
    item.command = words.command;
    item.accessibilityInformation = { label: words.detail === "" ? words.text : `${words.text}: ${words.detail}` };
  };
  show();
  return [item, server.onState(show), window.onDidChangeActiveTextEditor(show)];
}
