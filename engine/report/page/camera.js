// SPDX-License-Identifier: GPL-3.0-or-later
// Where the house is looked at from: turned by drag, pinch and keys, flown to a side or a place.
import { PerspectiveCamera, Spherical, Vector3 } from "three";
import { OrbitControls } from "three/examples/jsm/controls/OrbitControls.js";

const SIDES = { north: [0, 0, -1], south: [0, 0, 1], east: [1, 0, 0], west: [-1, 0, 0] };
const HOME = new Vector3(-0.62, 0.72, 0.95).normalize(); // from the south-west, above
const FLIGHT = 0.7; // seconds
const TURN = 0.12, NEARER = 1.12; // of one key

export class Eye {
  /** `box`: of the house, to be seen whole from the start; `canvas` takes fingers, mouse and keys. `changed`: called when it moves. */
  constructor(canvas, box, changed) {
    this.box = box;
    this.changed = changed;
    this.middle = box.getCenter(new Vector3()).setY(box.min.y + 0.3 * (box.max.y - box.min.y)); // the roof is mostly looked through
    this.reach = box.getSize(new Vector3()).length() / 2;
    this.camera = new PerspectiveCamera(32, 1, 0.1, 40 * this.reach);
    this.still = matchMedia("(prefers-reduced-motion: reduce)");
    const controls = (this.controls = new OrbitControls(this.camera, canvas));
    controls.enableDamping = !this.still.matches;
    controls.dampingFactor = 0.12;
    controls.maxPolarAngle = 0.53 * Math.PI;
    controls.minDistance = 0.6;
    controls.maxDistance = 8 * this.reach;
    controls.enableZoom = false; // by wheel, until the picture is asked for: before, the wheel moves the page
    controls.addEventListener("change", () => changed());
    controls.addEventListener("start", () => (this.flight = null));
    canvas.addEventListener("focus", () => (controls.enableZoom = true));
    canvas.addEventListener("blur", () => (controls.enableZoom = false));
    // Two fingers always come nearer; the controls have to know before they hear of the second one.
    canvas.addEventListener("pointerdown", ({ pointerType }) => pointerType === "mouse" || (controls.enableZoom = true), { capture: true });
    canvas.addEventListener("keydown", (event) => this.key(event));
  }

  resize(width, height) {
    this.camera.aspect = width / height;
    this.camera.updateProjectionMatrix();
  }

  /** So far away that a ball of that radius is seen whole, however narrow the picture is. */
  away(radius) {
    const half = Math.tan((this.camera.fov * Math.PI) / 360) * Math.min(1, this.camera.aspect);
    return radius / Math.sin(Math.atan(half));
  }

  /** A side of the house, "above" or "home". */
  lookFrom(side, at_once) {
    const ways = { above: new Vector3(0, 1, 0.001), home: HOME };
    const from = ways[side] || new Vector3(...SIDES[side]).add(new Vector3(0, 0.22, 0)).normalize();
    this.fly(this.middle.clone(), from.clone().multiplyScalar(this.away(0.95 * this.reach)).add(this.middle), at_once);
  }

  /** To a place at the house, seen from outside and a little from above. */
  lookAt(place) {
    const out = place.clone().sub(this.middle);
    out.y = 0;
    const level = out.length() > 0.3 ? out.normalize() : new Vector3(this.camera.position.x - place.x, 0, this.camera.position.z - place.z).normalize();
    const above = place.y > this.middle.y ? 0.75 : 0.42;
    this.fly(place.clone(), level.add(new Vector3(0, above, 0)).normalize().multiplyScalar(this.away(1.7)).add(place));
  }

  /** So that all of these are seen, from where the eye is. */
  lookOver(points) {
    const low = points[0].clone(), high = points[0].clone();
    for (const p of points) {
      low.min(p);
      high.max(p);
    }
    const middle = low.clone().add(high).multiplyScalar(0.5);
    const toEye = this.camera.position.clone().sub(this.controls.target).normalize();
    if (toEye.y < 0.45) toEye.setY(0.45).normalize();
    const radius = Math.max(2.2, 0.6 * low.distanceTo(high));
    this.fly(middle, toEye.multiplyScalar(this.away(radius)).add(middle));
  }

  fly(target, position, at_once) {
    if (at_once || this.still.matches) {
      this.flight = null;
      this.controls.target.copy(target);
      this.camera.position.copy(position);
      this.controls.update();
      this.changed();
      return;
    }
    // Round the house, not through it: the direction turns, the distance and the target move.
    const from = new Spherical().setFromVector3(this.camera.position.clone().sub(this.controls.target));
    const to = new Spherical().setFromVector3(position.clone().sub(target));
    to.theta = from.theta + (((to.theta - from.theta + 3 * Math.PI) % (2 * Math.PI)) - Math.PI);
    this.flight = { done: 0, from, to, start: this.controls.target.clone(), target };
    this.changed();
  }

  /** Moves on by so many seconds; says whether it is still under way. */
  advance(seconds) {
    const flight = this.flight;
    if (flight) {
      flight.done = Math.min(1, flight.done + seconds / FLIGHT);
      const t = flight.done * flight.done * (3 - 2 * flight.done);
      const between = (key) => flight.from[key] + (flight.to[key] - flight.from[key]) * t;
      this.controls.target.lerpVectors(flight.start, flight.target, t);
      const off = new Vector3().setFromSpherical(new Spherical(between("radius"), between("phi"), between("theta")));
      this.camera.position.copy(this.controls.target).add(off);
      if (flight.done === 1) this.flight = null;
    }
    return this.controls.update() || this.flight !== null;
  }

  /** From what is looked at toward the eye. */
  toEye() {
    return this.camera.position.clone().sub(this.controls.target).normalize();
  }

  key(event) {
    if (event.ctrlKey || event.altKey || event.metaKey) return;
    const turns = { ArrowLeft: [-TURN, 0], ArrowRight: [TURN, 0], ArrowUp: [0, -TURN], ArrowDown: [0, TURN] };
    const off = new Spherical().setFromVector3(this.camera.position.clone().sub(this.controls.target));
    if (turns[event.key]) {
      off.theta += turns[event.key][0];
      off.phi = Math.min(Math.max(off.phi + turns[event.key][1], 0.01), this.controls.maxPolarAngle);
    } else if (event.key === "+" || event.key === "=") {
      off.radius = Math.max(off.radius / NEARER, this.controls.minDistance);
    } else if (event.key === "-") {
      off.radius = Math.min(off.radius * NEARER, this.controls.maxDistance);
    } else if (event.key === "Home") {
      this.lookFrom("home");
      event.preventDefault();
      return;
    } else {
      return;
    }
    event.preventDefault();
    this.flight = null;
    this.camera.position.setFromSpherical(off).add(this.controls.target);
    this.controls.update();
    this.changed();
  }
}
