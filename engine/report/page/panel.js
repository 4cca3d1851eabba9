// SPDX-License-Identifier: GPL-3.0-or-later
// What steers the picture, the words beneath it, and the card about what is chosen.
import { change, closingAt, gapOf, isOpen, openWays, state, whenChanged } from "./state.js";
import { byId, data, say } from "./words.js";

function whenPicked(name, picked) {
  for (const radio of document.querySelectorAll(`#house input[name="${name}"]`)) {
    // Browsers keep what was picked when a page is loaded again.
    if (radio.checked) picked(radio.value);
    radio.addEventListener("change", () => picked(radio.value));
  }
}

/** What is still open, in words. */
export function news() {
  const ways = openWays();
  const step = state.step === 0 ? say("before_work") : say("after_closing", state.step, data.closings.length);
  const when = state.price > 0 ? `${data.prices[state.price - 1].cost}:` : step;
  if (data.animals.length === 0) {
    return `${when} ${ways.length === 1 ? say("one_way_no_animal") : say("many_ways_no_animal", ways.length)}`;
  }
  if (ways.length === 0) return `${when} ${state.animal === null ? say("no_way") : say("no_way_for", data.animals[state.animal])}`;
  const animals = data.animals.filter((name, i) => (state.animal === null || state.animal === i) && ways.some((way) => isOpen(way, state.step, i)));
  return `${when} ${ways.length === 1 ? say("one_way", animals.join(", ")) : say("many_ways", ways.length, animals.join(", "))}`;
}

/** Title and text of what is chosen. */
function told(chosen) {
  if (chosen.kind === "way") {
    const way = data.ways[chosen.number - 1];
    const animals = way.animals.map((i) => data.animals[i]).join(", ");
    const title = `${say("way", chosen.number)}: ${way.from} \u2192 ${way.to}`;
    return [title, [say("smallest", way.pinch), data.gaps[way.pinch_gap].name, animals].filter(Boolean).join(" \u00b7 ")];
  }
  const gap = data.gaps[gapOf(chosen)];
  if (chosen.kind === "gap") return [gap.name, [gap.width, gap.open ? `${say("stays_open")}: ${gap.open}` : ""].filter(Boolean).join(" \u00b7 ")];
  const closing = data.closings[chosen.number - 1];
  const done = chosen.number <= state.step ? say("done") : "";
  return [`${say("closing", chosen.number)}: ${gap.name}`, [closing.treatment, gap.width, closing.place, done].filter(Boolean).join(" \u00b7 ")];
}

function showCard({ chosen }) {
  byId("house-card").hidden = chosen === null;
  if (chosen === null) return;
  const [title, text] = told(chosen);
  byId("card-title").textContent = title;
  byId("card-text").textContent = text;
  const number = chosen.kind === "gap" ? closingAt(chosen.number) : chosen.number;
  byId("card-list").hidden = !byId(`${chosen.kind === "way" ? "way" : "closing"}-${number}`);
}

export function steer(picture, goToList) {
  whenPicked("animal", (value) => change({ animal: value === "all" ? null : Number(value), chosen: null }));
  for (const fieldset of document.querySelectorAll("#house .coat-rows fieldset")) {
    const { name } = fieldset.querySelector("input");
    whenPicked(name, (mode) => picture.setMode(name.replace("coat-", ""), mode));
  }
  const through = byId("look-through");
  through.addEventListener("change", () => picture.setLooksThrough(through.checked));
  picture.setLooksThrough(through.checked);
  for (const button of document.querySelectorAll("#house [data-side]")) {
    button.addEventListener("click", () => picture.eye.lookFrom(button.dataset.side));
  }
  const slider = byId("house-step");
  const work = (step) => change({ step, price: 0 });
  if (slider) {
    slider.addEventListener("input", () => work(Number(slider.value)));
    byId("work-before").addEventListener("click", () => work(0));
    byId("work-after").addEventListener("click", () => work(data.closings.length));
  }
  byId("card-close").addEventListener("click", () => {
    change({ chosen: null });
    byId("house-picture").focus({ preventScroll: true });
  });
  byId("card-list").addEventListener("click", () => goToList(state.chosen));
  whenChanged((now) => {
    if (slider) {
      slider.value = String(now.step);
      slider.setAttribute("aria-valuetext", news());
    }
    if (byId("house-news").textContent !== news()) byId("house-news").textContent = news();
    showCard(now);
  });
  change({ step: slider ? Number(slider.value) : 0 });
}
