/** The declarations that a report is made of. */
const opening = /^(rig|trip|weighing|run)[ \t]+(\p{L}[\p{L}\p{N}]*(?:-[\p{L}\p{N}]+)*)/u;

/** What the line stands in, as the server calls it (`rig coast`); undefined where that is nothing to report on. */
export function subjectAt(lines: readonly string[], line: number): string | undefined {
  for (let at = line; at >= 0; at--) {
    const text = lines[at] ?? "";
    if (/^[^\s#]/.test(text)) {
      const found = opening.exec(text);
      return found === null ? undefined : `${found[1]} ${found[2]}`;
    }
  }
  return undefined;
}
