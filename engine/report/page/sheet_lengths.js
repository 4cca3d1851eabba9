// SPDX-License-Identifier: GPL-3.0-or-later
// Lengths as job files have them.

const MILLIMETERS = { mm: 1, cm: 10, m: 1000, in: 25.4, '"': 25.4, ft: 304.8, "'": 304.8 };
const LARGEST = 1e8; // mm: the 100 km of job files
const PIECE = /^(?:(?:(\d+)(?:-|\s+))?(\d+)\/(\d+)|(\d+(?:\.\d*)?|\.\d+))\s*(mm|cm|m|in|ft|["'])?\s*/;

/**
 * What somebody wrote, as `{ text, mm }`: `3/64`, `1 1/2 in`, `12 ft 6 in`, `0,9 mm`; a number without a unit has `unit`. Null: it is
 * no length.
 */
export function lengthOf(written, unit) {
  // Fractions and quotes as phones write them; a comma between digits is the point of other languages.
  let rest = written.normalize("NFKC").replace(/\u2044/g, "/").replace(/[\u201c\u201d\u2033]/g, '"').replace(/[\u2018\u2019\u2032]/g, "'")
    .replace(/(\d),(\d)/g, "$1.$2").trim();
  if (/\d\.\d+\.\d/.test(rest)) return null;
  let mm = 0, last = Infinity;
  const pieces = [];
  while (rest) {
    const found = PIECE.exec(rest);
    if (!found) return null;
    const [all, whole, over, under, decimal, stated] = found;
    if (!stated && (pieces.length > 0 || all.length < rest.length)) return null;
    const size = MILLIMETERS[stated || unit];
    if (size >= last || (under !== undefined && Number(under) === 0)) return null;
    last = size;
    mm += size * (decimal !== undefined ? Number(decimal) : Number(whole || 0) + Number(over) / Number(under));
    const number = decimal !== undefined ? decimal : `${whole ? `${whole} ` : ""}${over}/${under}`;
    pieces.push(`${number} ${stated || unit}`);
    rest = rest.slice(all.length);
  }
  return pieces.length > 0 && mm <= LARGEST ? { text: pieces.join(" "), mm } : null;
}
