// Reads a .glb and the .obj of the same house with three.js and compares them: npm install three
import fs from 'fs';
import path from 'path';
import { pathToFileURL } from 'url';

const at = path.join(process.env.NODE_PATH, 'three');
const load = (file) => import(pathToFileURL(path.join(at, file)).href);
globalThis.self ??= globalThis;
const { Box3 } = await load('build/three.module.js');
const { GLTFLoader } = await load('examples/jsm/loaders/GLTFLoader.js');
const { OBJLoader } = await load('examples/jsm/loaders/OBJLoader.js');

const [glb, obj] = process.argv.slice(2);
const bytes = fs.readFileSync(glb);
const scene = await new Promise((done, failed) =>
  new GLTFLoader().parse(
    bytes.buffer.slice(bytes.byteOffset, bytes.byteOffset + bytes.length), '', (g) => done(g.scene), failed));
const other = new OBJLoader().parse(fs.readFileSync(obj, 'utf8'));
const boxes = [scene, other].map((o) => new Box3().setFromObject(o));
const off = Math.max(boxes[0].min.distanceTo(boxes[1].min), boxes[0].max.distanceTo(boxes[1].max));
const size = boxes[0].max.clone().sub(boxes[0].min).toArray().map((m) => m.toFixed(3));
console.log(`${size.join(' x ')} m, glTF and OBJ ${off.toExponential(1)} m apart`);
process.exit(off < 1e-5 ? 0 : 1);
