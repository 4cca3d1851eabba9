// SPDX-License-Identifier: GPL-3.0-or-later
// What is chosen on the page. Everything that shows it is told when it changes.
import { data } from "./words.js";

const listeners = [];

export const state = {
  animal: null, // position in data.animals; null: all
  step: 0, // so many closings are done
  price: 0, // so many steps of the price are gone; 0: none is looked at
  chosen: null, // {kind: "closing" | "way" | "gap", number}: closings and ways count from 1, gaps are those of data.gaps
};

/** `from`: who changes it, for those who need not be told what they said themselves. */
export function change(what, from) {
  Object.assign(state, what);
  for (const listener of listeners) listener(state, from);
}

export function whenChanged(listener) {
  listeners.push(listener);
}

/** Whether a way is open after so many closings, to the animals that are looked at. While a price is looked at, after its closings:
 * they are full ones, and nobody gets through. */
export function isOpen(way, step = state.step, animal = state.animal) {
  if (state.price > 0 && way.gaps.some((gap) => data.prices[state.price - 1].gaps.includes(gap))) return false;
  if (state.price > 0) step = 0;
  if (data.animals.length === 0) return true;
  return way.animals.some((each, i) => (animal === null || each === animal) && (way.shut_after[i] === 0 || way.shut_after[i] > step));
}

export function openWays(step = state.step, animal = state.animal) {
  return data.ways.filter((way) => isOpen(way, step, animal));
}

/** The gap of what is chosen; nothing where nothing is, or a way. */
export function gapOf(chosen) {
  if (!chosen) return null;
  if (chosen.kind === "closing") return data.closings[chosen.number - 1].gap;
  return chosen.kind === "gap" ? chosen.number : null;
}

/** The number of the closing at a gap; 0: there is none. */
export function closingAt(gap) {
  return data.closings.findIndex((closing) => closing.gap === gap) + 1;
}
