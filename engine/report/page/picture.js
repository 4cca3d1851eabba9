// SPDX-License-Identifier: GPL-3.0-or-later
// The picture of the house: drawn when something changes, and not otherwise.
import { AmbientLight, DirectionalLight, HemisphereLight, PCFSoftShadowMap, Scene, Vector3, WebGLRenderer } from "three";
import { Coats } from "./coats.js";
import { Eye } from "./camera.js";
import { choiceOf, Marks } from "./marks.js";
import { readModel } from "./model.js";
import { CHOSEN } from "./palette.js";
import { change, gapOf, isOpen, state, whenChanged } from "./state.js";
import { toScene, Ways } from "./ways.js";
import { byId, data } from "./words.js";

const MOST_PIXELS = 2; // of the screen for one of the page
const REST = 140; // milliseconds without a change: then what is hidden is looked up
const SLOW = 0.15; // seconds for a frame: then it is drawn with fewer pixels, and stops where the finger does
const TAP = 7; // pixels that a finger may move

export class Picture {
  /** Null where the browser has no WebGL. */
  static on(canvas, marks) {
    const context = canvas.getContext("webgl2", { antialias: true, alpha: true, powerPreference: "low-power" });
    return context ? new Picture(canvas, marks, context) : null;
  }

  constructor(canvas, marks, context) {
    this.canvas = canvas;
    this.renderer = new WebGLRenderer({ canvas, context, antialias: true, alpha: true });
    this.renderer.shadowMap.enabled = true;
    this.renderer.shadowMap.type = PCFSoftShadowMap;
    this.renderer.shadowMap.autoUpdate = false;
    this.renderer.shadowMap.needsUpdate = true;
    this.scene = new Scene();
    this.coats = new Coats(readModel(data.model));
    delete data.model; // large, and not needed any more
    this.ways = new Ways(data.ways);
    this.marks = new Marks(marks);
    this.scene.add(this.coats.group, this.ways.group);
    this.eye = new Eye(canvas, this.coats.box, () => this.ask());
    this.light();
    this.still = matchMedia("(prefers-reduced-motion: reduce)");
    this.listen();
    new ResizeObserver(() => this.resize()).observe(canvas.parentElement);
    whenChanged((now, from) => this.follow(now, from));
    this.resize();
    this.eye.lookFrom("home", true);
    this.follow(state);
  }

  light() {
    const { box } = this.coats;
    const middle = box.getCenter(new Vector3()), reach = 1.5 * box.getSize(new Vector3()).length();
    const sun = new DirectionalLight(0xfff1dc, 2.3);
    sun.position.copy(middle).add(new Vector3(-0.85, 1.1, -0.2).normalize().multiplyScalar(reach));
    sun.target.position.copy(middle);
    sun.castShadow = true;
    sun.shadow.mapSize.set(2048, 2048);
    Object.assign(sun.shadow.camera, { left: -0.6 * reach, right: 0.6 * reach, top: 0.6 * reach, bottom: -0.6 * reach, near: 0.1, far: 2.5 * reach });
    sun.shadow.radius = 4;
    sun.shadow.normalBias = 0.04;
    sun.shadow.intensity = 0.45;
    const fill = new DirectionalLight(0xffffff, 0.75); // from the other side, without shadows
    fill.position.copy(middle).add(new Vector3(0.35, 0.5, 1).multiplyScalar(reach));
    fill.target = sun.target;
    this.scene.add(fill, new HemisphereLight(0xf2f6ff, 0xcdbfa6, 1.75), new AmbientLight(0xffffff, 0.3), sun, sun.target);
  }

