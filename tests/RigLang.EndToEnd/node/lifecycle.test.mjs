// How the server begins and ends.
import assert from "node:assert/strict";
import { spawn } from "node:child_process";
import { after, test } from "node:test";
import { makeWorkspace } from "./lib/workspace.mjs";
import { ServerProcess, Session, uriOf, within } from "./lib/session.mjs";

const workspace = makeWorkspace({ "solo.rig": 'vehicle van\n    wheelbase 2.94 m\n' });
after(() => workspace.remove());

/** A test with a session of its own, which is ended with the test, whatever becomes of it. */
function sessionTest(name, body) {
  test(name, async () => {
    const session = new Session();
    try {
      await body(session);
      assert.deepEqual(session.watch.breaches, []);
    } finally {
      session.server.kill();
      session.connection.dispose();
    }
  });
}

sessionTest("shutdown and exit end it with code 0", async (session) => {
  await session.initialize(workspace.folder);
  assert.deepEqual(await session.end(), { shutdown: null, code: 0 });
  assert.equal(session.server.errors, "");
});

sessionTest("exit without shutdown ends it with code 1", async (session) => {
  await session.initialize(workspace.folder);
  await session.notify("exit");
  assert.equal(await session.server.exitCode(), 1);
});

sessionTest("exit before initialize ends it with code 1", async (session) => {
  await session.notify("exit");
  assert.equal(await session.server.exitCode(), 1);
});

sessionTest("the end of its input ends it, and it says nothing on the way", async (session) => {
  await session.initialize(workspace.folder);
  session.server.child.stdin.end();
  assert.equal(typeof (await session.server.exitCode()), "number");
  assert.equal(session.server.errors, "");
});

sessionTest("the end of the editor's process ends it", async (session) => {
  const editor = spawn(process.execPath, ["--eval", "process.stdin.resume()"], { stdio: ["pipe", "ignore", "ignore"] });
  const gone = new Promise((resolve) => editor.on("exit", resolve));
  try {
    await session.request("initialize", { processId: editor.pid, rootUri: uriOf(workspace.folder), capabilities: {} });
    await session.notify("initialized", {});
  } finally {
    editor.kill("SIGKILL");
  }
  await within(gone, "the editor's process to end");
  assert.equal(typeof (await session.server.exitCode()), "number");
});

sessionTest("a request before initialize is refused with ServerNotInitialized", async (session) => {
  const refused = session.request("textDocument/hover", { textDocument: { uri: workspace.uri("solo.rig") }, position: { line: 0, character: 0 } });
  await assert.rejects(refused, { code: -32002 });
});

sessionTest("a request after shutdown is refused with InvalidRequest", async (session) => {
  await session.initialize(workspace.folder);
  await session.request("shutdown");
  const refused = session.request("textDocument/hover", { textDocument: { uri: workspace.uri("solo.rig") }, position: { line: 0, character: 0 } });
  await assert.rejects(refused, { code: -32600 });
});

sessionTest("a request that nobody knows is refused and harms nothing", async (session) => {
  await session.initialize(workspace.folder);
  await assert.rejects(within(session.connection.sendRequest("riglang/noSuchThing", {}), "a refusal"), { code: -32601 });
  session.watch.breaches = session.watch.breaches.filter((breach) => !breach.includes("noSuchThing"));
  assert.deepEqual(await session.end(), { shutdown: null, code: 0 });
});

test("bytes that are no protocol end it with a code that isn't 0 and without a stack trace", async () => {
  const server = new ServerProcess();
  try {
    server.child.stdin.end(Buffer.concat([Buffer.from("Content-Length: 12\r\n\r\n"), Buffer.from([0, 255, 254, 10, 13, 123, 34, 92, 0, 1, 2, 3])]));
    assert.notEqual(await server.exitCode(), 0);
    assert.doesNotMatch(server.errors, /^\s+at /m);
  } finally {
    server.kill();
  }
});
