// The piece in the round: paper, ink edges, no lamps. Parts move apart from the middle; touching one leads to its sheet.
const box = document.querySelector('.round');
const { BufferGeometry, EdgesGeometry, Float32BufferAttribute, LineBasicMaterial, LineSegments, Mesh, MeshBasicMaterial, PerspectiveCamera, Raycaster, Scene, ShapeUtils, Vector2, Vector3, WebGLRenderer } = await import(box.dataset.three);
const canvas = box.querySelector('canvas'), slider = box.querySelector('input'), told = box.querySelector('.part');
const ink = getComputedStyle(document.documentElement).getPropertyValue('--ink').trim() || '#1D1A16';
const paper = getComputedStyle(document.documentElement).getPropertyValue('--sheet').trim() || '#FBF8F1';
const touch = getComputedStyle(document.documentElement).getPropertyValue('--touch-wash').trim() || '#E4EBF1';

const triangles = face => {
  const points = [];
  for (let i = 0; i < face.length; i += 3) points.push(new Vector3(face[i], face[i + 2], -face[i + 1]));
  if (points.length < 5) return points.slice(2).flatMap((p, i) => [points[0], points[i + 1], p]);
  // seen along its largest direction the face is flat
  const normal = new Vector3();
  points.forEach((p, i) => normal.add(new Vector3().crossVectors(p, points[(i + 1) % points.length])));
  const n = [Math.abs(normal.x), Math.abs(normal.y), Math.abs(normal.z)], most = n.indexOf(Math.max(...n));
  const flat = points.map(p => most === 0 ? new Vector2(p.y, p.z) : most === 1 ? new Vector2(p.z, p.x) : new Vector2(p.x, p.y));
  return ShapeUtils.triangulateShape(flat, []).flat().map(i => points[i]);
};

const show = renderer => fetch('/jobs/' + box.dataset.job + '/round.json').then(r => r.json()).then(data => {
  const scene = new Scene(), camera = new PerspectiveCamera(28, 1, 10, 100000), meshes = [], middle = new Vector3(), all = [];
  for (const part of data.parts) {
    const points = part.faces.flatMap(triangles);
    const geometry = new BufferGeometry();
    geometry.setAttribute('position', new Float32BufferAttribute(points.flatMap(p => [p.x, p.y, p.z]), 3));
    geometry.computeBoundingBox();
    const mesh = new Mesh(geometry, new MeshBasicMaterial({ color: paper, polygonOffset: true, polygonOffsetFactor: 1, polygonOffsetUnits: 1 }));
    mesh.add(new LineSegments(new EdgesGeometry(geometry, 20), new LineBasicMaterial({ color: ink })));
    mesh.userData = { ...part, centre: geometry.boundingBox.getCenter(new Vector3()) };
    all.push(...points);
    scene.add(mesh);
    meshes.push(mesh);
  }
  const reach = all.reduce((b, p) => { b.min.min(p); b.max.max(p); return b; }, { min: all[0].clone(), max: all[0].clone() });
  middle.addVectors(reach.min, reach.max).multiplyScalar(0.5);
  const size = reach.max.distanceTo(reach.min);
  let turn = 0.6, lift = 0.35, far = size * 2.4, hot = null;
  const draw = () => {
    const apart = slider.value / 100;
    meshes.forEach(m => m.position.copy(m.userData.centre).sub(middle).multiplyScalar(apart * 0.9));
    const away = far * (1 + apart * 0.7);
    camera.position.set(middle.x + away * Math.sin(turn) * Math.cos(lift), middle.y + away * Math.sin(lift), middle.z + away * Math.cos(turn) * Math.cos(lift));
    camera.lookAt(middle);
    renderer.render(scene, camera);
  };
  const fit = () => {
    renderer.setSize(canvas.clientWidth, canvas.clientHeight, false);
    camera.aspect = canvas.clientWidth / canvas.clientHeight;
    camera.updateProjectionMatrix();
    draw();
  };
  const under = e => {
    const r = canvas.getBoundingClientRect(), ray = new Raycaster();
    ray.setFromCamera(new Vector2(2 * (e.clientX - r.left) / r.width - 1, 1 - 2 * (e.clientY - r.top) / r.height), camera);
    const hit = ray.intersectObjects(meshes, false)[0];
    return hit ? hit.object : null;
  };
  const heat = m => {
    if (m === hot) return;
    if (hot) hot.material.color.set(paper);
    hot = m;
    if (hot) hot.material.color.set(touch);
    told.textContent = hot ? hot.userData.mark + ', ' + hot.userData.path : '';
    draw();
  };
  let down = null;
  canvas.addEventListener('pointerdown', e => { down = { x: e.clientX, y: e.clientY, turn, lift, moved: false }; canvas.setPointerCapture(e.pointerId); });
  canvas.addEventListener('pointermove', e => {
    if (!down) { heat(under(e)); return; }
    const dx = e.clientX - down.x, dy = e.clientY - down.y;
    if (Math.abs(dx) + Math.abs(dy) > 4) down.moved = true;
    turn = down.turn - dx * 0.008;
    lift = Math.max(-1.5, Math.min(1.5, down.lift + dy * 0.008));
    draw();
  });
  canvas.addEventListener('pointerup', e => {
    const was = down;
    down = null;
    const part = was && !was.moved && under(e);
    if (part) location.href = '/jobs/' + box.dataset.job + '#part-' + part.userData.mark;
  });
  canvas.addEventListener('wheel', e => { e.preventDefault(); far = Math.max(size * 0.8, Math.min(size * 6, far * (e.deltaY > 0 ? 1.1 : 0.9))); draw(); }, { passive: false });
  canvas.addEventListener('keydown', e => {
    const nearer = { '+': 0.9, '=': 0.9, '-': 1.1 }[e.key];
    if (nearer) { e.preventDefault(); far = Math.max(size * 0.8, Math.min(size * 6, far * nearer)); draw(); }
    const way = { ArrowLeft: [0.1, 0], ArrowRight: [-0.1, 0], ArrowUp: [0, 0.1], ArrowDown: [0, -0.1] }[e.key];
    if (way) { e.preventDefault(); turn += way[0]; lift = Math.max(-1.5, Math.min(1.5, lift + way[1])); draw(); }
  });
  slider.addEventListener('input', draw);
  // a part that is in hand in the list is shown in the drawing
  const listed = e => { const link = e.target.closest('a[data-path]'); if (link) heat(meshes.find(m => m.userData.path === link.dataset.path) || null); };
  const list = document.querySelector('.partlist');
  list.addEventListener('focusin', listed);
  list.addEventListener('pointerover', listed);
  list.addEventListener('focusout', () => heat(null));
  list.addEventListener('pointerleave', () => heat(null));
  addEventListener('resize', fit);
  fit();
  box.dataset.ready = String(meshes.length);
});

// a browser that cannot draw in space shows the flat drawing instead
const flat = () => { box.hidden = true; document.querySelector('.flat').style.display = 'block'; };
let renderer = null;
const can = document.createElement('canvas').getContext('webgl2');
if (can) { try { renderer = new WebGLRenderer({ canvas, antialias: true, alpha: true }); } catch { renderer = null; } }
if (renderer) { renderer.setPixelRatio(Math.min(2, devicePixelRatio)); show(renderer).catch(flat); } else flat();
