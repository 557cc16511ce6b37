import { ConfigurationTarget, workspace } from "vscode";

const section = "riglang";

export type UnitSystem = "asWritten" | "metric" | "us";

const settings = () => workspace.getConfiguration(section);

export const serverPath = (): string => settings().get<string>("serverPath", "");

export const unitSystem = (): UnitSystem => settings().get<UnitSystem>("unitSystem", "asWritten");

export const hintsShown = (): boolean => settings().get<boolean>("hints", true);

/** What the server is told at the start; later it asks by itself. */
export const serverSettings = (): Record<string, unknown> =>
  Object.fromEntries(["unitSystem", "hints", "practice", "severity"].map((name) => [name, settings().get(name)]));

/** Writes a setting where it is set by now, else for the user. */
export async function change(name: "unitSystem" | "hints", value: unknown): Promise<void> {
  const where = settings().inspect(name);
  const target =
    where?.workspaceFolderValue !== undefined ? ConfigurationTarget.WorkspaceFolder
    : where?.workspaceValue !== undefined ? ConfigurationTarget.Workspace
    : ConfigurationTarget.Global;
  await settings().update(name, value, target);
}
