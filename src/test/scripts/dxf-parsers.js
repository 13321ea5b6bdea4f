// Prints what two JavaScript DXF readers find in a file: npm install dxf-parser dxf
const fs = require('fs');
const Parser = require('dxf-parser');
const { Helper } = require('dxf');

const count = (entities) =>
  entities.reduce((kinds, e) => ({ ...kinds, [e.type]: (kinds[e.type] || 0) + 1 }), {});

for (const name of process.argv.slice(2)) {
  const text = fs.readFileSync(name, 'latin1');
  const parsed = new (Parser.default || Parser)().parseSync(text);
  console.log(name);
  console.log('  dxf-parser', count(parsed.entities), Object.keys(parsed.tables.layer.layers));
  console.log('  dxf       ', count(new Helper(text).denormalised));
}
