import assert from "node:assert/strict";
import { test } from "node:test";
import { RestartLimit } from "../../src/restartLimit";

test("a server that keeps ending is started anew four times, and no more", () => {
  const limit = new RestartLimit();
  assert.deepEqual([0, 1, 2, 3, 4].map((minute) => limit.allows(minute * 1000)), [true, true, true, true, false]);
});

test("what lies longer back than three minutes doesn't count", () => {
  const limit = new RestartLimit();
  assert.ok([0, 1, 2, 3, 4, 5, 6, 7, 8, 9].every((minute) => limit.allows(minute * 60_000)));
});
