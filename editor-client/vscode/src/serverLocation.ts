import * as path from "node:path";

/** A program with its arguments, ready to be started. */
export interface ServerCommand {
  readonly command: string;
  readonly args: readonly string[];
  /** Where it was found, for the log. */
  readonly origin: "setting" | "PATH" | "extension";
}

/** Why there is no server to start, in words for the user. */
export interface ServerMissing {
  readonly problem: string;
}

/** What the search looks at; nothing else of the machine is touched. */
export interface SearchPlaces {
  /** The setting `riglang.serverPath`, as written. */
  readonly setting: string;
  /** The first folder of the workspace, for a path that isn't a full one. */
  readonly folder: string | undefined;
  readonly home: string;
  /** The environment's PATH. */
  readonly pathVariable: string;
  /** The extension's own folder; its `server` folder may hold the program. */
  readonly extensionFolder: string;
  readonly platform: NodeJS.Platform;
  readonly isFile: (file: string) => boolean;
}

/** Finds the server: the setting, then the PATH, then the folder packed with the extension. A setting that leads nowhere is said, not passed over. */
export function findServer(places: SearchPlaces): ServerCommand | ServerMissing {
  const join = places.platform === "win32" ? path.win32 : path.posix;
  const setting = places.setting.trim();
  if (setting !== "") {
    const file = fullPath(setting, places, join);
    return places.isFile(file)
      ? commandFor(file, "setting")
      : { problem: `The setting riglang.serverPath names ${file}, which is not a file.` };
  }

  const names = places.platform === "win32" ? ["riglang.exe"] : ["riglang"];
  for (const folder of places.pathVariable.split(join.delimiter)) {
    // An empty entry would mean the current folder, which is somebody else's.
    if (folder === "" || !join.isAbsolute(folder)) {
      continue;
    }
    for (const name of names) {
      const file = join.join(folder, name);
      if (places.isFile(file)) {
        return commandFor(file, "PATH");
      }
    }
  }

  // The .dll runs on every platform; a program file packed beside it only on the one it was built for.
  const packed = join.join(places.extensionFolder, "server", "riglang.dll");
  if (places.isFile(packed)) {
    return commandFor(packed, "extension");
  }

  return { problem: "The riglang program was not found: it is not on the PATH, the setting riglang.serverPath is empty, and none is packed with the extension." };
}

function fullPath(setting: string, places: SearchPlaces, join: path.PlatformPath): string {
  if (setting === "~" || setting.startsWith("~/") || setting.startsWith("~\\")) {
    return join.join(places.home, setting.slice(1));
  }
  return join.isAbsolute(setting) || places.folder === undefined ? setting : join.join(places.folder, setting);
}

function commandFor(file: string, origin: ServerCommand["origin"]): ServerCommand {
  return file.toLowerCase().endsWith(".dll")
    ? { command: "dotnet", args: [file, "lsp"], origin }
    : { command: file, args: ["lsp"], origin };
}
