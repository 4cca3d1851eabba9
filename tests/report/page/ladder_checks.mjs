// SPDX-License-Identifier: GPL-3.0-or-later
// The chart of prices.
import { strict as assert } from "node:assert";
import { DESK, open, PHONE, picture, rest } from "./browser.mjs";

async function checksOfSize({ browser, check, file, shot }, size) {
  const { page, faults, close } = await open(browser, file("demo.html"), size);
  const words = () => page.locator("#ladder-words").textContent();
  const data = await page.evaluate(() => JSON.parse(document.getElementById("report-data").textContent));
  await check(`${size.name}: the chart of prices answers to keys`, async () => {
    await page.locator("#ladder").scrollIntoViewIfNeeded();
    const first = await words();
    await page.locator("#ladder-price").focus();
    await page.keyboard.press("ArrowRight");
    const second = await words();
    assert.notEqual(second, first);
    assert(second.startsWith(data.prices[0].cost), second);
    await page.keyboard.press("End");
    assert((await words()).startsWith(data.prices.at(-1).cost), await words());
    await page.keyboard.press("Home");
    assert.equal(await words(), first);
  });
  await check(`${size.name}: the chart of prices answers to a finger or the mouse`, async () => {
    await rest(page);
    const before = await picture(page);
    const box = await page.locator(".ladder-chart").boundingBox();
    await page.locator(".ladder-chart").scrollIntoViewIfNeeded();
    const at = { x: box.width * 0.5, y: box.height * 0.5 };
    const chart = page.locator(".ladder-chart");
    await (size.hasTouch ? chart.tap({ position: at }) : chart.click({ position: at }));
    const step = Number(await page.locator("#ladder-price").inputValue());
    assert(step > 0 && step < data.prices.length, `step ${step}`);
    assert((await words()).startsWith(data.prices[step - 1].cost));
    await page.screenshot({ path: shot(`${size.name}-ladder`) });
    await rest(page);
    assert(!before.equals(await picture(page)), "the picture does not show the closings of that price");
    await page.screenshot({ path: shot(`${size.name}-price-in-picture`) });
  });
  await check(`${size.name}: the chart and its tables tell the same prices`, async () => {
    const cells = await page.locator("#ladder .all-steps tbody th, #ladder > .wide-table tbody th").allTextContents();
    for (const { cost } of data.prices) assert(cells.includes(cost), cost);
    assert.equal(await page.locator(".ladder-chart .step").count(), data.prices.length);
  });
  await check(`${size.name}: nothing went wrong at the chart`, () => assert.deepEqual(faults, []));
  await close();
}

export async function checksOfLadder(setting) {
  for (const size of [PHONE, DESK]) await checksOfSize(setting, size);
}
