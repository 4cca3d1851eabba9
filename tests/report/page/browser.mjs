// SPDX-License-Identifier: GPL-3.0-or-later
// A browser without a network, and what went wrong in it.
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";

export const PHONE = { name: "phone", viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, hasTouch: true, isMobile: true };
export const DESK = { name: "desk", viewport: { width: 1440, height: 900 }, deviceScaleFactor: 1 };

/** WebGL is drawn by the processor. */
export function launch(executablePath, more = []) {
  return chromium.launch({ executablePath, args: ["--no-sandbox", "--use-angle=swiftshader", "--enable-unsafe-swiftshader", ...more] });
}

/** Opens a file in a context of its own, with the network off. `page.faults` gets errors, and requests that would leave the page. */
export async function open(browser, file, { name, ...size }, more = {}) {
  const context = await browser.newContext({ ...size, ...more, offline: true });
  const faults = [];
  const wanted = pathToFileURL(file).href;
  await context.route("**/*", (route) => {
    if (route.request().url() === wanted) return route.continue();
    faults.push(`asks for ${route.request().url()}`);
    return route.abort();
  });
  const page = await context.newPage();
  page.on("console", (message) => message.type() === "error" && faults.push(message.text()));
  page.on("pageerror", (error) => faults.push(String(error)));
  page.on("dialog", (dialog) => {
    faults.push(`a dialog: ${dialog.message()}`);
    return dialog.dismiss();
  });
  await page.goto(wanted);
  return { page, faults, close: () => context.close() };
}

/** Waits until the picture of the house has come to rest: a flight takes 0.7 s. */
export async function rest(page) {
  await page.waitForTimeout(250);
  await page.waitForFunction(() => document.getElementById("house-picture").dataset.rested === "yes", null, { timeout: 20000 });
}

/** The picture of the house as bytes: what is drawn and what stands over it. */
export async function picture(page) {
  await page.locator(".stage").scrollIntoViewIfNeeded();
  return page.locator(".stage").screenshot();
}

/** How far two pictures of one size are apart: the mean over all pixels and colors, 0 to 255. */
export async function apart(page, one, other) {
  return page.evaluate(async (pictures) => {
    const [a, b] = await Promise.all(pictures.map(async (text) => {
      const bitmap = await createImageBitmap(new Blob([Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0))], { type: "image/png" }));
      const pen = new OffscreenCanvas(bitmap.width, bitmap.height).getContext("2d");
      pen.drawImage(bitmap, 0, 0);
      return pen.getImageData(0, 0, bitmap.width, bitmap.height);
    }));
    if (a.width !== b.width || a.height !== b.height) return 255;
    return a.data.reduce((sum, value, i) => sum + Math.abs(value - b.data[i]), 0) / a.data.length;
  }, [one, other].map((bytes) => bytes.toString("base64")));
}
