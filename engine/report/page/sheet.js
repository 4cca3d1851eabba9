// SPDX-License-Identifier: GPL-3.0-or-later
// A survey sheet that is filled in on a phone and hands back a job file. Nothing leaves the device.
import { putHead, putMeasure, putNewGap } from "./sheet_job.js";
import { lengthOf } from "./sheet_lengths.js";
import { Store } from "./sheet_store.js";
import { byId, data, element, say } from "./words.js";

const LONGEST = 4000; // letters of a text in a job file
const FIELDS = ["width", "plus_minus", "second", "photo", "note"];
const NEW_BOXES = ["name", "width", "length", "around", "plus_minus", "photo", "note"];
const HEAD = ["surveyor", "day", "second"];

const store = new Store(data.job);
let added = store.get("added", []);

/** What is wrong with what stands in boxes; each is told with its box. */
class Problems {
  constructor() {
    this.list = [];
    for (const box of document.querySelectorAll("[aria-invalid]")) box.removeAttribute("aria-invalid");
  }

  add(box, text) {
    box.setAttribute("aria-invalid", "true");
    this.list.push({ box, text });
  }

  length(box, label) {
    const written = box.value.trim();
    if (!written) return null;
    const unit = document.querySelector("input[name=unit]:checked").value;
    const length = lengthOf(written, unit);
    if (!length) this.add(box, say("no_length", label, written));
    return length;
  }

  /** `many`: it may have several lines. */
  text(box, label, many) {
    const written = box.value.trim();
    if (written.length > LONGEST || /[\u0000-\u0008\u000b\u000c\u000e-\u001f\u007f]/.test(written) || (!many && /[\t\r\n]/.test(written)))
      this.add(box, say("one_line", label));
    return written;
  }

  /** The plus or minus of a box, else the usual one. */
  plusMinus(box, label) {
    const own = this.length(box, label);
    if (own || box.value.trim()) return own;
    const usual = this.length(byId("usual-plus-minus"), say("plus_minus"));
    if (!usual) this.add(box, say("no_plus_minus", label));
    return usual;
  }

  show(place) {
    place.replaceChildren();
    if (this.list.length === 0) return;
    place.append(element("p", {}, say("problems", this.list.length)));
    const entries = element("ul", {});
    for (const { box, text } of this.list) {
      const entry = element("li", {}), link = element("a", { href: `#${box.id}` }, text);
      link.addEventListener("click", (event) => {
        event.preventDefault();
        box.focus();
        box.scrollIntoView({ block: "center" });
      });
      entry.append(link);
      entries.append(entry);
    }
    place.append(entries);
  }
}

const rows = [...document.querySelectorAll("tr[data-gap]")].map((row) => ({
  gap: data.gaps[row.dataset.gap], name: row.querySelector(".gap-name").textContent, row, boxes: {},
}));

function keepOf(box) {
  box.value = store.get(box.id, "");
  box.addEventListener("input", () => {
    store.set(box.id, box.value);
    box.removeAttribute("aria-invalid");
    tell();
  });
}

function box(id, label) {
  return element("input", { id, type: "text", autocomplete: "off", autocapitalize: "off", "aria-label": label });
}

function makeBoxes() {
  for (const { name, row, boxes } of rows) {
    for (const cell of row.querySelectorAll("td[data-field]")) {
      const field = cell.dataset.field;
      boxes[field] = box(`gap-${row.dataset.gap}-${field}`, say("at", name, say(field)));
      cell.append(boxes[field]);
      keepOf(boxes[field]);
    }
  }
  [...document.querySelectorAll("#who .blank")].forEach((blank, i) => {
    const line = box(`who-${HEAD[i]}`, blank.textContent);
    blank.append(line);
    keepOf(line);
  });
  for (const name of NEW_BOXES) keepOf(byId(`new-${name}`));
  keepOf(byId("usual-plus-minus"));
}

function tell() {
  const measured = rows.filter(({ boxes }) => boxes.width && boxes.width.value.trim()).length;
  byId("kept").textContent = say(store.keeps ? "kept" : "not_kept", measured, rows.length, added.length);
}

/** The texts of a row; problems are noted. */
function measureOf({ name, boxes }, problems) {
  const label = (field) => say("at", name, say(field));
  const found = {};
  if (boxes.width) {
    const width = problems.length(boxes.width, label("width"));
    const second = boxes.second ? problems.length(boxes.second, label("second")) : null;
    if (width) {
      const plusMinus = problems.plusMinus(boxes.plus_minus, label("plus_minus"));
      if (plusMinus) Object.assign(found, { width: width.text, plusMinus: plusMinus.text });
      if (second && plusMinus && Math.abs(second.mm - width.mm) > plusMinus.mm + 1e-9) problems.add(boxes.second, say("readings_differ", name));
    } else if (!boxes.width.value.trim() && (boxes.plus_minus.value.trim() || second)) {
      problems.add(boxes.width, say("no_width", name));
    }
    if (second) found.second = second.text;
  }
  found.photo = problems.text(boxes.photo, label("photo"));
  found.note = problems.text(boxes.note, label("note"), true);
  return found;
}

