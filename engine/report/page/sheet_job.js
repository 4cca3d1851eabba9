// SPDX-License-Identifier: GPL-3.0-or-later
// Puts what was measured into a job. Whatever is not touched stays as it is.

/** The key of the clear width of a shape. */
const WIDTH_KEYS = { slot: "width", ring: "width", hole: "diameter", mesh: "opening" };

function list(job, key) {
  if (!Array.isArray(job[key])) job[key] = [];
  return job[key];
}

/** The job's entry for a gap; made where the job says nothing yet of a gap of its house. */
function entryOf(job, gap) {
  const entries = list(job, "gaps");
  let entry = entries.find(({ id }) => String(id).trim() === gap.id);
  if (!entry) {
    entry = { id: gap.id };
    entries.push(entry);
  }
  return entry;
}

function evidence(plusMinus) {
  return { how: "measured", plus_minus: plusMinus };
}

function addNote(entry, text) {
  entry.note = entry.note ? `${entry.note}\n${text}` : text;
}

/** What has a dot and no blank is a file; else it is a number that goes into the note. */
function addPhoto(entry, photo, say) {
  if (/^\S+\.\w+$/.test(photo)) entry.photo = photo;
  else addNote(entry, say("photo_number", photo));
}

/** `found`: { width, plusMinus, second, photo, note }, texts of which any may be missing. */
export function putMeasure(job, gap, found, say) {
  const entry = entryOf(job, gap);
  if (found.width) {
    entry[gap.shape] = { ...entry[gap.shape], [WIDTH_KEYS[gap.shape]]: found.width };
    entry.evidence = evidence(found.plusMinus);
  }
  if (found.second) addNote(entry, say("second_reader", found.second));
  if (found.photo) addPhoto(entry, found.photo, say);
  if (found.note) addNote(entry, found.note);
}

/** An id from a name that nothing has yet. */
function newId(name, taken) {
  const plain = name.normalize("NFD").replace(/[\u0300-\u036f]/g, "").toLowerCase().replace(/[^a-z0-9]+/g, "-").replace(/^-+|-+$/g, "");
  const start = /^[a-z]/.test(plain) ? plain.slice(0, 60) : `gap-${plain}`.slice(0, 60).replace(/-$/, "");
  let id = start;
  for (let i = 2; taken.has(id); ++i) id = `${start}-${i}`;
  return id;
}

/** `made`: { name, between, shape, width, length, around, plusMinus, duty, photo, note }. */
export function putNewGap(job, made, taken, say) {
  const entry = { id: newId(made.name, taken), name: made.name, between: made.between };
  entry[made.shape] = { [WIDTH_KEYS[made.shape]]: made.width };
  if (made.shape === "slot") entry.slot.length = made.length;
  if (made.shape === "ring") entry.ring.around = made.around;
  if (made.duty !== "none") entry.duty = made.duty;
  entry.evidence = evidence(made.plusMinus);
  if (made.photo) addPhoto(entry, made.photo, say);
  if (made.note) addNote(entry, made.note);
  taken.add(entry.id);
  list(job, "gaps").push(entry);
}

/** Who looked, and when. */
export function putHead(job, { surveyor, day, second }, say) {
  if (!surveyor && !day && !second) return;
  if (!job.job) job.job = {};
  if (surveyor) job.job.surveyor = surveyor;
  if (day) job.job.surveyed = day;
  if (!second) return;
  const line = say("second_reader", second);
  job.job.notes = job.job.notes ? `${job.job.notes}\n${line}` : line;
}
