// Chromium, as Debian has it, without looking anything up outside.
import { execFileSync } from "node:child_process";
import { chromium } from "playwright-core";

export async function startBrowser() {
  const browser = await chromium.launch({
    executablePath: execFileSync("sh", ["-c", "command -v chromium"], { encoding: "utf8" }).trim(),
    args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
  });
  const page = await browser.newPage({ viewport: { width: 1400, height: 900 } });
  return { browser, page };
}
