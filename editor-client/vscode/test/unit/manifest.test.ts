import assert from "node:assert/strict";
import { existsSync, readFileSync } from "node:fs";
import { test } from "node:test";

const manifest = JSON.parse(readFileSync("package.json", "utf8"));
const readme = readFileSync("README.md", "utf8");
const source = readFileSync("src/extension.ts", "utf8");
const contributed = manifest.contributes;
const packed = readFileSync(".vscodeignore", "utf8")
  .split("\n")
  .filter((line) => line.startsWith("!"))
  .map((line) => new RegExp(`^${line.slice(1).replaceAll(".", "\\.").replaceAll("**/", "(?:.*/)?").replaceAll(/(?<!\))\*/g, "[^/]*")}$`));

test("every file that the manifest names is there, and is packed", () => {
  const language = contributed.languages[0];
  const files: string[] = [
    manifest.main,
    manifest.icon,
    language.configuration,
    language.icon.light,
    language.icon.dark,
    contributed.grammars[0].path,
    ...contributed.snippets.map(({ path }: { path: string }) => path),
    ...contributed.walkthroughs.flatMap(({ icon, steps }: { icon: string; steps: { media: { markdown: string } }[] }) => [icon, ...steps.map(({ media }) => media.markdown)]),
  ];
  assert.deepEqual(files.filter((file) => !existsSync(file)), []);
  assert.deepEqual(files.map((file) => file.replace("./", "")).filter((file) => !packed.some((pattern) => pattern.test(file))), []);
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

test("every command has an icon, and every one that is named elsewhere is declared", () => {
  const commands: { command: string; icon: string }[] = contributed.commands;
  assert.deepEqual(commands.filter(({ icon }) => !/^\$\([a-z-]+\)$/.test(icon)), []);
  const declared = commands.map(({ command }) => command);
  const named = [...JSON.stringify([contributed.menus, contributed.walkthroughs]).matchAll(/[cC]ommand(?:":")?:?(riglang\.\w+)/g)].map(([, name]) => name ?? "");
  assert.ok(named.length > 5);
  assert.deepEqual(named.filter((name) => !declared.includes(name)), []);
});

test("every command is explained in the README by its title", () => {
  assert.deepEqual(contributed.commands.filter(({ title }: { title: string }) => !readme.includes(`*${title}*`)), []);
});

test("settings that could start a program are held back in folders that aren't trusted", () => {
  assert.deepEqual(manifest.capabilities.untrustedWorkspaces.restrictedConfigurations, ["riglang.serverPath"]);
});
