// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers and signs over the picture, on a canvas of their own: always of one size, apart from each other, and to be touched.
import { Raycaster, Vector3 } from "three";
import { CHOSEN, CLOSING, DONE, INK, OPEN, PAPER, WAY } from "./palette.js";
import { gapOf, isOpen, state } from "./state.js";
import { data } from "./words.js";
import { toScene } from "./ways.js";

const RADIUS = 11, TOUCH = 24; // pixels of the page
const FONT = '600 12px "DejaVu Sans", system-ui, sans-serif';

const SAME_START = 0.35; // meters: ways that begin so near each other have one tag

/** Numbers of ways that begin at one place. */
function startsOfWays() {
  const starts = [];
  data.ways.forEach((way, i) => {
    if (way.line.length < 2) return;
    const place = toScene(way.line[0]);
    const start = starts.find((other) => other.place.distanceTo(place) < SAME_START);
    if (start) start.numbers.push(i + 1);
    else starts.push({ place, numbers: [i + 1] });
  });
  return starts;
}

/** What could be marked: {kind, number, place, rank}; the lower its rank, the sooner it gets room. The tag of ways has `numbers`. */
function allMarks() {
  const marks = [];
  const placed = (gap) => data.gaps[gap] && data.gaps[gap].at;
  const of_plan = new Set(data.closings.map((closing) => closing.gap));
  data.closings.forEach(({ gap }, i) => {
    if (placed(gap)) marks.push({ kind: "closing", number: i + 1, gap, place: toScene(placed(gap)), rank: 10 + i / 1000 });
  });
  data.ways.forEach((way, i) => {
    if (placed(way.pinch_gap)) marks.push({ kind: "pinch", number: i + 1, place: toScene(placed(way.pinch_gap)), rank: 30 + i / 1000 });
  });
  for (const { place, numbers } of startsOfWays()) marks.push({ kind: "way", number: numbers[0], numbers, place, rank: 5 + numbers[0] / 1000 });
  for (const [gap, { at, open }] of Object.entries(data.gaps)) {
    if (at && !of_plan.has(Number(gap))) marks.push({ kind: "gap", number: Number(gap), place: toScene(at), open, rank: 40 });
  }
  return marks;
}

/** Of the ways of a tag those that are open. */
function openOf(mark) {
  return mark.numbers.filter((number) => isOpen(data.ways[number - 1]));
}

/** What a touch of a mark chooses: of several ways the next one. */
export function choiceOf(mark) {
  if (mark.kind === "pinch") return { kind: "way", number: mark.number };
  if (mark.kind !== "way") return { kind: mark.kind, number: mark.number };
  const open = openOf(mark);
  const now = state.chosen && state.chosen.kind === "way" ? open.indexOf(state.chosen.number) : -1;
  return { kind: "way", number: open[(now + 1) % open.length] };
}

export class Marks {
  constructor(canvas) {
    this.canvas = canvas;
    this.pen = canvas.getContext("2d");
    this.marks = allMarks();
    this.drawn = [];
  }

  resize(width, height, ratio) {
    Object.assign(this, { width, height, ratio });
    this.canvas.width = Math.round(width * ratio);
    this.canvas.height = Math.round(height * ratio);
  }

  isChosen(mark) {
    const chosen = state.chosen;
    if (!chosen) return false;
    if (mark.kind === "pinch") return chosen.kind === "way" && chosen.number === mark.number;
    if (mark.kind === "way") return chosen.kind === "way" && mark.numbers.includes(chosen.number);
    return chosen.kind === mark.kind && chosen.number === mark.number;
  }

  /** Whether a mark has something to say now. */
  isWanted(mark) {
    if (mark.kind === "way") return openOf(mark).length > 0;
    if (mark.kind === "pinch") return isOpen(data.ways[mark.number - 1]) && this.isChosen(mark);
    const price = state.price > 0 ? data.prices[state.price - 1] : null;
    if (price) return price.gaps.includes(gapOf(mark));
    return mark.kind === "closing" || Boolean(mark.open) || this.isChosen(mark);
  }

  /** Which marks stand behind something; looked up when the picture is at rest. */
  findHidden(camera, solids) {
    const ray = new Raycaster();
    const to = new Vector3();
    for (const mark of this.marks) {
      if (!this.isWanted(mark)) continue;
      to.copy(mark.place).sub(camera.position);
      const distance = to.length();
      ray.set(camera.position, to.normalize());
      ray.far = distance - 0.12;
      mark.hidden = ray.intersectObjects(solids, false).length > 0;
    }
  }

  draw(camera) {
    const { pen, ratio } = this;
    pen.setTransform(ratio, 0, 0, ratio, 0, 0);
    pen.clearRect(0, 0, this.width, this.height);
    pen.textAlign = "center";
    pen.textBaseline = "middle";
    this.drawn = [];
    const seen = [];
    for (const mark of this.marks) {
      if (!this.isWanted(mark)) continue;
      const at = mark.place.clone().project(camera);
      if (at.z > 1 || Math.abs(at.x) > 1.05 || Math.abs(at.y) > 1.05) continue;
      const rank = this.isChosen(mark) ? 0 : mark.rank + (mark.hidden ? 20 : 0) + (mark.kind === "closing" && mark.number <= state.step ? 15 : 0);
      seen.push({ mark, rank, x: ((at.x + 1) / 2) * this.width, y: ((1 - at.y) / 2) * this.height });
    }
    seen.sort((a, b) => a.rank - b.rank || a.mark.number - b.mark.number);
    for (const each of seen) {
      each.crowded = each.rank > 0 && this.drawn.some((other) => Math.hypot(other.x - each.x, other.y - each.y) < 1.75 * RADIUS);
      if (each.crowded && each.mark.kind !== "closing") continue;
      this.drawn.push(each);
    }
    for (const each of [...this.drawn].reverse()) this.drawOne(each);
  }

