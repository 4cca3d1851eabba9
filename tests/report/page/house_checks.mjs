// SPDX-License-Identifier: GPL-3.0-or-later
// The house in 3D, by finger and by mouse.
import { strict as assert } from "node:assert";
import { apart, DESK, open, PHONE, picture, rest } from "./browser.mjs";

const told = (page) => page.evaluate(() => JSON.parse(document.getElementById("report-data").textContent));
const news = (page) => page.locator("#house-news").textContent();

/** `press` by what the size has: a finger or a mouse. */
function press(size, locator) {
  return size.hasTouch ? locator.tap() : locator.click();
}

/** The middle of the picture in the window. */
async function middleOf(page) {
  const box = await page.locator("#house-picture").boundingBox();
  return [box.x + box.width / 2, box.y + box.height / 2];
}

async function checksOfSize({ browser, check, file, shot }, size) {
  // With reduced motion the picture comes to rest at once.
  const { page, faults, close } = await open(browser, file("demo.html"), size, { reducedMotion: "reduce" });
  const data = await told(page);
  const it = (name, run) => check(`${size.name}: ${name}`, run);
  await it("the house is drawn", async () => {
    assert(await page.locator("#house").isVisible());
    assert(!(await page.locator("#no-house").isVisible()));
    await rest(page);
    const before = await picture(page);
    await page.screenshot({ path: shot(`${size.name}-house`) });
    await press(size, page.locator("#house [data-side=north]"));
    await rest(page);
    const north = await picture(page);
    assert(!before.equals(north), "looked at from the north it is the same picture");
    await page.screenshot({ path: shot(`${size.name}-north`) });
    await press(size, page.locator("#house [data-side=home]"));
    await rest(page);
    assert(!north.equals(await picture(page)), "there is no way back");
  });
  await it("a closing of the list is shown in the picture", async () => {
    const before = await picture(page);
    await press(size, page.locator("#closing-5 .show-in-3d"));
    await rest(page);
    assert.equal(await page.locator("#closing-5").getAttribute("aria-current"), "true");
    assert((await page.locator("#card-title").textContent()).startsWith("Closing 5"));
    await page.screenshot({ path: shot(`${size.name}-from-list`) });
    assert(!before.equals(await picture(page)), "the picture did not change");
  });
  await it("a number of the picture marks its entry in the list", async () => {
    await press(size, page.locator("#closing-5 .show-in-3d"));
    await rest(page);
    await page.locator("#card-close").click();
    assert.equal(await page.locator("li[aria-current]").count(), 0);
    await press(size, page.locator("#closing-5 .show-in-3d")); // flown to: it stands in the middle
    await rest(page);
    await page.evaluate(() => document.getElementById("closing-5").removeAttribute("aria-current"));
    const [x, y] = await middleOf(page);
    await (size.hasTouch ? page.touchscreen.tap(x, y) : page.mouse.click(x, y));
    await rest(page);
    assert.equal(await page.locator("#closing-5").getAttribute("aria-current"), "true");
    await page.screenshot({ path: shot(`${size.name}-from-picture`) });
    await page.locator("#card-close").click();
  });
  await it("from the card one gets to the list, and sees both", async () => {
    await page.locator("#house").scrollIntoViewIfNeeded();
    await press(size, page.locator("#closing-7 .show-in-3d"));
    await rest(page);
    await page.evaluate(() => document.getElementById("card-list").click());
    await rest(page);
    await page.waitForTimeout(600);
    const seen = await page.locator("#closing-7").evaluate((entry) => {
      const { top, bottom } = entry.getBoundingClientRect();
      return bottom > 0 && top < innerHeight;
    });
    assert(seen, "the entry is out of sight");
    await page.screenshot({ path: shot(`${size.name}-list-and-picture`) });
    await page.locator("#card-close").click();
  });
  await it("a way of the list is shown", async () => {
    await press(size, page.locator("#ways .show-in-3d").first());
    await rest(page);
    assert.equal(await page.locator("#ways li[aria-current]").count(), 1);
    await page.locator(".stage").scrollIntoViewIfNeeded();
    await page.screenshot({ path: shot(`${size.name}-way`) });
    await page.locator("#card-close").click();
  });
  await it("after the work no way is open", async () => {
    await page.locator("#house [data-side=home]").click();
    const first = await news(page);
    await page.locator("#house-step").focus();
    await page.keyboard.press("End");
    assert.equal(await page.locator("#house-step").inputValue(), String(data.closings.length));
    assert((await news(page)).endsWith(data.words.no_way), await news(page));
    await rest(page);
    await page.locator(".stage").scrollIntoViewIfNeeded();
    await page.screenshot({ path: shot(`${size.name}-after`) });
    await press(size, page.locator("#work-before"));
    assert.equal(await news(page), first);
  });
  await it("the ways of one animal", async () => {
    const all = await news(page);
    const last = data.animals.length - 1;
    await page.locator(`#house input[name=animal][value="${last}"]`).focus();
    await page.keyboard.press("Space");
    const one = await news(page);
    assert.notEqual(one, all);
    data.animals.forEach((name, i) => assert.equal(one.includes(`${name},`) || one.includes(`${name}.`), i === last, one));
    const count = data.ways.filter((way) => way.animals.includes(last)).length;
    assert(one.includes(String(count)), `${one}: not ${count}`);
    await rest(page);
    await page.locator(".stage").scrollIntoViewIfNeeded();
    await page.screenshot({ path: shot(`${size.name}-animal`) });
    await page.locator('#house input[name=animal][value="all"]').check();
  });
  await it("coats are faint and hidden", async () => {
    await rest(page);
    const before = await picture(page);
    await page.locator("#house .coats summary").click();
    await page.locator('#house input[name="coat-roof"][value="hidden"]').check();
    await page.locator('#house input[name="coat-ground"][value="faint"]').check();
    await rest(page);
    assert(!before.equals(await picture(page)));
    await page.screenshot({ path: shot(`${size.name}-coats`) });
    await page.locator('#house input[name="coat-roof"][value="shown"]').check();
    await page.locator('#house input[name="coat-ground"][value="shown"]').check();
  });
  await it("keys turn the house", async () => {
    await rest(page);
    const before = await picture(page);
    await page.locator("#house-picture").focus();
    await page.keyboard.press("ArrowLeft");
    await page.keyboard.press("ArrowUp");
    await rest(page);
    assert(!before.equals(await picture(page)));
    await page.keyboard.press("Home");
  });
  await it("a drag turns the house", async () => {
    await rest(page);
    const before = await picture(page);
    const [x, y] = await middleOf(page);
    await page.mouse.move(x, y);
    await page.mouse.down();
    await page.mouse.move(x + 90, y - 20, { steps: 5 });
    await page.mouse.up();
    await rest(page);
    assert(!before.equals(await picture(page)));
    assert.equal(await page.evaluate(() => getComputedStyle(document.getElementById("house-picture")).touchAction), "none");
  });
  if (size.hasTouch) await it("two fingers come nearer, and the page stays where it is", async () => {
    await rest(page);
    const before = await picture(page);
    const scrolled = await page.evaluate(() => scrollY);
    const [x, y] = await middleOf(page);
    const session = await page.context().newCDPSession(page);
    const touch = (type, apart) => session.send("Input.dispatchTouchEvent", {
      type, touchPoints: apart === null ? [] : [{ x: x - apart, y, id: 1 }, { x: x + apart, y, id: 2 }],
    });
    await touch("touchStart", 30);
    for (const apart of [40, 55, 70]) await touch("touchMove", apart);
    await touch("touchEnd", null);
    await rest(page);
    assert(!before.equals(await picture(page)));
    assert.equal(await page.evaluate(() => scrollY), scrolled);
    await page.screenshot({ path: shot(`${size.name}-nearer`) });
  });
  await it("nothing went wrong and nothing was asked for", () => assert.deepEqual(faults, []));
  await close();
}

