import assert from "node:assert/strict";
import { test } from "node:test";
import { subjectAt } from "../../src/subject";

const lines = ['use "van.rig"', "", 'rig coast-full like coast "The same"', "    speed 80 km/h", "# between", "", "load autumn", "    on vehicle"];

test("a report is about the declaration that a line stands in", () => {
  assert.equal(subjectAt(lines, 2), "rig coast-full");
  assert.equal(subjectAt(lines, 3), "rig coast-full");
  assert.equal(subjectAt(lines, 5), "rig coast-full");
});

test("it is about the whole file where there is nothing to report on", () => {
  assert.equal(subjectAt(lines, 0), undefined);
  assert.equal(subjectAt(lines, 7), undefined);
  assert.equal(subjectAt([], 0), undefined);
});