  drawOne({ mark, x, y, crowded }) {
    const { pen } = this;
    const chosen = this.isChosen(mark);
    pen.globalAlpha = mark.hidden && !chosen ? 0.75 : 1;
    if (mark.kind === "closing") this.closing(mark, x, y, crowded, chosen);
    if (mark.kind === "way") this.way(mark, x, y, chosen);
    if (mark.kind === "pinch") this.pinch(mark, x, y);
    if (mark.kind === "gap") this.gap(mark, x, y, chosen);
    pen.globalAlpha = 1;
  }

  ring(x, y, radius, fill, stroke, width) {
    const { pen } = this;
    pen.beginPath();
    pen.arc(x, y, radius, 0, 2 * Math.PI);
    pen.fillStyle = fill;
    pen.fill();
    pen.lineWidth = width;
    pen.strokeStyle = stroke;
    pen.stroke();
  }

  text(words, x, y, color, size = 12) {
    this.pen.font = FONT.replace("12px", `${size}px`);
    this.pen.fillStyle = color;
    this.pen.fillText(words, x, y + 0.5);
  }

  closing(mark, x, y, crowded, chosen) {
    const done = mark.number <= state.step;
    const color = done ? DONE : CLOSING;
    if (crowded) return this.ring(x, y, 4, mark.hidden ? PAPER : color, mark.hidden ? color : PAPER, 1.5);
    if (chosen) this.ring(x, y, RADIUS + 5, CHOSEN, INK, 1.5);
    const hollow = mark.hidden && !chosen;
    this.ring(x, y, RADIUS, hollow ? PAPER : color, hollow ? color : PAPER, 2);
    if (done) return this.tick(x, y, hollow ? color : PAPER);
    this.text(String(mark.number), x, y, hollow ? color : PAPER, mark.number > 99 ? 9 : 12);
  }

  tick(x, y, color) {
    const { pen } = this;
    pen.beginPath();
    pen.moveTo(x - 5, y);
    pen.lineTo(x - 1.5, y + 4);
    pen.lineTo(x + 5.5, y - 4.5);
    pen.lineWidth = 2.4;
    pen.strokeStyle = color;
    pen.stroke();
  }

  /** A tag that points to where ways begin. */
  way(mark, x, y, chosen) {
    const { pen } = this;
    const open = openOf(mark);
    const words = chosen ? String(state.chosen.number) : open.length > 2 ? `${open[0]}, ${open[1]} \u2026` : open.join(", ");
    pen.font = FONT;
    const half = Math.max(10, pen.measureText(words).width / 2 + 6);
    pen.beginPath();
    pen.moveTo(x, y);
    for (const [dx, dy] of [[-6, -8], [-half, -8], [-half, -27], [half, -27], [half, -8], [6, -8]]) pen.lineTo(x + dx, y + dy);
    pen.closePath();
    pen.fillStyle = chosen ? CHOSEN : WAY;
    pen.fill();
    pen.lineWidth = 1.8;
    pen.strokeStyle = chosen ? INK : PAPER;
    pen.stroke();
    this.text(words, x, y - 17.5, chosen ? INK : PAPER);
  }

  /** The smallest gap of the chosen way, with its width. */
  pinch(mark, x, y) {
    const { pen } = this;
    const words = data.ways[mark.number - 1].pinch;
    pen.font = FONT;
    const half = pen.measureText(words).width / 2 + 8;
    const middle = Math.min(Math.max(x, half + 4), this.width - half - 4), top = y > 70 ? y - 46 : y + 24;
    pen.beginPath();
    pen.moveTo(x, y);
    pen.lineTo(middle, top + 11);
    pen.lineWidth = 1.5;
    pen.strokeStyle = INK;
    pen.stroke();
    for (const [radius, width, color] of [[8, 5, PAPER], [8, 2.4, WAY]]) {
      pen.beginPath();
      pen.arc(x, y, radius, 0, 2 * Math.PI);
      pen.lineWidth = width;
      pen.strokeStyle = color;
      pen.stroke();
    }
    pen.beginPath();
    pen.rect(middle - half, top, 2 * half, 22);
    pen.fillStyle = PAPER;
    pen.fill();
    pen.stroke();
    this.text(words, middle, top + 11, INK);
  }

  /** A gap without a closing: a square; empty where it must stay open. */
  gap(mark, x, y, chosen) {
    const { pen } = this;
    const half = chosen ? 7 : 4.5;
    pen.beginPath();
    pen.rect(x - half, y - half, 2 * half, 2 * half);
    pen.fillStyle = chosen ? CHOSEN : mark.open ? PAPER : CLOSING;
    pen.fill();
    pen.lineWidth = 2;
    pen.strokeStyle = mark.open ? OPEN : PAPER;
    pen.stroke();
  }

  /** The mark at a point of the picture, within the reach of a finger. */
  at(x, y) {
    let nearest = null, best = TOUCH;
    for (const each of this.drawn) {
      const lift = each.mark.kind === "way" ? 15 : 0;
      const away = Math.hypot(each.x - x, each.y - lift - y);
      if (away < best) [nearest, best] = [each.mark, away];
    }
    return nearest;
  }
}
