// SPDX-License-Identifier: GPL-3.0-or-later
// Wakes a report: the house in 3D where the browser can draw it, and the chart of prices.
import { wakeLadder } from "./ladder.js";
import { tieLists } from "./lists.js";
import { steer } from "./panel.js";
import { Picture } from "./picture.js";
import { byId, data } from "./words.js";

function wakeHouse() {
  const figure = byId("house");
  if (!figure || !data.model) return;
  figure.hidden = false;
  const picture = Picture.on(byId("house-picture"), byId("house-marks"));
  figure.hidden = picture === null;
  if (picture === null) return;
  byId("no-house").hidden = true;
  steer(picture, tieLists());
}

wakeHouse();
wakeLadder();
