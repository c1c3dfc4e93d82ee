// count-dxf.mjs FILE.dxf ... - what two npm readers (dxf 5.3.1, dxf-parser 1.1.2) find in DXF files, as JSON:
// {file: {reader: {entities: {TYPE: n}, layers: [..], box: [x0, y0, x1, y1]}}}. The box is of lines and arcs, without text; the readers only
// read, the box is computed here. Bulge b over a chord d: centre = middle + left of chord * (1 - b^2) / (4 b), radius d (1 + b^2) / (4 |b|).
import { readFileSync } from 'node:fs';
import DxfParser from 'dxf-parser';
import { Helper } from 'dxf';

const box = () => [Infinity, Infinity, -Infinity, -Infinity];
const grow = (b, x, y) => { b[0] = Math.min(b[0], x); b[1] = Math.min(b[1], y); b[2] = Math.max(b[2], x); b[3] = Math.max(b[3], y); };

// From angle a counter-clockwise to angle e, radians.
function arc(b, cx, cy, r, a, e) {
  const turn = 2 * Math.PI;
  while (e < a) e += turn;
  for (const t of [a, e]) grow(b, cx + r * Math.cos(t), cy + r * Math.sin(t));
  for (let q = Math.ceil(a / (Math.PI / 2)); q * Math.PI / 2 <= e; q++) {
    grow(b, cx + r * Math.round(Math.cos(q * Math.PI / 2)), cy + r * Math.round(Math.sin(q * Math.PI / 2)));
  }
}

function chain(b, points, closed) {
  const last = closed ? points.length : points.length - 1;
  for (let i = 0; i < last; i++) {
    const p = points[i], q = points[(i + 1) % points.length], k = p.bulge || 0;
    grow(b, p.x, p.y);
    grow(b, q.x, q.y);
    if (k !== 0) {
      const dx = q.x - p.x, dy = q.y - p.y, h = (1 - k * k) / (4 * k);
      const cx = (p.x + q.x) / 2 - dy * h, cy = (p.y + q.y) / 2 + dx * h, r = Math.hypot(p.x - cx, p.y - cy);
      const [from, to] = k > 0 ? [p, q] : [q, p];
      arc(b, cx, cy, r, Math.atan2(from.y - cy, from.x - cx), Math.atan2(to.y - cy, to.x - cx));
    }
  }
}

function summary(entities, shape) {
  const b = box(), counts = {}, layers = new Set();
  for (const e of entities) {
    counts[e.type] = (counts[e.type] || 0) + 1;
    layers.add(e.layer);
    shape(b, e);
  }
  return { entities: counts, layers: [...layers].sort(), box: b };
}

// dxf-parser: angles in radians, `shape` is the closed flag.
const parsed = (b, e) => {
  if (e.type === 'LINE') chain(b, e.vertices, false);
  else if (e.type === 'CIRCLE') arc(b, e.center.x, e.center.y, e.radius, 0, 2 * Math.PI);
  else if (e.type === 'ARC') arc(b, e.center.x, e.center.y, e.radius, e.startAngle, e.endAngle);
  else if (e.type.endsWith('POLYLINE')) chain(b, e.vertices, e.shape);
};

// dxf: angles in radians too, circles and arcs as x, y, r.
const helped = (b, e) => {
  if (e.type === 'LINE') chain(b, [e.start, e.end], false);
  else if (e.type === 'CIRCLE') arc(b, e.x, e.y, e.r, 0, 2 * Math.PI);
  else if (e.type === 'ARC') arc(b, e.x, e.y, e.r, e.startAngle, e.endAngle);
  else if (e.type.endsWith('POLYLINE')) chain(b, e.vertices, e.closed);
};

const out = {};
for (const file of process.argv.slice(2)) {
  const text = readFileSync(file, 'ascii');
  out[file] = {
    'dxf-parser': summary(new DxfParser().parseSync(text).entities, parsed),
    dxf: summary(new Helper(text).parsed.entities, helped),
  };
}
console.log(JSON.stringify(out));
