import { workspace, type Uri } from "vscode";

const section = "riglang";

/** What the server is told of the user's wishes. */
export interface ServerSettings {
  readonly unitSystem: string;
}

export function serverPath(): string {
  return workspace.getConfiguration(section).get<string>("serverPath", "");
}

export function serverSettings(): ServerSettings {
  return { unitSystem: workspace.getConfiguration(section).get<string>("unitSystem", "metric") };
}

export function hintsWanted(document: Uri): boolean {
  return workspace.getConfiguration(section, document).get<boolean>("hints", true);
}
