// SPDX-License-Identifier: GPL-3.0-or-later
// The chart of prices answers to fingers, the mouse and arrow keys, and the picture shows the closings of a price.
import { change, closingAt, state, whenChanged } from "./state.js";
import { byId, data, say } from "./words.js";

function wordsOf(step) {
  if (step === 0) return say("price_nothing");
  const { cost, width, kept_out: keptOut, gaps } = data.prices[step - 1];
  const animals = keptOut.map((i) => data.animals[i]).join(", ") || "\u2013";
  const numbers = gaps.map(closingAt).filter((number) => number > 0).sort((a, b) => a - b);
  const others = gaps.filter((gap) => closingAt(gap) === 0).map((gap) => data.gaps[gap].name);
  return say("price_step", cost, width, animals, [...numbers, ...others].join(", "));
}

/** Moves the marks of the chart to a step. */
function point(chart, step) {
  const line = byId("ladder-here"), dot = byId("ladder-dot");
  for (const mark of [line, dot]) mark.classList.toggle("none", step === 0);
  for (const each of chart.querySelectorAll(".step")) each.classList.toggle("reached", Number(each.dataset.step) <= step);
  if (step === 0) return;
  const at = chart.querySelector(`[data-step="${step}"]`);
  for (const [mark, keys] of [[line, ["x1", "x2"]], [dot, ["cx"]]]) {
    for (const key of keys) mark.setAttribute(key, at.getAttribute("cx"));
  }
  dot.setAttribute("cy", at.getAttribute("cy"));
}

/** The dearest step that a price at a place of the chart pays for. */
function stepAt(chart, event) {
  const box = chart.getBoundingClientRect();
  const x = ((event.clientX - box.left) / box.width) * chart.viewBox.baseVal.width;
  const { left, right, dearest } = chart.dataset;
  const dollars = ((x - left) / (right - left)) * dearest + 0.005;
  return data.prices.filter(({ cents }) => cents / 100 <= dollars).length;
}

export function wakeLadder() {
  const figure = byId("ladder");
  if (!figure || !data.prices) return;
  const chart = figure.querySelector("svg"), slider = byId("ladder-price");
  figure.querySelector(".ladder-control").hidden = false;
  const go = (price) => change(price > 0 ? { price, step: 0, chosen: null } : { price }, "ladder");
  slider.addEventListener("input", () => go(Number(slider.value)));
  let holds = false;
  chart.addEventListener("pointerdown", (event) => {
    holds = true;
    chart.setPointerCapture(event.pointerId);
    go(stepAt(chart, event));
  });
  chart.addEventListener("pointermove", (event) => {
    if (holds && stepAt(chart, event) !== state.price) go(stepAt(chart, event));
  });
  for (const end of ["pointerup", "pointercancel"]) chart.addEventListener(end, () => (holds = false));
  const show = ({ price }) => {
    slider.value = String(price);
    const words = wordsOf(price);
    slider.setAttribute("aria-valuetext", words);
    if (byId("ladder-words").textContent !== words) byId("ladder-words").textContent = words;
    point(chart, price);
  };
  whenChanged(show);
  go(Number(slider.value));
}