/** Phones take a page's picture away when memory is short. */
async function checksOfLoss({ browser, check, file, shot }, size) {
  const { page, faults, close } = await open(browser, file("demo.html"), size, { reducedMotion: "reduce" });
  await check(`${size.name}: a picture that the browser takes away says so, and comes back as it was`, async () => {
    await press(size, page.locator("#closing-5 .show-in-3d"));
    await rest(page);
    const before = await picture(page);
    await page.evaluate(() => {
      globalThis.loss = document.getElementById("house-picture").getContext("webgl2").getExtension("WEBGL_lose_context");
      globalThis.loss.loseContext();
    });
    await page.locator("#house-lost").waitFor({ state: "visible" });
    assert((await page.locator("#house-lost").innerText()).length > 40);
    assert(await page.locator("#house-again").isVisible());
    assert(!(await page.locator("#house-marks").isVisible()));
    await page.screenshot({ path: shot(`${size.name}-lost`) });
    const lost = await picture(page);
    await page.evaluate(() => globalThis.loss.restoreContext());
    await page.locator("#house-lost").waitFor({ state: "hidden" });
    await rest(page);
    await page.screenshot({ path: shot(`${size.name}-restored`) });
    const after = await picture(page);
    // It may be drawn with fewer pixels from then on, where drawing is slow.
    const same = await apart(page, before, after), other = await apart(page, before, lost);
    assert(same < 4 && other > 2 * same, `${same} from the picture before, which is ${other} from nothing`);
  });
  await check(`${size.name}: a picture that does not come back: the page is loaded again`, async () => {
    await page.evaluate(() => {
      const context = document.getElementById("house-picture").getContext("webgl2");
      context.getExtension("WEBGL_lose_context").loseContext();
    });
    await press(size, page.locator("#closing-7 .show-in-3d")); // lists go on meanwhile
    assert.equal(await page.locator("#closing-7").getAttribute("aria-current"), "true");
    await page.locator("#house-again").waitFor({ state: "visible" });
    await page.locator("#house").scrollIntoViewIfNeeded();
    await Promise.all([page.waitForEvent("load"), press(size, page.locator("#house-again"))]);
    await rest(page);
    assert(await page.locator("#house-marks").isVisible());
    assert(!(await page.locator("#house-lost").isVisible()));
  });
  await check(`${size.name}: nothing went wrong when the picture was lost`, () => assert.deepEqual(faults, []));
  await close();
}

export async function checksOfHouse(setting) {
  for (const size of [PHONE, DESK]) {
    await checksOfSize(setting, size);
    await checksOfLoss(setting, size);
  }
  await setting.check("with motion the picture flies, and comes to rest", async () => {
    const { page, close } = await open(setting.browser, setting.file("demo.html"), DESK);
    await rest(page);
    const before = await picture(page);
    await page.locator("#house [data-side=above]").click();
    await rest(page);
    assert(!before.equals(await picture(page)));
    await page.screenshot({ path: setting.shot("desk-above") });
    await close();
  });
}
