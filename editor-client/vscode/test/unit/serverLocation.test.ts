import assert from "node:assert/strict";
import { test } from "node:test";
import { findServer, type SearchPlaces } from "../../src/serverLocation";

function places(files: string[], given: Partial<SearchPlaces> = {}): SearchPlaces {
  return {
    setting: "",
    folder: "/home/user/rigs",
    home: "/home/user",
    environment: { PATH: "/usr/bin:/opt/tools" },
    extensionFolder: "/ext",
    platform: "linux",
    isFile: (file) => [...files, "/usr/bin/dotnet"].includes(file),
    ...given,
  };
}

test("the setting wins over the PATH and the packed server", () => {
  const found = findServer(places(["/srv/riglang", "/usr/bin/riglang", "/ext/server/riglang.dll"], { setting: "/srv/riglang" }));
  assert.deepEqual(found, { command: "/srv/riglang", args: ["lsp"], origin: "setting" });
});

test("a .dll is run by dotnet", () => {
  const found = findServer(places(["/srv/riglang.dll"], { setting: "/srv/riglang.dll" }));
  assert.deepEqual(found, { command: "/usr/bin/dotnet", args: ["/srv/riglang.dll", "lsp"], origin: "setting" });
});

test("a path that isn't a full one is counted from the folder, a tilde from the home folder", () => {
  assert.deepEqual(findServer(places(["/home/user/rigs/bin/riglang"], { setting: "bin/riglang" })), {
    command: "/home/user/rigs/bin/riglang",
    args: ["lsp"],
    origin: "setting",
  });
  assert.deepEqual(findServer(places(["/home/user/bin/riglang"], { setting: "~/bin/riglang" })), {
    command: "/home/user/bin/riglang",
    args: ["lsp"],
    origin: "setting",
  });
});

test("a setting that leads nowhere is said, though the PATH has a server", () => {
  const found = findServer(places(["/usr/bin/riglang"], { setting: "/srv/riglang" }));
  assert.ok("problem" in found);
  assert.match(found.problem, /riglang\.serverPath names \/srv\/riglang/);
});

test("the first folder of the PATH that has the program counts; empty and relative folders don't", () => {
  const found = findServer(places(["riglang", "bin/riglang", "/opt/tools/riglang"], { environment: { PATH: ":bin:/usr/bin:/opt/tools" } }));
  assert.deepEqual(found, { command: "/opt/tools/riglang", args: ["lsp"], origin: "PATH" });
});

test("the packed server is the last resort", () => {
  const found = findServer(places(["/ext/server/riglang.dll"]));
  assert.deepEqual(found, { command: "/usr/bin/dotnet", args: ["/ext/server/riglang.dll", "lsp"], origin: "extension" });
});

test("on Windows the program ends in .exe and folders are parted by semicolons", () => {
  const found = findServer(places(["C:\\tools\\riglang.exe"], { platform: "win32", environment: { Path: "C:\\bin;C:\\tools" }, extensionFolder: "C:\\ext" }));
  assert.deepEqual(found, { command: "C:\\tools\\riglang.exe", args: ["lsp"], origin: "PATH" });
});

test("nothing anywhere says what was looked at", () => {
  const found = findServer(places([]));
  assert.ok("problem" in found);
  assert.match(found.problem, /not on the PATH, the setting riglang\.serverPath is empty, and none is packed/);
});

test("dotnet is found where it is usually installed, and in DOTNET_ROOT before that", () => {
  const bare = { environment: { PATH: "/bin" }, isFile: (file: string) => ["/ext/server/riglang.dll", "/home/user/.dotnet/dotnet", "/opt/net/dotnet"].includes(file) };
  assert.deepEqual(findServer(places([], bare)), { command: "/home/user/.dotnet/dotnet", args: ["/ext/server/riglang.dll", "lsp"], origin: "extension" });
  const named = { ...bare, environment: { PATH: "/bin", DOTNET_ROOT: "/opt/net" } };
  assert.deepEqual(findServer(places([], named)), { command: "/opt/net/dotnet", args: ["/ext/server/riglang.dll", "lsp"], origin: "extension" });
});

test("a server that needs .NET says so where there is none", () => {
  const found = findServer(places([], { isFile: (file) => file === "/ext/server/riglang.dll" }));
  assert.ok("problem" in found);
  assert.match(found.problem, /needs the \.NET 10 runtime/);
});
