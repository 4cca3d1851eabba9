// SPDX-License-Identifier: GPL-3.0-or-later
// Triangles and sharp edges as three.js draws them.
import { BufferAttribute, BufferGeometry } from "three";

const SHARP = Math.cos((25 * Math.PI) / 180);
const SHORT = 0.03; // meters: rims of pipes and holes are not drawn, from afar they are a blot

function normalsOf({ points, corners }) {
  const normals = new Float32Array(corners.length);
  for (let t = 0; t < corners.length; t += 3) {
    const [a, b, c] = [3 * corners[t], 3 * corners[t + 1], 3 * corners[t + 2]];
    const u = [points[b] - points[a], points[b + 1] - points[a + 1], points[b + 2] - points[a + 2]];
    const v = [points[c] - points[a], points[c + 1] - points[a + 1], points[c + 2] - points[a + 2]];
    const n = [u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]];
    const size = Math.hypot(...n) || 1;
    for (let k = 0; k < 3; ++k) normals[t + k] = n[k] / size;
  }
  return normals;
}

/** Each triangle with corners of its own, so that it is shaded flat. */
export function facesOf(mesh) {
  const { points, corners } = mesh;
  const normals = normalsOf(mesh);
  const at = new Float32Array(3 * corners.length);
  const facing = new Int8Array(4 * corners.length);
  for (let i = 0; i < corners.length; ++i) {
    const triangle = i - (i % 3);
    for (let k = 0; k < 3; ++k) {
      at[3 * i + k] = points[3 * corners[i] + k];
      facing[4 * i + k] = Math.round(127 * normals[triangle + k]);
    }
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(at, 3));
  geometry.setAttribute("normal", new BufferAttribute(facing, 4, true));
  return geometry;
}

/** The edges where two faces of a mesh meet at more than 25 degrees, or where there is one only. */
export function edgesOf(meshes) {
  const ends = [];
  for (const mesh of meshes) {
    const { points, corners } = mesh;
    const normals = normalsOf(mesh);
    const count = points.length / 3;
    const first = new Map();
    const put = (a, b) => {
      const step = [0, 1, 2].map((k) => points[3 * b + k] - points[3 * a + k]);
      if (Math.hypot(...step) < SHORT) return;
      for (const corner of [a, b]) ends.push(points[3 * corner], points[3 * corner + 1], points[3 * corner + 2]);
    };
    for (let t = 0; t < corners.length; t += 3) {
      for (let k = 0; k < 3; ++k) {
        const a = corners[t + k], b = corners[t + ((k + 1) % 3)];
        const key = Math.min(a, b) * count + Math.max(a, b);
        const other = first.get(key);
        if (other === undefined) first.set(key, t);
        if (other === undefined || other < 0) continue;
        const same = normals[t] * normals[other] + normals[t + 1] * normals[other + 1] + normals[t + 2] * normals[other + 2];
        if (same < SHARP) put(a, b);
        first.set(key, -1); // both of its faces are known
      }
    }
    for (const [key, t] of first) {
      if (t >= 0) put(Math.floor(key / count), key % count);
    }
  }
  const geometry = new BufferGeometry();
  geometry.setAttribute("position", new BufferAttribute(new Float32Array(ends), 3));
  return geometry;
}
