// SPDX-License-Identifier: GPL-3.0-or-later
// Colors of what is drawn over the house. They stay apart for eyes that do not tell red from green: orange, blue, dark teal, and each
// has a shape of its own as well.
export const WAY = "#c8500a";
export const WAY_GLOW = "#ff9d4d";
export const CLOSING = "#0b4f9e";
export const DONE = "#0a6b57";
export const OPEN = "#4a4f57";
export const CHOSEN = "#ffcf33";
export const INK = "#1d2126";
export const PAPER = "#ffffff";
