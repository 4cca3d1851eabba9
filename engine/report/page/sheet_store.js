// SPDX-License-Identifier: GPL-3.0-or-later
// What was written, kept on this device where the browser allows that. Each job has its own.

/** 32 bits of FNV-1a: two jobs are told apart by their text. */
function digest(text) {
  let hash = 0x811c9dc5;
  for (let i = 0; i < text.length; ++i) hash = Math.imul(hash ^ text.charCodeAt(i), 0x01000193);
  return (hash >>> 0).toString(16);
}

export class Store {
  constructor(job) {
    this.key = `seamward-sheet-${job.length}-${digest(job)}`;
    this.values = {};
    this.keeps = true;
    try {
      this.values = JSON.parse(localStorage.getItem(this.key)) || {};
    } catch {
      this.keeps = false;
    }
  }

  get(name, otherwise) {
    return Object.hasOwn(this.values, name) ? this.values[name] : otherwise;
  }

  set(name, value) {
    this.values[name] = value;
    this.write(() => localStorage.setItem(this.key, JSON.stringify(this.values)));
  }

  clear() {
    this.values = {};
    this.write(() => localStorage.removeItem(this.key));
  }

  write(action) {
    try {
      action();
      this.keeps = true;
    } catch {
      this.keeps = false;
    }
  }
}
