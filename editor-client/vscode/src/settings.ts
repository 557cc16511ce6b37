import { workspace } from "vscode";

const section = "riglang";

export function serverPath(): string {
  return workspace.getConfiguration(section).get<string>("serverPath", "");
}

/** What the server is told at the start; later it asks by itself. */
export function serverSettings(): { unitSystem: string; hints: boolean } {
  const settings = workspace.getConfiguration(section);
  return {
    unitSystem: settings.get<string>("unitSystem", "asWritten"),
    hints: settings.get<boolean>("hints", true),
  };
}
