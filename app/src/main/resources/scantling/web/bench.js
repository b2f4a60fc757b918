// At the bench: one card at a time. Every act is kept here first and sent when the network lets it through: in order, each once.
(() => {
  'use strict';
  const job = document.body.dataset.job;
  const one = (s, r = document) => r.querySelector(s), all = (s, r = document) => [...r.querySelectorAll(s)];
  const html = document.documentElement;
  html.classList.add('js');
  const recall = (key, usual) => { try { return JSON.parse(localStorage.getItem(key)) ?? usual; } catch { return usual; } };
  const keep = (key, value) => { try { localStorage.setItem(key, JSON.stringify(value)); return true; } catch { return false; } };
  const random = () => [...crypto.getRandomValues(new Uint8Array(12))].map(b => b.toString(16).padStart(2, '0')).join('');

  /* ---- the queue ---- */
  const KEY = 'scantling-queue-' + job;
  let q = recall(KEY, null) || { queue: random(), n: 0, pending: [] };
  let sending = false, moved = false, stamp = one('meta[name=stamp]').content;
  const net = text => { one('.net').textContent = text; };
  const waiting = () => q.pending.length ? (q.pending.length === 1 ? 'One act waits' : q.pending.length + ' acts wait') + ' here for the network.' : '';

  const add = act => {
    q.n += 1;
    q.pending.push({ id: 'b-' + random(), n: q.n, ...act });
    if (!keep(KEY, q)) {
      q.pending.pop(); q.n -= 1;
      net('There is no room left on this device to keep that. It was not noted.');
      return false;
    }
    flush();
    return true;
  };

  const flush = async () => {
    if (sending || !q.pending.length) return;
    sending = true;
    const batch = [];
    let size = 0;
    for (const act of q.pending) { size += JSON.stringify(act).length; if (batch.length && (size > 1500000 || batch.length >= 50)) break; batch.push(act); }
    let again = false;
    try {
      const answer = await fetch('/jobs/' + job + '/bench/acts', { method: 'POST', headers: { 'Content-Type': 'application/json', 'X-Stamp': stamp }, body: JSON.stringify({ queue: q.queue, acts: batch }) });
      if (answer.status === 403) {
        const fresh = await fetch('/jobs/' + job + '/bench/stamp');
        const was = stamp;
        stamp = (await fresh.text()).trim();
        again = stamp !== was;
        if (!again) net(waiting() + ' The shop did not take them: load this page again.');
      } else if (answer.ok) {
        again = settle((await answer.json()).outcomes, batch);
      } else {
        net(waiting() + ' ' + await answer.text());
      }
    } catch {
      net(waiting());
    }
    sending = false;
    if (again) flush();
    else if (!q.pending.length && moved && !document.querySelector('.measuring')) { moved = false; location.reload(); }
  };

  const settle = (outcomes, batch) => {
    let said = '';
    for (const o of outcomes) {
      if (o.expected > 0) {
        q.pending.forEach((act, i) => { act.n = o.expected + i; });
        q.n = o.expected + q.pending.length - 1;
      } else if (o.taken) {
        const act = batch.find(a => a.id === o.id);
        q.pending = q.pending.filter(a => a.id !== o.id);
        if (o.said) said = o.said;
        else if (act && (act.kind === 'measured' || act.kind === 'spoilt' || act.kind === 'note')) moved = true;
      }
    }
    keep(KEY, q);
    net(said || waiting());
    return q.pending.length > 0;
  };
  addEventListener('online', flush);
  setInterval(flush, 4000);

  /* ---- cards ---- */
  const cards = all('.card[data-card]').filter(c => !['measure', 'ask'].includes(c.dataset.card));
  let at = 0, asking = '';
  const spent = recall('scantling-spent-' + job, {});
  const ticks = card => all('[role=checkbox]', card);
  const isDone = card => card.dataset.done === 'yes' || (ticks(card).length > 0 && ticks(card).every(t => t.getAttribute('aria-checked') === 'true'));
  const seg = key => all('[data-seg],[data-go]').filter(x => (x.dataset.seg || x.dataset.go) === key);

  const paint = () => {
    const card = cards[at];
    cards.forEach(c => { seg(c.dataset.card).forEach(s => { s.classList.toggle('now', c === card); s.classList.toggle('done', isDone(c)); }); });
    const main = one('[data-main]'), second = one('[data-second]');
    if (asking) { main.textContent = 'Put it in'; second.textContent = 'Leave it'; return; }
    if (!card) { main.hidden = true; second.hidden = true; return; }
    main.textContent = isDone(card) ? (at + 1 < cards.length ? 'Next' : 'To the sheet') : 'Done';
    second.textContent = all('.numbers li', card).length ? 'Measure' : 'Back';
    second.disabled = second.textContent === 'Back' && at === 0;
    const undo = one('[data-do=undo]', card);
    if (undo) undo.hidden = !(card.dataset.done === 'yes' && ticks(card).length === 0);
  };

  const show = i => {
    at = Math.max(0, Math.min(i, cards.length - 1));
    const card = cards[at];
    asking = '';
    all('.card').forEach(c => { c.hidden = c !== card; });
    document.body.classList.remove('measuring');
    if (!card) { paint(); return; }
    const place = one('.cg', card), drawing = document.getElementById('drawing-' + card.dataset.drawing);
    if (drawing && !place.firstChild) place.append(drawing.content.cloneNode(true));
    spent[card.dataset.card] = spent[card.dataset.card] || Date.now();
    keep('scantling-spent-' + job, spent);
    history.replaceState(null, '', '#' + encodeURIComponent(card.dataset.card));
    one('.cards').scrollTop = 0;
    const now = seg(card.dataset.card)[0];
    if (now) now.scrollIntoView({ inline: 'center', block: 'nearest' });
    clock();
    paint();
  };

  const clock = () => {
    const card = cards[at];
    const field = card && one('.minutes', card);
    if (field && !field.dataset.own && document.activeElement !== field) field.value = Math.min(1440, Math.round((Date.now() - (spent[card.dataset.card] || Date.now())) / 60000));
  };
  all('.minutes').forEach(f => f.addEventListener('input', () => { f.dataset.own = 'yes'; }));
  setInterval(clock, 20000);

  const tick = (box, on) => {
    if (!add({ kind: on ? (box.dataset.cut ? 'cut' : 'done') : 'undone', subject: box.dataset.subject })) return;
    box.setAttribute('aria-checked', on ? 'true' : 'false');
    paint();
  };

  const done = () => {
    const card = cards[at];
    if (isDone(card)) {
      if (at + 1 < cards.length) show(at + 1); else location.href = '/jobs/' + job;
      return;
    }
    const open = ticks(card).filter(t => t.getAttribute('aria-checked') !== 'true');
    open.forEach(t => tick(t, true));
    if (!ticks(card).length) { add({ kind: 'done', subject: card.dataset.card }); card.dataset.done = 'yes'; }
    const minutes = +one('.minutes', card).value;
    if (minutes > 0) add({ kind: 'minutes', subject: card.dataset.card, minutes });
    delete spent[card.dataset.card];
    keep('scantling-spent-' + job, spent);
    if (at + 1 < cards.length) show(at + 1); else paint();
  };

  /* ---- measuring ---- */
  const inch = html.dataset.units === 'in';
  const pad = one('[data-card=measure]'), value = one('.shown .val'), names = one('.name');
  const number = t => t.trim().split(' ').reduce((sum, part) => { const f = part.split('/'); return sum + (f.length === 2 ? f[0] / f[1] : +part); }, 0);
  const compare = () => {
    const planned = names.selectedOptions[0] ? names.selectedOptions[0].dataset.planned : '';
    const typed = value.textContent;
    const plain = planned && !/mm$/.test(planned) ? number(planned) : NaN;
    const gap = typed && !isNaN(plain) ? number(typed) - plain : NaN;
    one('.cmp').textContent = planned ? 'by the plan ' + planned + (isNaN(gap) || inch ? '' : gap === 0 ? '; the same' : '; yours is ' + Math.abs(gap).toFixed(1) + (gap < 0 ? ' less' : ' more')) : '';
  };
  const measure = () => {
    const card = cards[at];
    names.replaceChildren(...all('.numbers li', card).map(li => { const o = new Option(li.dataset.name, li.dataset.name); o.dataset.planned = li.dataset.planned; return o; }));
    value.textContent = '';
    open('measure');
    compare();
  };
  const open = what => {
    asking = what;
    const panel = what === 'measure' ? pad : one('[data-card=ask]');
    all('.card').forEach(c => { c.hidden = c !== panel; });
    document.body.classList.add('measuring');
    paint();
  };
  if (pad) {
    all('[data-k]', pad).forEach(k => k.addEventListener('click', () => {
      const t = value.textContent;
      value.textContent = k.dataset.k === 'del' ? t.slice(0, -1).trimEnd() : (t + k.dataset.k).slice(0, 12);
      compare();
    }));
    all('[data-f]', pad).forEach(k => k.addEventListener('click', () => { value.textContent = addUp(value.textContent, k.dataset.f); compare(); }));
    names.addEventListener('change', compare);
  }
  // halves, quarters and so on add up
  const addUp = (text, part) => {
    const [whole, fraction] = text.includes('/') ? (text.includes(' ') ? text.split(' ') : ['', text]) : [text, ''];
    const [a, b] = (fraction || '0/1').split('/').map(Number), [c, d] = part.split('/').map(Number);
    let top = a * d + c * b, under = b * d;
    const gcd = (x, y) => y ? gcd(y, x % y) : x, g = gcd(top, under);
    top /= g; under /= g;
    const more = Math.floor(top / under), rest = top - more * under, w = (+whole || 0) + more;
    return ((w || '') + ' ' + (rest ? rest + '/' + under : '')).trim();
  };

  /* ---- saying more ---- */
  const ask = what => {
    const panel = one('[data-card=ask]'), card = cards[at];
    one('.q', panel).textContent = what === 'wait' ? 'What waits, and how long' : what === 'spoilt' ? 'Which is spoilt? Another will be cut' : 'Note or photo';
    one('.forwait', panel).hidden = what !== 'wait';
    one('.forpart', panel).hidden = what !== 'spoilt';
    one('.forphoto', panel).hidden = what !== 'note';
    one('.words', panel).value = what === 'wait' ? one('h1', card).textContent : '';
    one('.pic', panel).value = '';
    one('.part', panel).replaceChildren(...ticks(card).map(t => new Option(t.textContent, t.dataset.subject)));
    open(what);
    one('.words', panel).focus();
  };
  const small = async file => {
    const picture = await createImageBitmap(file), most = 1600, by = Math.min(1, most / Math.max(picture.width, picture.height));
    const canvas = document.createElement('canvas');
    canvas.width = Math.round(picture.width * by); canvas.height = Math.round(picture.height * by);
    canvas.getContext('2d').drawImage(picture, 0, 0, canvas.width, canvas.height);
    return canvas.toDataURL('image/jpeg', 0.8).split(',')[1];
  };
  const putIn = async () => {
    const panel = one('[data-card=ask]'), card = cards[at], words = one('.words', panel).value.trim();
    if (asking === 'measure') {
      if (!value.textContent) return;
      moved = true;
      if (add({ kind: 'measured', subject: names.value, size: value.textContent })) show(at);
    } else if (asking === 'wait') {
      const minutes = +one('.long', panel).value;
      if (!words || !(minutes > 0)) return;
      if (add({ kind: 'wait', subject: words, minutes })) { waitLine(words, Date.now() / 1000, Date.now() / 1000 + minutes * 60); show(at); }
    } else if (asking === 'spoilt') {
      const part = one('.part', panel).value;
      moved = true;
      if (add({ kind: 'spoilt', subject: part, text: words })) { ticks(card).filter(t => t.dataset.subject === part).forEach(t => t.setAttribute('aria-checked', 'false')); show(at); }
    } else {
      const file = one('.pic', panel).files[0];
      let photo = '';
      try { photo = file ? await small(file) : ''; } catch { net('That is no picture that can be read.'); return; }
      if (!words && !photo) return;
      if (add({ kind: 'note', subject: card.dataset.card, text: words, photo })) {
        const line = document.createElement('li');
        line.textContent = words || 'photo';
        one('.notes', card).append(line);
        moved = false;
        show(at);
      }
    }
  };

  /* ---- waits ---- */
  const waitLine = (what, begun, ends) => {
    const li = document.createElement('li'), name = document.createElement('span'), left = document.createElement('span');
    li.dataset.what = what; li.dataset.begun = begun; li.dataset.ends = ends;
    name.className = 'tn'; name.textContent = what; left.className = 'left';
    const NS = 'http://www.w3.org/2000/svg', bar = document.createElementNS(NS, 'svg'), gone = document.createElementNS(NS, 'rect');
    bar.setAttribute('class', 'hollowbar'); bar.setAttribute('viewBox', '0 0 100 10'); bar.setAttribute('preserveAspectRatio', 'none');
    gone.setAttribute('class', 'gone'); gone.setAttribute('height', '10'); gone.setAttribute('width', '0');
    bar.append(gone); li.append(name, left, bar);
    one('.waits').append(li);
    run();
  };
  const run = () => all('.waits li').forEach(w => {
    const now = Date.now() / 1000, from = +w.dataset.begun, to = +w.dataset.ends, left = Math.max(0, Math.ceil((to - now) / 60));
    one('.gone', w).setAttribute('width', String(Math.min(100, Math.max(0, 100 * (now - from) / (to - from)))));
    one('.left', w).textContent = left === 0 ? 'over' : left < 60 ? left + ' min' : Math.floor(left / 60) + ' h ' + String(left % 60).padStart(2, '0');
  });
  setInterval(run, 10000);
  document.addEventListener('visibilitychange', () => { run(); clock(); flush(); });

  /* ---- strong light ---- */
  const light = on => { html.dataset.light = on ? 'strong' : ''; one('.light').setAttribute('aria-pressed', on ? 'true' : 'false'); };
  one('.light').addEventListener('click', () => { const on = html.dataset.light !== 'strong'; light(on); keep('scantling-light', on); });
  light(recall('scantling-light', false));

  document.addEventListener('click', e => {
    const box = e.target.closest('[role=checkbox]');
    if (box) { tick(box, box.getAttribute('aria-checked') !== 'true'); return; }
    const go = e.target.closest('[data-seg],[data-go]');
    if (go) { show(cards.findIndex(c => c.dataset.card === (go.dataset.seg || go.dataset.go))); return; }
    const more = e.target.closest('[data-do]');
    if (more) { if (more.dataset.do === 'undo') { add({ kind: 'undone', subject: cards[at].dataset.card }); cards[at].dataset.done = ''; paint(); } else ask(more.dataset.do); return; }
    if (e.target.closest('[data-main]')) { if (asking) putIn(); else done(); return; }
    if (e.target.closest('[data-second]')) { if (asking) show(at); else if (e.target.textContent === 'Measure') measure(); else show(at - 1); }
  });

  // what still waits to be sent is shown as done
  q.pending.forEach(act => {
    all('[role=checkbox]').filter(t => t.dataset.subject === act.subject).forEach(t => t.setAttribute('aria-checked', act.kind === 'done' || act.kind === 'cut' ? 'true' : 'false'));
    if (act.kind === 'wait') waitLine(act.subject, Date.now() / 1000, Date.now() / 1000 + act.minutes * 60);
  });
  net(waiting());
  run();
  const wanted = decodeURIComponent(location.hash.slice(1)), found = cards.findIndex(c => c.dataset.card === wanted);
  show(found >= 0 ? found : Math.max(0, cards.findIndex(c => !isDone(c))));
  flush();
})();
