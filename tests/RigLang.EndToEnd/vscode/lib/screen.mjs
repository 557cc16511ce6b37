// The editor on the screen, as somebody sees and uses it: text is found where it is drawn, everything is done by mouse and keys.
import { mkdirSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { patience } from "./editor.mjs";

/** Where the pictures of the last run lie. They are looked at, not kept. */
const pictures = path.join(path.dirname(fileURLToPath(import.meta.url)), "../TestResults");

/** In the page: the rectangle around `sought` behind `behind`, in lines of text that are drawn. */
function findDrawn({ sought, behind }) {
  const plain = (text) => text.replace(/\u00a0/g, " ");
  const lines = [...document.querySelectorAll(".editor-instance .view-line, .editor-container .view-line")]
    .filter((line) => line.getClientRects().length > 0)
    .sort((a, b) => a.getBoundingClientRect().top - b.getBoundingClientRect().top);
  let passed = behind === "";
  for (const line of lines) {
    const text = plain(line.textContent);
    const from = passed ? 0 : text.indexOf(behind);
    if (from < 0) {
      continue;
    }
    const start = text.indexOf(sought, passed ? 0 : from + behind.length);
    passed = true;
    if (start < 0) {
      continue;
    }
    const range = document.createRange();
    const nodes = document.createTreeWalker(line, NodeFilter.SHOW_TEXT);
    let offset = 0;
    for (let node = nodes.nextNode(); node !== null; node = nodes.nextNode()) {
      if (start >= offset && start < offset + node.length) {
        range.setStart(node, start - offset);
      }
      if (start + sought.length > offset && start + sought.length <= offset + node.length) {
        range.setEnd(node, start + sought.length - offset);
      }
      offset += node.length;
    }
    const { left, top, width, height } = range.getBoundingClientRect();
    return { left, top, width, height, line: text };
  }
  return null;
}

export class Screen {
  constructor(page, editor) {
    this.page = page;
    this.editor = editor;
    page.setDefaultTimeout(patience);
  }

  /** Opens the folder of the examples. */
  async begin() {
    await this.page.goto(`${this.editor.address}/?folder=${encodeURIComponent(this.editor.workspace)}`);
    await this.page.waitForSelector(".monaco-workbench .explorer-folders-view");
  }

  /** Opens a file by its name, and waits until its first line is drawn. */
  async open(name, firstLine) {
    await this.press("Control+P");
    await this.page.fill(".quick-input-widget input", name);
    await this.page.locator(".quick-input-list .monaco-list-row.focused", { hasText: path.basename(name) }).waitFor();
    await this.press("Enter");
    await this.page.waitForSelector(`.tab.active[data-resource-name="${path.basename(name)}"]`);
    await this.drawn(firstLine);
  }

  /** Carries out a command by its title in the palette. */
  async command(title) {
    await this.press("F1");
    await this.page.fill(".quick-input-widget input", `>${title}`);
    await this.page.locator(".quick-input-list .monaco-list-row.focused", { hasText: title }).waitFor();
    await this.press("Enter");
    await this.page.locator(".quick-input-widget").first().waitFor({ state: "hidden" });
  }

  press(keys) {
    return this.page.keyboard.press(keys);
  }

  type(text) {
    return this.page.keyboard.type(text);
  }

  /** Waits until the text is drawn in an editor, and says where. */
  async drawn(sought, behind = "") {
    try {
      const found = await this.page.waitForFunction(findDrawn, { sought, behind });
      return await found.jsonValue();
    } catch (error) {
      throw new Error(`'${sought}' isn't drawn behind '${behind}'; the text is:\n${await this.text()}`, { cause: error });
    }
  }

  gone(sought, behind = "") {
    return this.page.waitForFunction(({ source, place }) => new Function(`return (${source})`)()(place) === null, { source: String(findDrawn), place: { sought, behind } });
  }

  /** The lines of text that are drawn. */
  text() {
    return this.page.evaluate(() =>
      [...document.querySelectorAll(".view-line")]
        .sort((a, b) => a.getBoundingClientRect().top - b.getBoundingClientRect().top)
        .map((line) => line.textContent.replace(/\u00a0/g, " "))
        .join("\n"),
    );
  }

  /** Puts the cursor into the text; again when the line moved meanwhile. */
  async click(sought, behind) {
    for (;;) {
      const { left, top, width, height } = await this.drawn(sought, behind);
      await this.page.mouse.click(left + width / 2, top + height / 2);
      if ((await this.drawn(sought, behind)).top === top) {
        return;
      }
    }
  }

  /** Rests the mouse on the text until a hover with `expected` in it is there, and gives the hover's text. Moves along when the line does. */
  async hover(sought, behind, expected) {
    const shown = this.page.locator(".monaco-hover:visible", { hasText: expected }).first();
    for (let tries = 10; ; tries--) {
      const { left, top, width, height } = await this.drawn(sought, behind);
      await this.page.mouse.move(left + width / 2, top + height / 2 + 60);
      await this.page.mouse.move(left + width / 2, top + height / 2, { steps: 4 });
      try {
        await shown.waitFor({ timeout: patience / 10 });
        return (await shown.innerText()).replace(/\u00a0/g, " ");
      } catch (error) {
        if (tries === 1) {
          throw error;
        }
      }
    }
  }

  /** Waits until a mark of the kind stands under the text, from its begin to its end. Both are looked for at once: lines move when something comes between them. */
  async marked(kind, sought, behind = "") {
    const isMarked = ({ source, one, place }) => {
      const text = new Function(`return (${source})`)()(place);
      const marks = [...document.querySelectorAll(`.squiggly-${one}`)].map((mark) => mark.getBoundingClientRect());
      return text !== null && marks.some((mark) => Math.abs(mark.left - text.left) < 2 && Math.abs(mark.width - text.width) < 2 && Math.abs(mark.top - text.top) < text.height / 2);
    };
    try {
      await this.page.waitForFunction(isMarked, { source: String(findDrawn), one: kind, place: { sought, behind } });
    } catch (error) {
      throw new Error(`no mark (${kind}) is under '${sought}' behind '${behind}'; the text is:\n${await this.text()}`, { cause: error });
    }
  }

  async unmarked(kind) {
    await this.page.waitForFunction((one) => document.querySelectorAll(`.squiggly-${one}`).length === 0, kind);
  }

  /** What the braces beside the language say about the server, as soon as `expected` is in it. */
  async serverState(expected) {
    await this.page.mouse.move(0, 0);
    await this.page.locator("#status\\.languageStatus").hover();
    const shown = this.page.locator(".monaco-hover:visible", { hasText: expected });
    await shown.waitFor();
    return shown.innerText();
  }

  /** The one highest up of what fits; the order in the page is another. */
  async topmost(selector, text) {
    const all = this.page.locator(selector, { hasText: text });
    await all.first().waitFor();
    const tops = await all.evaluateAll((found) => found.map((one) => one.getBoundingClientRect().top));
    return all.nth(tops.indexOf(Math.min(...tops)));
  }

  /** Shuts the editor in front, and waits until it is gone. */
  async closeInFront() {
    const tab = this.page.locator(".editor-group-container.active .tab.active");
    const name = await tab.getAttribute("data-resource-name");
    await tab.locator(".codicon-close").click();
    await this.page.locator(`.tab[data-resource-name="${name}"]`).waitFor({ state: "detached" });
  }

  /** What a preview shows: a page inside a page inside the page. */
  async preview() {
    const outer = this.page.frameLocator("iframe.webview.ready").last();
    const inner = outer.frameLocator("iframe#active-frame");
    await inner.locator("body").waitFor();
    return inner;
  }

  /** Types a new name over the one that stands there. */
  async rename(sought, behind, name) {
    await this.click(sought, behind);
    await this.press("F2");
    const box = this.page.locator(".rename-box input.rename-input");
    await box.waitFor();
    await box.fill(name);
  }

  /** Takes back all edits of the file in front. */
  async putBack() {
    await this.command("File: Revert File");
    await this.page.waitForSelector(".tab.active:not(.dirty)");
  }

  async picture(name) {
    mkdirSync(pictures, { recursive: true });
    await this.page.screenshot({ path: path.join(pictures, `${name}.png`) });
  }
}
