/** Where the server stands, as far as the extension knows. */
export type ServerState =
  | { readonly kind: "starting" }
  | { readonly kind: "running"; readonly version: string; readonly origin: string }
  | { readonly kind: "stopped" }
  | { readonly kind: "missing"; readonly problem: string };

/** What the status item shows of a state. */
export interface StateWords {
  readonly text: string;
  readonly detail: string;
  readonly severity: "information" | "warning" | "error";
  readonly busy: boolean;
  /** The command that helps in this state, and what it is called there. */
  readonly command: { readonly command: string; readonly title: string };
}

const origins: Record<string, string> = {
  setting: "named in the settings",
  PATH: "from the PATH",
  extension: "packed with the extension",
};

/** Where a document lies for the server to read it; others are coloured only. */
export const served: readonly string[] = ["file", "untitled"];

/** @param scheme of the document in front; undefined for none. */
export function wordsFor(state: ServerState, scheme?: string): StateWords {
  const log = { command: "riglang.showLog", title: "Show the log" };
  const restart = { command: "riglang.restart", title: "Start it again" };
  if (state.kind === "running" && scheme !== undefined && !served.includes(scheme)) {
    return { text: "RigLang doesn't check this file", detail: "It is on no disk of this machine; it is coloured only.", severity: "information", busy: false, command: log };
  }
  switch (state.kind) {
    case "starting":
      return { text: "RigLang is starting", detail: "", severity: "information", busy: true, command: log };
    case "running":
      return { text: "RigLang checks as you type", detail: `${state.version}, ${origins[state.origin] ?? state.origin}`, severity: "information", busy: false, command: log };
    case "stopped":
      return { text: "RigLang has stopped", detail: "Rig files are coloured, but not checked.", severity: "warning", busy: false, command: restart };
    case "missing":
      return { text: "RigLang is not installed", detail: state.problem, severity: "error", busy: false, command: { command: "riglang.showInstructions", title: "How to install it" } };
  }
}
