// SPDX-License-Identifier: GPL-3.0-or-later
// node build.mjs MODULES OUTPUT: packs the scripts and the style sheets of pages and writes them as C++ into OUTPUT. MODULES is the
// folder node_modules with what package-lock.json names.
import { createHash } from "node:crypto";
import { readdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";

const here = dirname(fileURLToPath(import.meta.url));
const [modules, output] = process.argv.slice(2);
const esbuild = createRequire(join(modules, "x.js"))("esbuild");

function packed(entry) {
  const result = esbuild.buildSync({
    entryPoints: [join(here, entry)], bundle: true, minify: true, write: false, format: "iife", target: ["es2020"],
    nodePaths: [modules], legalComments: "inline", charset: "ascii", logLevel: "warning",
  });
  return result.outputFiles[0].text;
}

/// As C++ raw strings: compilers take some 64 kB at a time.
function quoted(text) {
  const pieces = [];
  for (let i = 0; i < text.length; i += 8000) pieces.push(`R"seamward(${text.slice(i, i + 8000)})seamward"`);
  return pieces.join("\n");
}

function asset(name, text) {
  // Within a page, a script or style ends at its closing tag wherever that stands.
  if (/<\/(script|style)|<!--/i.test(text)) throw new Error(`${name} would end its element early`);
  const digest = createHash("sha256").update(text, "utf8").digest("base64");
  return `PageAsset ${name}() {\n    static constexpr char text[] =\n${quoted(text)};\n    return {{text, sizeof text - 1}, "sha256-${digest}"};\n}\n`;
}

function licensed(name) {
  return `/*! ${name}\n${readFileSync(join(modules, name, "LICENSE"), "utf8").trim()}\n*/\n`;
}

function minified(css) {
  return esbuild.transformSync(css, { loader: "css", minify: true }).code;
}

function paper(size) {
  return minified(readFileSync(join(here, "paper.css"), "utf8").replaceAll("SIZE", size));
}

const sheets = readdirSync(here).filter((file) => file.endsWith(".css") && file !== "paper.css").sort();
const style = minified(sheets.map((file) => readFileSync(join(here, file), "utf8")).join("\n"));
const house = licensed("three") + licensed("fflate") + packed("house.js");
const made = `// Made by build.mjs.\n#include "report/page_assets.h"\n\nnamespace seamward {\n\n${asset("page_style", style)}\n${asset("letter_style", paper("letter"))}\n${asset("a4_style", paper("A4"))}\n${asset(
  "house_script", house)}\n${asset("sheet_script", packed("sheet.js"))}\n}  // namespace seamward\n`;
writeFileSync(`${output}.part`, made);
renameSync(`${output}.part`, output);
