// Prints what the format's own validator says of each model file, a line of JSON each:
// node check.cjs FILE... ; ends with 1 if a file has an error or a warning.
'use strict';
const fs = require('fs');
const validator = require('gltf-validator');

(async () => {
  let bad = false;
  for (const file of process.argv.slice(2)) {
    const report = await validator.validateBytes(new Uint8Array(fs.readFileSync(file)), { maxIssues: 0 });
    const { numErrors, numWarnings, numInfos, messages } = report.issues;
    bad = bad || numErrors + numWarnings > 0;
    console.log(JSON.stringify({
      errors: numErrors,
      warnings: numWarnings,
      infos: numInfos,
      draws: report.info.drawCallCount,
      triangles: report.info.totalTriangleCount,
      first: messages.slice(0, 3).map((m) => `${m.code} ${m.pointer}: ${m.message}`),
    }));
  }
  process.exit(bad ? 1 : 0);
})();
