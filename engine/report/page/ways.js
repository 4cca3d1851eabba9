// SPDX-License-Identifier: GPL-3.0-or-later
// The ways in as lines in the air of the house: glowing where they are seen, dashed where something stands before them.
import { GreaterDepth, Group, LessEqualDepth, Vector3 } from "three";
import { Line2 } from "three/examples/jsm/lines/Line2.js";
import { LineGeometry } from "three/examples/jsm/lines/LineGeometry.js";
import { LineMaterial } from "three/examples/jsm/lines/LineMaterial.js";
import { WAY, WAY_GLOW } from "./palette.js";

/** From whole millimeters of the house, z up, to meters of the scene, y up. */
export function toScene([x, y, z]) {
  return new Vector3(x / 1000, z / 1000, -y / 1000);
}

/** `widths`: in pixels of the page. */
function lineOf(geometry, color, width, opacity, hidden) {
  const material = new LineMaterial({
    color, linewidth: width, transparent: true, opacity, depthWrite: false, depthFunc: hidden ? GreaterDepth : LessEqualDepth,
    dashed: hidden, dashSize: 0.14, gapSize: 0.12,
  });
  const line = new Line2(geometry, material);
  line.computeLineDistances();
  line.userData.width = width;
  line.userData.opacity = opacity;
  line.renderOrder = hidden ? 3 : 4;
  return line;
}

export class Ways {
  constructor(ways) {
    this.group = new Group();
    this.lines = ways.map((way) => {
      const points = way.line.map(toScene);
      const group = new Group();
      if (points.length > 1) {
        const geometry = new LineGeometry();
        geometry.setPositions(points.flatMap((p) => [p.x, p.y, p.z]));
        group.add(lineOf(geometry, WAY_GLOW, 7, 0.3, false), lineOf(geometry, WAY, 2.4, 1, false), lineOf(geometry, WAY, 1.8, 0.85, true));
      }
      this.group.add(group);
      return { points, group };
    });
  }

  /** `open`: for each way whether it is shown; `chosen`: position of the one that stands out, or -1. */
  show(open, chosen) {
    this.lines.forEach(({ group }, i) => {
      group.visible = open[i];
      for (const line of group.children) {
        const aside = chosen >= 0 && i !== chosen;
        line.material.linewidth = line.userData.width * (i === chosen ? 1.9 : 1);
        line.material.opacity = line.userData.opacity * (aside ? 0.18 : 1);
      }
    });
  }
}