  listen() {
    const { canvas } = this;
    let down = null;
    canvas.addEventListener("pointerdown", (event) => (down = event.isPrimary ? [event.offsetX, event.offsetY] : null));
    canvas.addEventListener("pointerup", (event) => {
      if (down && Math.hypot(event.offsetX - down[0], event.offsetY - down[1]) < TAP) this.tap(event.offsetX, event.offsetY);
      down = null;
    });
    canvas.addEventListener("pointermove", (event) => {
      if (event.pointerType === "mouse") canvas.classList.toggle("can-tap", this.marks.at(event.offsetX, event.offsetY) !== null);
    });
    canvas.addEventListener("webglcontextlost", (event) => {
      event.preventDefault(); // so that it may come back
      this.lose(true);
    });
    canvas.addEventListener("webglcontextrestored", () => {
      this.lose(false);
      this.shadeAnew();
    });
    byId("house-again").addEventListener("click", () => location.reload());
  }

  /** While the picture is lost its words stand in its place, and the marks over it would be marks on nothing. */
  lose(lost) {
    this.lost = lost;
    byId("house-lost").hidden = !lost;
    this.marks.canvas.hidden = lost;
  }

  tap(x, y) {
    if (this.lost) return;
    const mark = this.marks.at(x, y);
    change({ chosen: mark && choiceOf(mark) }, "picture");
  }

  /** What was chosen somewhere is shown; flown to, unless it was touched here. */
  follow({ chosen }, from) {
    const open = data.ways.map((way) => isOpen(way));
    this.ways.show(open, chosen && chosen.kind === "way" ? chosen.number - 1 : -1);
    if (this.glow) this.scene.remove(this.glow);
    const gap = chosen && chosen.kind === "way" ? data.ways[chosen.number - 1].pinch_gap : gapOf(chosen);
    this.glow = gap === null ? null : this.coats.glowOf(gap, CHOSEN);
    if (this.glow) this.scene.add(this.glow);
    if (chosen && from === "list") this.flyTo(chosen);
    this.ask();
  }

  flyTo(chosen) {
    if (chosen.kind === "way") {
      const { points } = this.ways.lines[chosen.number - 1];
      if (points.length > 0) this.eye.lookOver(points);
      return;
    }
    const { at } = data.gaps[gapOf(chosen)];
    if (at) this.eye.lookAt(toScene(at));
  }

  resize() {
    const { clientWidth: width, clientHeight: height } = this.canvas.parentElement;
    if (width === 0 || height === 0) return;
    const ratio = Math.min(window.devicePixelRatio || 1, MOST_PIXELS);
    this.renderer.setPixelRatio(this.slow ? 1 : ratio);
    this.renderer.setSize(width, height, false);
    this.marks.resize(width, height, ratio);
    this.eye.resize(width, height);
    this.ask();
  }

  /** How a coat is shown: "shown", "faint" or "hidden". */
  setMode(coat, mode) {
    this.coats.setMode(coat, mode);
    this.shadeAnew();
  }

  /** Whether what stands before the rooms gets faint. */
  setLooksThrough(looksThrough) {
    this.coats.setLooksThrough(looksThrough);
    this.shadeAnew();
  }

  shadeAnew() {
    this.renderer.shadowMap.needsUpdate = true;
    this.ask();
  }

  /** Asks for a frame. */
  ask() {
    if (this.asked) return;
    this.asked = true;
    this.canvas.dataset.rested = "no";
    requestAnimationFrame((now) => this.frame(now));
  }

  frame(now) {
    this.asked = false;
    const seconds = Math.min((now - (this.last || now)) / 1000, 0.5) || 0.016;
    this.last = now;
    if (seconds > SLOW && !this.slow) {
      this.slow = true;
      this.eye.controls.enableDamping = false;
      this.resize();
    }
    const turning = this.eye.advance(seconds);
    this.coats.aim(this.eye.toEye());
    const moving = this.coats.advance(this.still.matches ? 10 : seconds);
    this.renderer.render(this.scene, this.eye.camera);
    this.marks.draw(this.eye.camera);
    clearTimeout(this.rest);
    if (turning || moving) return this.ask();
    this.last = 0;
    this.rest = setTimeout(() => this.atRest(), REST);
  }

  atRest() {
    this.marks.findHidden(this.eye.camera, this.coats.solids());
    this.marks.draw(this.eye.camera);
    this.canvas.dataset.rested = "yes";
  }
}
