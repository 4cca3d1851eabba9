// SPDX-License-Identifier: GPL-3.0-or-later
// Ties the lists of the page to the picture: each entry gets a button, and the one that is chosen is marked. While the list is read,
// the picture stays in sight, small.
import { change, whenChanged } from "./state.js";
import { byId, data, element, say } from "./words.js";

function entryOf(chosen) {
  return chosen && byId(`${chosen.kind}-${chosen.number}`);
}

function addButtons() {
  for (const [kind, list] of [["closing", data.closings], ["way", data.ways]]) {
    list.forEach((_, i) => {
      const entry = byId(`${kind}-${i + 1}`);
      if (!entry) return;
      const button = element("button", { type: "button", class: "show-in-3d", "aria-label": `${say("show")}: ${say(kind, i + 1)}` }, say("show"));
      button.addEventListener("click", () => change({ chosen: { kind, number: i + 1 } }, "list"));
      entry.append(button);
    });
  }
}

/** The picture, small at the edge of the window while it would be out of sight. */
class Dock {
  constructor() {
    this.figure = byId("house");
    this.stage = this.figure.querySelector(".stage");
    this.hole = element("div", { class: "stage-hole", hidden: "" });
    this.stage.before(this.hole);
    new IntersectionObserver(([seen]) => {
      if (this.docked && seen.intersectionRatio > 0.6) this.set(false);
    }, { threshold: [0.61] }).observe(this.hole);
  }

  get docked() {
    return this.stage.classList.contains("docked");
  }

  set(docked) {
    this.hole.style.height = `${this.stage.offsetHeight}px`;
    this.hole.hidden = !docked;
    this.stage.classList.toggle("docked", docked);
    document.documentElement.classList.toggle("has-dock", docked);
  }

  inSight() {
    const { top, bottom } = this.stage.getBoundingClientRect();
    return Math.min(bottom, window.innerHeight) - Math.max(top, 0) > 0.5 * (bottom - top);
  }
}

/** Returns what goes to the list's entry. */
export function tieLists() {
  addButtons();
  const dock = new Dock();
  const calm = matchMedia("(prefers-reduced-motion: reduce)");
  const reveal = (entry) => entry.scrollIntoView({ block: "center", behavior: calm.matches ? "auto" : "smooth" });
  whenChanged(({ chosen }, from) => {
    for (const marked of document.querySelectorAll("li[aria-current]")) marked.removeAttribute("aria-current");
    const entry = entryOf(chosen);
    if (entry) entry.setAttribute("aria-current", "true");
    if (from === "list" && !dock.docked && !dock.inSight()) dock.set(true);
    if (from === "picture" && entry && dock.docked) reveal(entry);
    if (chosen === null && dock.docked) dock.set(false);
  });
  return (chosen) => {
    const entry = entryOf(chosen);
    if (!entry) return;
    for (let outer = entry.parentElement; outer; outer = outer.parentElement) {
      if (outer.tagName === "DETAILS") outer.open = true;
    }
    dock.set(true);
    reveal(entry);
    const button = entry.querySelector(".show-in-3d");
    if (button) button.focus({ preventScroll: true });
  };
}
