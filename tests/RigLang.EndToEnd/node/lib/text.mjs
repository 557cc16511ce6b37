// Positions and edits found by searching the text, so that the tests don't count lines.

/** The range of the first occurrence of `sought` behind the first occurrence of `after`. UTF-16 units, as JavaScript counts. */
export function rangeOf(text, sought, after = "") {
  const from = text.indexOf(after);
  const start = from < 0 ? -1 : text.indexOf(sought, from + after.length);
  if (start < 0) {
    throw new Error(`'${sought}' is not in the text behind '${after}'`);
  }
  return { start: positionAt(text, start), end: positionAt(text, start + sought.length) };
}

export function positionAt(text, offset) {
  const lines = text.slice(0, offset).split("\n");
  return { line: lines.length - 1, character: lines.at(-1).length };
}

export function offsetAt(text, { line, character }) {
  return text.split("\n").slice(0, line).reduce((sum, one) => sum + one.length + 1, 0) + character;
}

export function textIn(text, { start, end }) {
  return text.slice(offsetAt(text, start), offsetAt(text, end));
}

/** The text after the edits of an answer, applied from the last to the first. */
export function applyEdits(text, edits) {
  return [...edits]
    .sort((a, b) => offsetAt(text, b.range.start) - offsetAt(text, a.range.start))
    .reduce((result, { range, newText }) => result.slice(0, offsetAt(text, range.start)) + newText + result.slice(offsetAt(text, range.end)), text);
}
