// SPDX-License-Identifier: GPL-3.0-or-later
// A survey sheet, filled in on a phone with the network off; what it hands back is judged by the program itself.
import { strict as assert } from "node:assert";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { DESK, open, PHONE } from "./browser.mjs";

/** The row of a gap by its id. */
async function rowOf(page, id) {
  const at = await page.evaluate((wanted) => JSON.parse(document.getElementById("report-data").textContent).gaps.findIndex(({ id }) => id === wanted), id);
  assert(at >= 0, id);
  return (field) => page.locator(`#gap-${at}-${field}`);
}

async function saved(page, folder, name) {
  const [download] = await Promise.all([page.waitForEvent("download", { timeout: 10000 }), page.locator("#save").click()]);
  const path = join(folder, name || download.suggestedFilename());
  await download.saveAs(path);
  return { path, job: JSON.parse(readFileSync(path, "utf8")) };
}

const entry = (job, id) => job.gaps.filter((gap) => gap.id === id);

export async function checksOfSheet({ browser, check, file, shot, folder }) {
  const { page, faults, close } = await open(browser, file("sheet.html"), PHONE);
  const before = await page.evaluate(() => JSON.parse(JSON.parse(document.getElementById("report-data").textContent).job));
  const bibb = await rowOf(page, "hose-bibb-north");
  await check("sheet: bad entries are named, and nothing is saved", async () => {
    await bibb("width").fill("wide");
    await page.locator("#save").tap();
    assert.equal(await page.locator("#problems li").count(), 1);
    assert((await page.locator("#problems").innerText()).includes("wide"));
    assert.equal(await bibb("width").getAttribute("aria-invalid"), "true");
    await bibb("width").fill("1/8");
    await page.locator("#save").tap();
    assert.equal(await page.locator("#problems li").count(), 1, "a width without plus or minus");
    await page.locator("#problems a").first().tap();
    assert.equal(await page.evaluate(() => document.activeElement.id), await bibb("plus_minus").getAttribute("id"));
    await page.screenshot({ path: shot("sheet-problem") });
    for (const bad of ["1.2.3 mm", "1/0 in", "-3 mm", "5 mn", "3 4", "2 in 1 ft", "1e999 mm"]) {
      await bibb("width").fill(bad);
      await page.locator("#save").tap();
      assert((await page.locator("#problems").innerText()).includes(bad), bad);
    }
  });
  await check("sheet: what was written is there after a reload", async () => {
    await bibb("width").fill("1/8");
    await bibb("plus_minus").fill("0.3 mm");
    await bibb("photo").fill("17");
    await page.reload();
    assert.equal(await bibb("width").inputValue(), "1/8");
    assert.equal(await bibb("photo").inputValue(), "17");
    assert((await page.locator("#kept").innerText()).startsWith("1 "));
  });
  await check("sheet: a new gap, and a job file handed back", async () => {
    const mouths = await rowOf(page, "vent-pipe-mouths");
    await mouths("width").fill("51,5 mm");
    await page.locator("#usual-plus-minus").fill("1 mm");
    await page.locator("#new-name").fill("crack beside the <b>laundry</b> door");
    await page.locator("#new-from").selectOption("0");
    await page.locator("#new-into").selectOption("1");
    await page.locator("#new-width").fill("3/64 in");
    await page.locator("#new-length").fill("2 ft 6 in");
    await page.locator("#new-note").fill('two "lines"');
    await page.locator("#add-gap").tap();
    assert.equal(await page.locator("#added-gaps li").count(), 1);
    await page.locator("#new-gap").scrollIntoViewIfNeeded();
    await page.screenshot({ path: shot("sheet-new-gap") });
    await page.locator("#who-surveyor").fill("J. Doe");
    const { job } = await saved(page, folder);
    assert.deepEqual(entry(job, "hose-bibb-north"),
      [{ id: "hose-bibb-north", evidence: { how: "measured", plus_minus: "0.3 mm" }, ring: { width: "1/8 in" }, note: "Photo 17" }]);
    assert.deepEqual(entry(job, "vent-pipe-mouths")[0].hole, { diameter: "51.5 mm" });
    assert.deepEqual(job.gaps.at(-1), {
      id: "crack-beside-the-b-laundry-b-door", name: "crack beside the <b>laundry</b> door",
      between: job.gaps.at(-1).between, slot: { width: "3/64 in", length: "2 ft 6 in" },
      evidence: { how: "measured", plus_minus: "1 mm" }, note: 'two "lines"',
    });
    // All else is the job as it was.
    const rest = ({ gaps, job: head, ...others }) => ({ ...others, head: { ...head, surveyor: "" }, gaps: gaps.filter(({ id }) => id !== "hose-bibb-north" && id !== "vent-pipe-mouths") });
    assert.deepEqual(rest({ ...job, gaps: job.gaps.slice(0, -1) }), rest(before));
    assert.equal(await page.locator("#job-text").inputValue(), `${JSON.stringify(job, null, 2)}\n`);
  });
  await check("sheet: readings of two people that differ too much are named", async () => {
    const [box] = await page.locator("tr input[id$=-second]").all();
    const id = await box.getAttribute("id");
    await page.locator(`#${id.replace("second", "width")}`).fill("2 mm");
    await page.locator(`#${id.replace("second", "plus_minus")}`).fill("0.2 mm");
    await box.fill("2.5 mm");
    await page.locator("#save").tap();
    assert.equal(await page.locator("#problems li").count(), 1);
    await box.fill("2.1 mm");
    const { job } = await saved(page, folder, "second.json");
    assert(JSON.stringify(job).includes("Second reader: 2.1 mm"));
  });
  await check("sheet: all boxes are emptied", async () => {
    await page.locator("#hand-back summary").last().tap();
    await page.locator("#clear").tap();
    await page.reload();
    assert.equal(await bibb("width").inputValue(), "");
    assert.equal(await page.locator("#added-gaps li").count(), 0);
    await page.screenshot({ path: shot("sheet-top") });
    await bibb("width").scrollIntoViewIfNeeded();
    await page.screenshot({ path: shot("sheet-rows") });
  });
  await check("sheet: nothing went wrong and nothing was asked for", () => assert.deepEqual(faults, []));
  await close();
  await check("sheet: printed and without scripts it has boxes to write in", async () => {
    const paper = await open(browser, file("sheet.html"), DESK, { javaScriptEnabled: false });
    await paper.page.emulateMedia({ media: "print" });
    assert(await paper.page.locator("#new-lines").isVisible());
    assert(!(await paper.page.locator("#hand-back").isVisible()));
    assert((await paper.page.locator("tr[data-gap] td.to-fill").count()) > 300);
    const { height, width } = await paper.page.locator("tr[data-gap] td.to-fill").first().boundingBox();
    assert(height >= 24 && width >= 40, `${width} x ${height}`);
    await paper.close();
  });
}
