import assert from "node:assert/strict";
import { existsSync, readFileSync } from "node:fs";
import { test } from "node:test";

const manifest = JSON.parse(readFileSync("package.json", "utf8"));
const readme = readFileSync("README.md", "utf8");
const source = ["extension", "settings"].map((name) => readFileSync(`src/${name}.ts`, "utf8")).join("\n");

test("every file that the manifest names is there", () => {
  const language = manifest.contributes.languages[0];
  const files = [manifest.main, language.configuration, language.icon.light, language.icon.dark, manifest.contributes.grammars[0].path];
  assert.deepEqual(files.filter((file: string) => !existsSync(file)), []);
});

test("every setting is explained in the README", () => {
  const settings = Object.keys(manifest.contributes.configuration.properties);
  assert.ok(settings.length > 0);
  assert.deepEqual(settings.filter((name) => !readme.includes(`| \`${name}\` |`)), []);
});

test("every command is registered", () => {
  const commands: { command: string }[] = manifest.contributes.commands;
  assert.ok(commands.length > 0);
  assert.deepEqual(commands.filter(({ command }) => !source.includes(`registerCommand("${command}"`)), []);
});

test("settings that could start a program are held back in folders that aren't trusted", () => {
  assert.deepEqual(manifest.capabilities.untrustedWorkspaces.restrictedConfigurations, ["riglang.serverPath"]);
});
