// Bundles the extension into one file (out/extension.js); with --tests, each unit test into one of its own (out/test/).
import { build } from "esbuild";
import { readdirSync, rmSync } from "node:fs";

const common = {
  bundle: true,
  platform: "node",
  target: "node20",
  format: "cjs",
  external: ["vscode"],
  sourcemap: true,
  logLevel: "warning",
};

if (process.argv.includes("--tests")) {
  rmSync("out/test", { recursive: true, force: true });
  const tests = readdirSync("test/unit").filter((name) => name.endsWith(".test.ts"));
  await build({ ...common, entryPoints: tests.map((name) => `test/unit/${name}`), outdir: "out/test", packages: "external" });
} else {
  await build({ ...common, entryPoints: ["src/extension.ts"], outfile: "out/extension.js", minify: true });
}
