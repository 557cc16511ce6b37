// JSON Schemas of every message of the protocol, made from the type declarations of vscode-languageserver-protocol.
// Objects are closed (a misspelt member is an error), and integers are integers.
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { fileURLToPath } from "node:url";
import ts from "typescript";
import { createGenerator } from "ts-json-schema-generator";

const here = path.dirname(fileURLToPath(import.meta.url));
const require = createRequire(import.meta.url);
const modules = path.join(here, "..", "node_modules");
const cache = path.join(modules, ".cache", "protocol");

/** { definitions, requests: { method: { params, result } }, notifications: { method: { params } } }; params and result name definitions. */
export function protocolSchemas() {
  const versions = ["vscode-languageserver-protocol", "ts-json-schema-generator", "typescript"].map((name) => require(path.join(modules, name, "package.json")).version);
  const key = createHash("sha256").update(JSON.stringify(versions)).update(readFileSync(fileURLToPath(import.meta.url))).digest("hex").slice(0, 16);
  const file = path.join(cache, `${key}.json`);
  if (!existsSync(file)) {
    mkdirSync(cache, { recursive: true });
    // Test files run side by side, each in a process of its own: none may see the half-written work of another.
    const own = mkdtempSync(path.join(cache, "making-"));
    const made = path.join(own, "schemas.json");
    writeFileSync(made, JSON.stringify(make(own)));
    renameSync(made, file);
    rmSync(own, { recursive: true });
  }
  return JSON.parse(readFileSync(file, "utf8"));
}

function make(folder) {
  const declarations = path.join(modules, "vscode-languageserver-protocol", "lib", "common", "api.d.ts");
  const options = { module: ts.ModuleKind.Node16, moduleResolution: ts.ModuleResolutionKind.Node16, strict: true, types: [], lib: ["lib.es2022.d.ts"] };
  const program = ts.createProgram([declarations], options);
  const checker = program.getTypeChecker();
  const exported = checker.getExportsOfModule(checker.getSymbolAtLocation(program.getSourceFile(declarations)));

  const requests = {};
  const notifications = {};
  const lines = [];
  const define = (text) => {
    const name = `Payload${lines.length}`;
    lines.push(`export type ${name} = ${text};`);
    return name;
  };

  for (const space of exported.flatMap((symbol) => resolved(checker, symbol).declarations ?? []).filter(ts.isModuleDeclaration)) {
    const method = constant(space, "method")?.type?.literal?.text;
    const type = constant(space, "type")?.type;
    if (method === undefined || type === undefined) {
      continue;
    }
    const args = (type.typeArguments ?? []).map((argument) => argument.getText());
    switch (type.typeName.getText()) {
      case "ProtocolRequestType":
      case "RequestType":
        requests[method] = { params: define(args[0]), result: define(args[1]) };
        break;
      case "ProtocolRequestType0":
      case "RequestType0":
        requests[method] = { params: undefined, result: define(args[0]) };
        break;
      case "ProtocolNotificationType":
      case "NotificationType":
        notifications[method] = { params: define(args[0]) };
        break;
      case "ProtocolNotificationType0":
      case "NotificationType0":
        notifications[method] = { params: undefined };
        break;
      case "RegistrationType": // names a group of methods in a registration; no message of its own
        break;
      default:
        throw new Error(`${method} is declared in a form that isn't known here: ${type.getText()}`);
    }
  }

  // These belong to the transport and aren't declared like the others.
  notifications["$/cancelRequest"] = { params: define("{ id: integer | string }") };
  notifications["$/setTrace"] = { params: define("SetTraceParams") };
  notifications["$/logTrace"] = { params: define("LogTraceParams") };
  notifications["$/progress"] = { params: define("{ token: ProgressToken; value: LSPAny }") };

  const names = exported.filter((symbol) => resolved(checker, symbol).flags & ts.SymbolFlags.Type).map((symbol) => symbol.name);
  const source = path.join(folder, "payloads.ts");
  writeFileSync(source, `import type { ${names.join(", ")} } from ${JSON.stringify(declarations.replace(/\.d\.ts$/, ".js"))};\n${lines.join("\n")}\n`);
  const tsconfig = path.join(folder, "tsconfig.json");
  const compilerOptions = { module: "node16", moduleResolution: "node16", strict: true, types: [], lib: ["es2022"] };
  writeFileSync(tsconfig, JSON.stringify({ compilerOptions, files: [source] }));
  const { definitions } = createGenerator({ path: source, tsconfig, type: "*", skipTypeCheck: false, additionalProperties: false, topRef: true }).createSchema("*");
  for (const [name, limits] of Object.entries({ integer: { minimum: -(2 ** 31) }, uinteger: { minimum: 0 } })) {
    definitions[name] = { type: "integer", maximum: 2 ** 31 - 1, ...limits };
  }
  return { definitions, requests, notifications };
}

function constant(space, name) {
  return space.body?.statements
    ?.filter(ts.isVariableStatement)
    .flatMap((statement) => [...statement.declarationList.declarations])
    .find((declaration) => declaration.name.text === name);
}

function resolved(checker, symbol) {
  return symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
}
