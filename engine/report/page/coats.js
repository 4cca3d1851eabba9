// SPDX-License-Identifier: GPL-3.0-or-later
// The parts of the house: shown, faint or hidden by coats; what stands between the eye and the rooms gets faint by itself.
import { Box3, Color, Group, LineBasicMaterial, LineSegments, Mesh, MeshBasicMaterial, MeshLambertMaterial, Vector3 } from "three";
import { edgesOf, facesOf } from "./shapes.js";

const FAINT = 0.06, FAINT_EDGES = 0.16, FULL_EDGES = 0.42;
const FADES_IN = 0.22; // seconds
const EDGE = 0x39414b;
const WHITE = new Color(1, 1, 1);
const PALER = 0.3; // toward white: a model on a table, so that what is drawn over it stands out

/** A coat's parts that face one way. */
class Piece {
  constructor({ extras, meshes }) {
    this.coat = extras.coat;
    this.facing = extras.facing ? new Vector3(...extras.facing) : null;
    this.shown = 1; // on its way to `wanted`
    this.wanted = 1;
    this.faces = meshes.map((mesh) => {
      const material = new MeshLambertMaterial({
        color: new Color(...mesh.color).lerp(WHITE, PALER), opacity: mesh.opacity, transparent: mesh.opacity < 1, polygonOffset: true, polygonOffsetFactor: 1,
        polygonOffsetUnits: 1,
      });
      const faces = new Mesh(facesOf(mesh), material);
      faces.userData.opacity = mesh.opacity;
      faces.receiveShadow = mesh.opacity === 1;
      return faces;
    });
    this.edges = new LineSegments(edgesOf(meshes), new LineBasicMaterial({ color: EDGE, transparent: true, opacity: FULL_EDGES, depthWrite: false }));
    this.edges.renderOrder = 1;
  }

  /** Shows the piece as far as `shown` says: 1 wholly, 0.5 faint, 0 not at all. */
  apply() {
    const fill = this.shown >= 0.5 ? FAINT + (1 - FAINT) * (2 * this.shown - 1) : FAINT * 2 * this.shown;
    const edges = this.shown >= 0.5 ? FAINT_EDGES + (FULL_EDGES - FAINT_EDGES) * (2 * this.shown - 1) : FAINT_EDGES * 2 * this.shown;
    const whole = this.shown > 0.99;
    for (const mesh of this.faces) {
      mesh.visible = this.shown > 0.01;
      mesh.material.opacity = fill * mesh.userData.opacity;
      const transparent = mesh.material.opacity < 1;
      if (mesh.material.transparent !== transparent) Object.assign(mesh.material, { transparent, needsUpdate: true }); // another shader
      mesh.material.depthWrite = whole;
    }
    this.edges.visible = this.shown > 0.01;
    this.edges.material.opacity = edges;
  }
}

export class Coats {
  /** `nodes`: as readModel() makes them. */
  constructor(nodes) {
    this.group = new Group();
    this.pieces = nodes.filter((node) => node.extras.coat).map((node) => new Piece(node));
    for (const piece of this.pieces) this.group.add(...piece.faces, piece.edges);
    this.modes = new Map(); // by coat
    this.looksThrough = true;
    this.shade();
    this.box = this.boxOf((piece) => piece.coat !== "ground");
    this.gapFaces = new Map();
    for (const { extras, meshes } of nodes) {
      if (extras.gap !== undefined) this.gapFaces.set(extras.gap, facesOf(meshes[0]));
    }
  }

  boxOf(wanted) {
    const box = new Box3();
    for (const piece of this.pieces.filter(wanted)) {
      for (const mesh of piece.faces) {
        mesh.geometry.computeBoundingBox();
        box.union(mesh.geometry.boundingBox);
      }
    }
    return box.isEmpty() ? new Box3(new Vector3(-1, 0, -1), new Vector3(1, 1, 1)) : box;
  }

  /** "shown", "faint" or "hidden". */
  setMode(coat, mode) {
    this.modes.set(coat, mode);
    this.shade();
  }

  setLooksThrough(looksThrough) {
    this.looksThrough = looksThrough;
    this.shade();
  }

  /** Walls that get faint by themselves still throw shadows, so that the light stays as one goes round; roofs and ceilings do not, or
   * the rooms would lie in the dark. */
  shade() {
    for (const piece of this.pieces) {
      const lid = this.looksThrough && piece.facing !== null && piece.facing.y > 0.5;
      const casts = !lid && (this.modes.get(piece.coat) || "shown") === "shown";
      for (const mesh of piece.faces) mesh.castShadow = casts && mesh.userData.opacity === 1;
    }
  }

  /** Says for each piece how far it is to be shown to an eye in that direction, from the house. */
  aim(toEye) {
    for (const piece of this.pieces) {
      const mode = this.modes.get(piece.coat) || "shown";
      const before = this.looksThrough && piece.facing !== null && piece.facing.dot(toEye) > 0.12;
      piece.wanted = mode === "hidden" ? 0 : mode === "faint" || before ? 0.5 : 1;
    }
  }

  /** Goes on toward what is wanted; `seconds` since the last time. Says whether there is more to do. */
  advance(seconds) {
    let moving = false;
    for (const piece of this.pieces) {
      if (piece.shown === piece.wanted) continue;
      const step = seconds / FADES_IN, away = piece.wanted - piece.shown;
      piece.shown = Math.abs(away) <= step ? piece.wanted : piece.shown + Math.sign(away) * step;
      piece.apply();
      moving = moving || piece.shown !== piece.wanted;
    }
    return moving;
  }

  /** Meshes that hide what is behind them. */
  solids() {
    return this.pieces.filter((piece) => piece.shown > 0.99).flatMap((piece) => piece.faces);
  }

  /** The faces of a gap, to be seen through everything; nothing where it has none. */
  glowOf(gap, color) {
    const geometry = this.gapFaces.get(gap);
    if (!geometry) return null;
    const glow = new Group();
    for (const [opacity, depthTest] of [[0.95, true], [0.4, false]]) {
      const material = new MeshBasicMaterial({ color, opacity, transparent: true, depthTest, depthWrite: false, side: 2, polygonOffset: true,
        polygonOffsetFactor: -2, polygonOffsetUnits: -2 });
      const mesh = new Mesh(geometry, material);
      mesh.renderOrder = 6;
      glow.add(mesh);
    }
    return glow;
  }
}
