// SPDX-License-Identifier: GPL-3.0-or-later
// Pages on paper, as poppler reads them: their size, their numbers, no row cut, no heading left alone at the foot of a page.
import { strict as assert } from "node:assert";
import { execFileSync } from "node:child_process";
import { basename } from "node:path";
import { DESK, open } from "./browser.mjs";

const POINTS = { letter: [612, 792], a4: [595, 842] }; // ISO 216 and ANSI/ASME Y14.1, to the point

/** What poppler says of a file on its standard input. */
function poppler(program, more, pdf) {
  return execFileSync(program, [...more, "-", ...(program === "pdftotext" ? ["-"] : [])], { input: pdf, maxBuffer: 1 << 28 }).toString();
}

function hasPoppler() {
  try {
    execFileSync("pdftotext", ["-v"], { stdio: "ignore" });
    return true;
  } catch {
    return false;
  }
}

/** Puts a word before and after what must stay on one page; returns the pairs, each with what it is of. */
function mark() {
  const pairs = [];
  const word = (text) => {
    const span = document.createElement("span");
    span.textContent = ` ${text} `;
    span.style.fontSize = "1px";
    return span;
  };
  const pair = (what, put_first, put_last) => {
    const name = `zq${pairs.length}`;
    put_first(word(`${name}a`));
    put_last(word(`${name}z`));
    pairs.push({ name, what: what.trim().slice(0, 60) });
  };
  const seen = (element) => element.getClientRects().length > 0;
  for (const row of document.querySelectorAll("main tr")) {
    const cells = [...row.cells].filter(seen);
    if (cells.length > 0) pair(`row: ${row.textContent}`, (first) => cells[0].prepend(first), (last) => cells.at(-1).append(last));
  }
  for (const table of document.querySelectorAll("main table")) {
    const [head, first] = [table.tHead && table.tHead.rows[0], table.tBodies[0] && table.tBodies[0].rows[0]];
    if (head && first && seen(head.cells[0]) && seen(first.cells[0]))
      pair(`head of a table: ${head.textContent}`, (a) => head.cells[0].append(a), (b) => first.cells[0].prepend(b));
  }
  for (const heading of document.querySelectorAll("main :is(h2, h3, h4, caption)")) {
    if (!seen(heading) || getComputedStyle(heading).position === "absolute") continue; // said, not seen
    const walker = document.createTreeWalker(document.querySelector("main"), NodeFilter.SHOW_TEXT);
    walker.currentNode = heading;
    let next = walker.nextNode();
    while (next && (heading.contains(next) || !next.textContent.trim() || !seen(next.parentElement) || next.parentElement.closest("svg"))) next = walker.nextNode();
    if (next) pair(`heading: ${heading.textContent}`, (first) => heading.append(first), (last) => next.before(last));
  }
  return pairs;
}

async function checksOfPaper({ browser, check }, file) {
  const { page, close } = await open(browser, file, DESK);
  await page.waitForTimeout(300);
  await page.emulateMedia({ media: "print" });
  const name = basename(file, ".html");
  const size = name.endsWith("-a4") ? "a4" : "letter";
  const pairs = await page.evaluate(mark);
  const pdf = await page.pdf({ preferCSSPageSize: true, printBackground: true });
  const texts = poppler("pdftotext", ["-layout"], pdf).split("\f").slice(0, -1);
  await check(`${name}: on paper every page has the size and its number`, async () => {
    const sizes = [...poppler("pdfinfo", ["-l", "9999"], pdf).matchAll(/size:\s+([\d.]+) x ([\d.]+) pts/g)];
    assert(texts.length > 1 && sizes.length === texts.length, `${sizes.length} sizes of ${texts.length} pages`);
    for (const [, width, height] of sizes) {
      const is = (a, b) => Math.abs(a - b) < 1.5;
      const [w, h] = POINTS[size];
      assert((is(width, w) && is(height, h)) || (is(width, h) && is(height, w)), `${width} x ${height}`);
    }
    texts.forEach((text, i) => assert(text.includes(`${i + 1} / ${texts.length}`), `page ${i + 1} has no number`));
  });
  await check(`${name}: on paper no row is cut and no heading stands alone`, async () => {
    const small = texts.map((text) => text.toLowerCase()); // first letters may be written large
    const at = (word) => small.findIndex((text) => text.includes(word));
    const cut = pairs.map(({ name: pair, what }) => [what, at(`${pair}a`) + 1, at(`${pair}z`) + 1]).filter(([, a, b]) => a !== b || a === 0);
    assert.deepEqual(cut.slice(0, 12), []);
  });
  await close();
}

export async function checksOfPrint(setting) {
  if (!hasPoppler()) {
    console.log("left out: paper was not looked at, for there is no pdftotext (poppler-utils) on this machine");
    return;
  }
  for (const file of setting.files) await checksOfPaper(setting, file);
}
