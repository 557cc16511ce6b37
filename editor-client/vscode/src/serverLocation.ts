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
  /** PATH, and DOTNET_ROOT where .NET was installed by hand. */
  readonly environment: Readonly<Record<string, string | undefined>>;
  /** The extension's own folder; its `server` folder may hold the program. */
  readonly extensionFolder: string;
  readonly platform: NodeJS.Platform;
  readonly isFile: (file: string) => boolean;
}

/** Finds the server: the setting, then the PATH, then the folder packed with the extension. A setting that leads nowhere is said, not passed over. */
export function findServer(places: SearchPlaces): ServerCommand | ServerMissing {
  const join = pathsOf(places);
  const setting = places.setting.trim();
  if (setting !== "") {
    const file = fullPath(setting, places, join);
    return places.isFile(file)
      ? commandFor(file, "setting", places)
      : { problem: `The setting riglang.serverPath names ${file}, which is not a file.` };
  }

  const onPath = findOnPath("riglang", places);
  if (onPath !== undefined) {
    return commandFor(onPath, "PATH", places);
  }

  // The .dll runs on every platform; a program file packed beside it only on the one it was built for.
  const packed = join.join(places.extensionFolder, "server", "riglang.dll");
  if (places.isFile(packed)) {
    return commandFor(packed, "extension", places);
  }

  return { problem: "The riglang program was not found: it is not on the PATH, the setting riglang.serverPath is empty, and none is packed with the extension." };
}

function findOnPath(name: string, places: SearchPlaces): string | undefined {
  const join = pathsOf(places);
  const file = places.platform === "win32" ? `${name}.exe` : name;
  const variable = places.environment["PATH"] ?? places.environment["Path"] ?? "";
  return variable
    .split(join.delimiter)
    // An empty or relative entry would mean the current folder, which is somebody else's.
    .filter((folder) => join.isAbsolute(folder))
    .map((folder) => join.join(folder, file))
    .find((full) => places.isFile(full));
}

function commandFor(file: string, origin: ServerCommand["origin"], places: SearchPlaces): ServerCommand | ServerMissing {
  if (!file.toLowerCase().endsWith(".dll")) {
    return { command: file, args: ["lsp"], origin };
  }
  const dotnet = findDotnet(places);
  return dotnet === undefined
    ? { problem: "The server needs the .NET 10 runtime (https://dotnet.microsoft.com/download): there is no dotnet on the PATH, in DOTNET_ROOT or where it is usually installed." }
    : { command: dotnet, args: [file, "lsp"], origin };
}

/** An editor started from a desktop often has a shorter PATH than a terminal, so the usual places are looked at too. */
function findDotnet(places: SearchPlaces): string | undefined {
  const join = pathsOf(places);
  const name = places.platform === "win32" ? "dotnet.exe" : "dotnet";
  const usual =
    places.platform === "win32"
      ? [join.join(places.environment["ProgramFiles"] ?? "C:\\Program Files", "dotnet")]
      : ["/usr/share/dotnet", "/usr/lib/dotnet", "/usr/local/share/dotnet", join.join(places.home, ".dotnet")];
  const root = places.environment["DOTNET_ROOT"];
  return (
    findOnPath("dotnet", places) ??
    [...(root === undefined ? [] : [root]), ...usual].map((folder) => join.join(folder, name)).find((file) => places.isFile(file))
  );
}

function pathsOf(places: SearchPlaces): path.PlatformPath {
  return places.platform === "win32" ? path.win32 : path.posix;
}

function fullPath(setting: string, places: SearchPlaces, join: path.PlatformPath): string {
  if (setting === "~" || setting.startsWith("~/") || setting.startsWith("~\\")) {
    return join.join(places.home, setting.slice(1));
  }
  return join.isAbsolute(setting) || places.folder === undefined ? setting : join.join(places.folder, setting);
}
