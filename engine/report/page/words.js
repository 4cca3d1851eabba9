// SPDX-License-Identifier: GPL-3.0-or-later
// What the page was told, and how it says it. No sentence stands in a script.

export const data = JSON.parse(document.getElementById("report-data").textContent);

/** The pattern with its parts put in: `{}` in turn, `{1}` by position. */
function filledIn(pattern, parts) {
  let next = 0;
  return pattern.replace(/\{(\d*)\}/g, (whole, position) => String(parts[position ? position - 1 : next++]));
}

export function say(word, ...parts) {
  return filledIn(data.words[word], parts);
}

export function byId(id) {
  return document.getElementById(id);
}

/** An element with a text in it, which is never read as markup. */
export function element(name, attributes, text) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
  if (text) made.textContent = text;
  return made;
}
