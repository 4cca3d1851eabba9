// SPDX-License-Identifier: GPL-3.0-or-later
// node validate.js FILE... : what the glTF validator says of each file. It is looked for in node_modules of the working folder.
// Exit code 1 when there is an error in any file, 77 when there is no validator.
'use strict';
const fs = require('fs');
const path = require('path');

let validator;
try {
  validator = require(path.join(process.cwd(), 'node_modules', 'gltf-validator'));
} catch (error) {
  console.log(`no glTF validator: ${error.message.split('\n')[0]}`);
  process.exit(77);
}

const severities = ['error', 'warning', 'information', 'hint'];

async function errorsIn(file) {
  const bytes = new Uint8Array(fs.readFileSync(file));
  const report = await validator.validateBytes(bytes, { uri: path.basename(file), format: 'glb', maxIssues: 0, writeTimestamp: false });
  for (const message of report.issues.messages) {
    console.log(`${path.basename(file)}: ${severities[message.severity]}: ${message.code} ${message.message} ${message.pointer || ''}`);
  }
  const { totalVertexCount, totalTriangleCount } = report.info;
  console.log(`${path.basename(file)}: ${report.issues.numErrors} errors, ${report.issues.numWarnings} warnings, ` +
    `${totalVertexCount} points, ${totalTriangleCount} triangles`);
  return report.issues.numErrors;
}

(async () => {
  let errors = 0;
  for (const file of process.argv.slice(2)) {
    try {
      errors += await errorsIn(file);
    } catch (error) {
      console.log(`${path.basename(file)}: error: ${error}`);
      errors += 1;
    }
  }
  process.exitCode = errors > 0 ? 1 : 0;
})();
