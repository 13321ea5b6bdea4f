// Has the validator of Khronos look at files: npm install gltf-validator
const fs = require('fs');
const validator = require('gltf-validator');

(async () => {
  let failed = false;
  for (const name of process.argv.slice(2)) {
    const report = await validator.validateBytes(new Uint8Array(fs.readFileSync(name)));
    const { numErrors, numWarnings, messages } = report.issues;
    messages.slice(0, 5).forEach((m) => console.log(`  ${m.code} ${m.pointer} ${m.message}`));
    failed = failed || numErrors > 0 || numWarnings > 0;
    console.log(
      `${numErrors} errors, ${numWarnings} warnings, ${report.info.totalTriangleCount} triangles`);
  }
  process.exit(failed ? 1 : 0);
})();