function showShape() {
  const shape = byId("new-shape").value;
  byId("new-length-field").hidden = shape !== "slot";
  byId("new-around-field").hidden = shape !== "ring";
}

function readNewGap(problems) {
  const labelOf = (name) => document.querySelector(`label[for="new-${name}"]`).textContent;
  const length = (name) => {
    const read = problems.length(byId(`new-${name}`), labelOf(name));
    if (!read && !byId(`new-${name}`).value.trim()) problems.add(byId(`new-${name}`), say("no_width", labelOf(name)));
    return read ? read.text : "";
  };
  const made = { name: problems.text(byId("new-name"), labelOf("name")), shape: byId("new-shape").value, duty: byId("new-duty").value };
  if (!made.name) problems.add(byId("new-name"), say("no_name"));
  const [from, into] = ["from", "into"].map((end) => Number(byId(`new-${end}`).value));
  made.between = [data.spaces[from], data.spaces[into]];
  if (from === into) problems.add(byId("new-into"), say("same_space"));
  made.width = length("width");
  if (made.shape === "slot") made.length = length("length");
  if (made.shape === "ring") made.around = length("around");
  const plusMinus = problems.plusMinus(byId("new-plus_minus"), labelOf("plus_minus"));
  made.plusMinus = plusMinus ? plusMinus.text : "";
  made.photo = problems.text(byId("new-photo"), labelOf("photo"));
  made.note = problems.text(byId("new-note"), labelOf("note"), true);
  return made;
}

function showAdded() {
  const entries = byId("added-gaps");
  entries.replaceChildren();
  added.forEach((gap, i) => {
    const entry = element("li", {}, `${gap.name}: ${gap.width} `);
    const button = element("button", { type: "button" }, say("remove", gap.name));
    button.addEventListener("click", () => setAdded(added.filter((_, at) => at !== i)));
    entry.append(button);
    entries.append(entry);
  });
  tell();
}

function setAdded(gaps) {
  added = gaps;
  store.set("added", added);
  showAdded();
}

function addGap() {
  const problems = new Problems();
  const made = readNewGap(problems);
  problems.show(byId("add-problems"));
  if (problems.list.length > 0) return problems.list[0].box.focus();
  for (const name of NEW_BOXES) {
    byId(`new-${name}`).value = "";
    store.set(`new-${name}`, "");
  }
  setAdded([...added, made]);
  byId("new-name").focus();
}

/** The job with all that was written, or null when something is wrong. */
function filledIn() {
  const problems = new Problems();
  const job = JSON.parse(data.job);
  for (const row of rows) {
    const found = measureOf(row, problems);
    if (Object.values(found).some(Boolean)) putMeasure(job, row.gap, found, say);
  }
  const taken = new Set(data.gaps.map(({ id }) => id));
  for (const made of added) putNewGap(job, made, taken, say);
  if (NEW_BOXES.some((name) => byId(`new-${name}`).value.trim())) problems.add(byId("new-name"), say("not_added"));
  const [surveyor, day, second] = HEAD.map((name) => problems.text(byId(`who-${name}`), byId(`who-${name}`).getAttribute("aria-label")));
  putHead(job, { surveyor, day, second }, say);
  problems.show(byId("problems"));
  return problems.list.length > 0 ? null : job;
}

function save() {
  const job = filledIn();
  if (!job) return;
  const text = `${JSON.stringify(job, null, 2)}\n`, name = `${data.name}-survey.json`;
  byId("job-text").value = text;
  const link = element("a", { href: URL.createObjectURL(new Blob([text], { type: "application/json" })), download: name });
  document.body.append(link);
  link.click();
  link.remove();
  setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  byId("problems").append(element("p", { class: "good" }, say("saved", name)));
}

function clear() {
  for (const one of document.querySelectorAll("main input[type=text]")) one.value = "";
  store.clear();
  setAdded([]);
  byId("problems").replaceChildren();
  byId("clear").closest("details").open = false;
}

document.documentElement.classList.add("can-fill-in");
for (const id of ["fill-in", "new-gap", "hand-back"]) byId(id).hidden = false;
makeBoxes();
const unitOfBefore = store.get("unit", document.querySelector("input[name=unit]:checked").value);
for (const unit of document.querySelectorAll("input[name=unit]")) {
  unit.checked = unit.value === unitOfBefore;
  unit.addEventListener("change", () => store.set("unit", unit.value));
}
byId("new-shape").addEventListener("change", showShape);
byId("add-gap").addEventListener("click", addGap);
byId("save").addEventListener("click", save);
byId("clear").addEventListener("click", clear);
showShape();
showAdded();
