// SPDX-License-Identifier: GPL-3.0-or-later
// Reads the model of a page as page_model.h describes it: binary glTF with whole numbers for points, packed with gzip.
import { gunzipSync } from "fflate";

const SIZE_OF = { 5123: 2, 5125: 4 };

function bytesOf(base64) {
  const text = atob(base64);
  const bytes = new Uint8Array(text.length);
  for (let i = 0; i < text.length; ++i) bytes[i] = text.charCodeAt(i);
  return bytes;
}

/** [{extras, meshes: [{color, opacity, points, corners}]}]; points in meters, y up, corners by three. */
export function readModel(base64) {
  const bytes = gunzipSync(bytesOf(base64));
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const jsonBytes = view.getUint32(12, true);
  const json = JSON.parse(new TextDecoder().decode(bytes.subarray(20, 20 + jsonBytes)));
  if (!json.meshes) return [];
  const binary = 20 + jsonBytes + 8;
  const [root, ...nodes] = json.nodes;

  function start(accessor) {
    return binary + (json.bufferViews[accessor.bufferView].byteOffset || 0) + (accessor.byteOffset || 0);
  }
  function pointsOf(accessor) {
    const points = new Float32Array(3 * accessor.count);
    const stride = json.bufferViews[accessor.bufferView].byteStride;
    for (let i = 0; i < accessor.count; ++i) {
      for (let axis = 0; axis < 3; ++axis) {
        const whole = view.getUint16(start(accessor) + i * stride + 2 * axis, true);
        points[3 * i + axis] = root.translation[axis] + root.scale[axis] * whole;
      }
    }
    return points;
  }
  function cornersOf(accessor) {
    const size = SIZE_OF[accessor.componentType];
    const corners = new Uint32Array(accessor.count);
    const from = start(accessor);
    for (let i = 0; i < accessor.count; ++i) {
      corners[i] = size === 2 ? view.getUint16(from + 2 * i, true) : view.getUint32(from + 4 * i, true);
    }
    return corners;
  }
  return nodes.map((node) => ({
    extras: node.extras,
    meshes: json.meshes[node.mesh].primitives.map((primitive) => {
      const color = primitive.material === undefined ? [1, 1, 1, 1] : json.materials[primitive.material].pbrMetallicRoughness.baseColorFactor;
      return {
        color: color.slice(0, 3),
        opacity: color[3],
        points: pointsOf(json.accessors[primitive.attributes.POSITION]),
        corners: cornersOf(json.accessors[primitive.indices]),
      };
    }),
  }));
}
