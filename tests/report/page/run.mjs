// SPDX-License-Identifier: GPL-3.0-or-later
// node run.mjs PART CHROMIUM PICTURES FOLDER: what a person does with a report, in a browser. FOLDER has the pages that the part
// opens; what sheet.html hands back is saved there. Prints a line for each check; exit code 1 when one fails.
import { strict as assert } from "node:assert";
import { mkdirSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { launch } from "./browser.mjs";
import { checksOfLadder } from "./ladder_checks.mjs";
import { checksOfHouse } from "./house_checks.mjs";
import { checksOfPages } from "./page_checks.mjs";
import { checksOfPrint } from "./print_checks.mjs";
import { checksOfSheet } from "./sheet_checks.mjs";

const parts = { house: checksOfHouse, ladder: checksOfLadder, pages: checksOfPages, print: checksOfPrint, sheet: checksOfSheet };
const [part, executable, pictures, folder] = process.argv.slice(2);
assert(part in parts, `there is no part ${part}`);
mkdirSync(pictures, { recursive: true });
const files = readdirSync(folder).filter((file) => file.endsWith(".html")).sort().map((file) => join(folder, file));
assert(files.length > 0, `there are no pages in ${folder}`);

let failed = 0;
async function check(name, run) {
  try {
    await run();
    console.log(`ok: ${name}`);
  } catch (error) {
    failed += 1;
    console.log(`failed: ${name}: ${error.message}`);
  }
}

// The house in 3D is not on paper.
const browser = await launch(executable, part === "print" ? ["--disable-3d-apis"] : []);
try {
  await parts[part]({
    browser, executable, check, files, folder,
    file: (name) => join(folder, name),
    shot: (name) => join(pictures, `${name}.png`)
  });
} finally {
  await browser.close();
}
process.exitCode = failed > 0 ? 1 : 0;
