// SPDX-License-Identifier: GPL-3.0-or-later
// Every page: without scripts, without WebGL, for those who do not see it, and with hostile names.
import { strict as assert } from "node:assert";
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { basename } from "node:path";
import { DESK, launch, open, PHONE } from "./browser.mjs";

const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

async function accessibility(page) {
  await page.evaluate(axe);
  const { violations } = await page.evaluate(() => globalThis.axe.run(document, { resultTypes: ["violations"] }));
  const grave = violations.filter(({ impact }) => impact === "serious" || impact === "critical");
  assert.deepEqual(grave.map(({ id, nodes }) => `${id}: ${nodes[0].html.slice(0, 160)} ${nodes[0].failureSummary.slice(0, 200)}`), []);
}

async function checksOfFile({ browser, check, shot, files }, file) {
  const name = basename(file, ".html");
  // A page for other paper is the same on a screen.
  const twice = name.endsWith("-a4") && files.includes(file.replace("-a4.html", ".html"));
  for (const size of twice ? [] : [PHONE, DESK]) {
    await check(`${name}, ${size.name}: loads from a file with the network off; nothing grave for axe`, async () => {
      const { page, faults, close } = await open(browser, file, size);
      await page.waitForTimeout(700);
      await page.screenshot({ path: shot(`${name}-${size.name}`), fullPage: false });
      await accessibility(page);
      const wide = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
      assert(wide <= 0, `the page is ${wide} pixels too wide`);
      assert.equal(await page.evaluate(() => globalThis.seamwardHacked), undefined);
      assert.deepEqual(faults, []);
      await close();
    });
  }
}

export async function checksOfPages(setting) {
  const { browser, check, file, files, executable } = setting;
  for (const each of files) await checksOfFile(setting, each);
  await check("the house in 3D is not on paper", async () => {
    const { page, close } = await open(browser, file("demo.html"), DESK);
    await page.locator("#house").waitFor();
    await page.emulateMedia({ media: "print" });
    assert(!(await page.locator("#house").isVisible()));
    const pdf = await page.pdf({ format: "Letter", printBackground: true });
    assert((pdf.toString("latin1").match(/\/Type\s*\/Page\b/g) || []).length > 1, "one page or none");
    await close();
  });
  await check("without scripts the same facts stand as text", async () => {
    const { page, faults, close } = await open(browser, file("demo.html"), PHONE, { javaScriptEnabled: false });
    const html = readFileSync(file("demo.html"), "utf8");
    const data = JSON.parse(html.match(/<script type="application\/json" id="report-data">([^]*?)<\/script>/)[1]);
    const text = await page.locator("main").textContent(); // of what is folded too
    assert(!(await page.locator("#house").isVisible()));
    assert(await page.locator("#no-house").isVisible());
    assert(await page.locator(".ladder-chart").isVisible());
    assert(!(await page.locator(".ladder-control").isVisible()));
    for (const [i, { gap }] of data.closings.entries()) {
      const entry = await page.locator(`#closing-${i + 1}`).textContent();
      assert(entry.includes(data.gaps[gap].name), `closing ${i + 1} does not tell ${data.gaps[gap].name}`);
    }
    for (const way of data.ways) assert(text.includes(way.pinch), `the text does not tell ${way.pinch}`);
    for (const animal of data.animals) assert(text.includes(animal), animal);
    assert.deepEqual(faults, []);
    await close();
  });
  await check("without WebGL the sentence stays and nothing goes wrong", async () => {
    const plain = await launch(executable, ["--disable-3d-apis"]);
    try {
      const { page, faults } = await open(plain, file("demo.html"), PHONE);
      assert(!(await page.locator("#house").isVisible()));
      assert(await page.locator("#no-house").isVisible());
      await page.locator("#ladder-price").focus();
      await page.keyboard.press("End");
      assert((await page.locator("#ladder-words").textContent()).length > 20);
      assert.deepEqual(faults, []);
    } finally {
      await plain.close();
    }
  });
  await check("what stands in a job stays text", async () => {
    const { page, faults, close } = await open(browser, file("hostile.html"), DESK);
    await page.waitForTimeout(1000);
    assert.equal(await page.locator("img, iframe, object, embed, link, base, form, svg script").count(), 0);
    assert.equal(await page.evaluate(() => globalThis.seamwardHacked), undefined);
    assert((await page.locator("body").innerText()).includes("<script>"), "the hostile names are not shown as they are");
    assert.deepEqual(faults, []);
    await close();
  });
}
