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
  let sending = false, moved = false, plan = document.body.dataset.plan, stamp = one('meta[name=stamp]').content;
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
      const answer = await fetch('/jobs/' + job + '/bench/acts', { method: 'POST', headers: { 'Content-Type': 'application/json', 'X-Stamp': stamp }, body: JSON.stringify({ queue: q.queue, acts: batch.map(a => a.kind === 'wait' ? { ...a, ago: Math.round(Date.now() / 1000 - a.at) } : a) }) });
      if (answer.status === 403) {
        const fresh = await fetch('/jobs/' + job + '/bench/stamp');
        const was = stamp;
        stamp = (await fresh.text()).trim();
        again = stamp !== was;
        if (!again) net(waiting() + ' The shop did not take them: load this page again.');
      } else if (answer.ok) {
        const said = await answer.json();
        if (said.plan) { plan = said.plan; }
        again = settle(said.outcomes, batch);
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
        else if (act && ['measured', 'spoilt', 'note', 'sawn', 'partly', 'takeback'].includes(act.kind)) moved = true;
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
  const ticks = card => all('[role=checkbox]', card), ticked = t => t.getAttribute('aria-checked') === 'true';
  const isDone = card => card.dataset.done === 'yes' || (!card.dataset.sawn && ticks(card).length > 0 && ticks(card).every(ticked));
  const seg = key => all('[data-seg],[data-go]').filter(x => (x.dataset.seg || x.dataset.go) === key);

  /* ---- minutes: they run while the card is shown, through a reload and a locked phone ---- */
  const SPENT = 'scantling-minutes-' + job, LEFT = 3 * 3600000;
  const spent = recall(SPENT, {});
  // whoever was away for hours, the page shut or the phone locked, did not work at it meanwhile
  const away = () => {
    const last = recall(SPENT + '-seen', Date.now()), now = Date.now();
    if (now - last > LEFT) Object.values(spent).forEach(s => { if (s.since) { s.ms += Math.max(0, last - s.since); s.since = now; } });
    keep(SPENT, spent);
    keep(SPENT + '-seen', now);
  };
  away();
  const begin = key => { Object.values(spent).forEach(s => { if (s.since && s !== spent[key]) { s.ms += Date.now() - s.since; delete s.since; } }); const own = spent[key] = spent[key] || { ms: 0 }; own.since = own.since || Date.now(); keep(SPENT, spent); };
  const minutesOf = key => { const s = spent[key]; return s ? Math.min(1440, Math.round((s.ms + (s.since ? Date.now() - s.since : 0)) / 60000)) : 0; };

  const drawn = (card, number) => {
    const place = one('.cg', card);
    if (place.dataset.shown === number) return;
    place.dataset.shown = number;
    const drawing = document.getElementById('drawing-' + number);
    place.replaceChildren(...(drawing ? [drawing.content.cloneNode(true)] : []));
  };
  // the figures and the drawing of the piece that is next
  const figures = card => {
    const next = ticks(card).find(t => !ticked(t)) || ticks(card)[0];
    drawn(card, next && next.dataset.drawing !== '-1' ? next.dataset.drawing : card.dataset.drawing);
    ticks(card).forEach(t => t.classList.toggle('next', t === next && !ticked(t)));
    if (!next || !next.dataset.figures) return;
    const said = next.dataset.figures.split('|'), dials = [];
    for (let i = 0; i + 2 < said.length; i += 3) {
      const dial = document.createElement('div');
      dial.className = 'dial';
      ['lab', 'val', 'u'].forEach((name, n) => { const span = document.createElement('span'); span.className = name; span.textContent = said[i + n]; dial.append(span, ' '); });
      dials.push(dial);
    }
    one('.dials', card).className = 'dials ' + (dials.length > 1 ? 'duo' : 'solo');
    one('.dials', card).replaceChildren(...dials);
  };

  const paint = () => {
    const card = cards[at];
    cards.forEach(c => { seg(c.dataset.card).forEach(s => { s.classList.toggle('now', c === card); s.classList.toggle('done', isDone(c)); }); });
    const main = one('[data-main]'), second = one('[data-second]');
    second.disabled = false;
    main.disabled = false;
    if (asking) { main.textContent = 'Put it in'; second.textContent = 'Leave it'; return; }
    if (!card) { main.hidden = true; second.hidden = true; return; }
    main.textContent = isDone(card) ? (at + 1 < cards.length ? 'Next' : 'To the sheet') : 'Done';
    second.textContent = 'Back';
    second.disabled = at === 0;
    one('[data-do=undo]', card).hidden = !(isDone(card) && !card.dataset.sawn);
    all('[data-do=here],[data-do=lost]', card).forEach(b => { b.hidden = isDone(card); });
    figures(card);
  };

  const show = i => {
    at = Math.max(0, Math.min(i, cards.length - 1));
    const card = cards[at];
    asking = '';
    all('.card').forEach(c => { c.hidden = c !== card; });
    document.body.classList.remove('measuring');
    if (!card) { paint(); return; }
    if (!isDone(card)) begin(card.dataset.card);
    history.replaceState(null, '', '#' + encodeURIComponent(card.dataset.card));
    one('.cards').scrollTop = 0;
    const now = seg(card.dataset.card)[0];
    if (now) now.scrollIntoView({ inline: 'center', block: 'nearest' });
    clock();
    paint();
  };

  const clock = () => {
    away();
    const card = cards[at];
    const field = card && one('.minutes', card);
    if (field && !field.dataset.own && document.activeElement !== field) field.value = minutesOf(card.dataset.card);
  };
  all('.minutes').forEach(f => f.addEventListener('input', () => { f.dataset.own = 'yes'; }));
  setInterval(clock, 20000);

  const tick = (box, on) => {
    if (!add({ kind: on ? (box.dataset.cut ? 'cut' : 'done') : 'undone', subject: box.dataset.subject })) return;
    box.setAttribute('aria-checked', on ? 'true' : 'false');
    paint();
  };

  const done = () => {
    const card = cards[at], key = card.dataset.card;
    if (isDone(card)) {
      if (at + 1 < cards.length) show(at + 1); else location.href = '/jobs/' + job;
      return;
    }
    if (card.dataset.sawn) {
      if (!add({ kind: 'sawn', subject: key, sawn: card.dataset.sawn })) return;
      ticks(card).forEach(t => t.setAttribute('aria-checked', 'true'));
      card.dataset.done = 'yes';
    } else if (ticks(card).length) {
      for (const t of ticks(card).filter(t => !ticked(t))) tick(t, true);
    } else if (add({ kind: 'done', subject: key })) {
      card.dataset.done = 'yes';
    }
    const minutes = +one('.minutes', card).value, pause = +card.dataset.pause;
    // a card for one board of several is minutes of the whole operation
    if (minutes > 0) add({ kind: 'minutes', subject: card.dataset.sawn ? key.slice(0, key.lastIndexOf(' / ')) : key, minutes });
    if (pause > 0) startWait(one('h1', card).textContent, Math.min(10080, pause));
    delete spent[key];
    keep(SPENT, spent);
    if (at + 1 < cards.length) show(at + 1); else paint();
  };
  const notDone = () => {
    const card = cards[at], what = one('h1', card).textContent;
    if (ticks(card).length) ticks(card).filter(ticked).forEach(t => tick(t, false)); else add({ kind: 'undone', subject: card.dataset.card });
    card.dataset.done = '';
    all('.waits li').filter(w => w.dataset.what === what).forEach(w => { add({ kind: 'undone', subject: 'wait / ' + what }); w.remove(); });
    begin(card.dataset.card);
    paint();
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
  const measure = name => {
    const card = cards[at];
    names.replaceChildren(...all('.numbers li', card).map(li => { const o = new Option(li.dataset.name, li.dataset.name); o.dataset.planned = li.dataset.planned; return o; }));
    if (name) names.value = name;
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

  /* ---- a piece of stock that is partly sawn ---- */
  // how many cuts in a row are ticked, and what lies on the bench after them
  const cutSoFar = card => { const open = ticks(card).findIndex(t => !ticked(t)); return open < 0 ? ticks(card).length : open; };
  const onBench = card => {
    const cut = JSON.parse(card.dataset.partly), made = cutSoFar(card);
    return (cut.after[made - 1] || []).map(label => cut.pieces[label]);
  };
  const lies = card => {
    const free = onBench(card).filter(p => p.part).map(p => p.part), rest = onBench(card).length - free.length;
    if (!onBench(card).length) return 'Nothing is cut off yet. Tick the cuts that are made, then come back here.';
    return 'After cut ' + cutSoFar(card) + (free.length ? ' these are cut free: ' + free.join(', ') : ' no part is cut free') + '. ' + (rest === 1 ? 'One piece goes' : rest + ' pieces go') + ' to the rack as it lies, and what is left to saw is planned anew from what there is.';
  };
  const stopHere = (card, lost, words) => {
    const made = cutSoFar(card), key = card.dataset.card;
    if (!onBench(card).length) return false;
    moved = true;
    if (!add({ kind: 'partly', subject: key, partly: card.dataset.partly, made, parts: lost })) return false;
    lost.forEach(part => add({ kind: 'note', subject: part, text: ('spoilt at the saw' + (words ? ': ' + words : '')).slice(0, 1500) }));
    const minutes = +one('.minutes', card).value;
    if (minutes > 0) add({ kind: 'minutes', subject: key.slice(0, key.lastIndexOf(' / ')), minutes });
    delete spent[key];
    keep(SPENT, spent);
    // the next page begins with the saw, where the rest is planned
    keep('scantling-saw-' + job, true);
    return true;
  };

  /* ---- saying more ---- */
  const ask = what => {
    const panel = one('[data-card=ask]'), card = cards[at];
    one('.q', panel).textContent = what === 'wait' ? 'What waits, and how long' : what === 'spoilt' || what === 'lost' ? 'Which is spoilt? Another will be cut' : what === 'here' ? 'Stop here and plan the rest' : 'Note or photo';
    const free = what === 'lost' ? onBench(card).filter(p => p.part).map(p => p.part) : [];
    one('.lie', panel).textContent = what === 'here' || what === 'lost' && (free.length || !onBench(card).length) ? lies(card) : what === 'lost' ? 'No part is cut free yet. Tick the cuts until the spoilt one is; or leave this and stop here, and what is left to saw is planned anew.' : '';
    one('.words', panel).parentElement.hidden = what === 'here' || what === 'lost' && !free.length;
    one('.forwait', panel).hidden = what !== 'wait';
    one('.forpart', panel).hidden = what !== 'spoilt' && !free.length;
    one('.forphoto', panel).hidden = what !== 'note';
    one('.words', panel).value = what === 'wait' ? one('h1', card).textContent : '';
    one('.pic', panel).value = '';
    one('.part', panel).replaceChildren(...(what === 'lost' ? free.map(part => new Option(part, part)) : ticks(card).map(t => new Option(t.textContent, t.dataset.part))));
    open(what);
    one('[data-main]').disabled = what === 'lost' && !free.length || what === 'here' && !onBench(card).length;
    if (!one('.words', panel).parentElement.hidden) one('.words', panel).focus();
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
      if (startWait(words, minutes)) show(at);
    } else if (asking === 'here' || asking === 'lost') {
      const part = one('.part', panel).value;
      if (asking === 'lost' && !part) return;
      stopHere(card, asking === 'lost' ? [part] : [], words);
      show(at);
    } else if (asking === 'spoilt') {
      const part = one('.part', panel).value;
      moved = true;
      // the next page begins with the saw, where another is planned
      if (add({ kind: 'spoilt', subject: part, text: words })) { all('[data-part]').filter(t => t.dataset.part === part).forEach(t => t.setAttribute('aria-checked', 'false')); show(at); keep('scantling-saw-' + job, true); }
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
  const startWait = (what, minutes) => {
    const now = Date.now() / 1000;
    if (!add({ kind: 'wait', subject: what, minutes, at: now })) return false;
    waitLine(what, now, now + minutes * 60);
    return true;
  };
  const waitLine = (what, begun, ends) => {
    all('.waits li').filter(w => w.dataset.what === what).forEach(w => w.remove());
    const li = document.createElement('li'), name = document.createElement('span'), left = document.createElement('span');
    li.dataset.what = what; li.dataset.begun = begun; li.dataset.ends = ends;
    name.className = 'tn'; name.textContent = what; left.className = 'left';
    const NS = 'http://www.w3.org/2000/svg', bar = document.createElementNS(NS, 'svg'), gone = document.createElementNS(NS, 'rect');
    bar.setAttribute('class', 'hollowbar'); bar.setAttribute('viewBox', '0 0 100 10'); bar.setAttribute('preserveAspectRatio', 'none');
    gone.setAttribute('class', 'gone'); gone.setAttribute('height', '10'); gone.setAttribute('width', '0');
    const seen = document.createElement('button');
    seen.type = 'button'; seen.className = 'press'; seen.dataset.seen = what; seen.textContent = 'Seen'; seen.hidden = true;
    bar.append(gone); li.append(name, left, bar, seen);
    one('.waits').append(li);
    run();
  };
  const run = () => all('.waits li').forEach(w => {
    const now = Date.now() / 1000, from = +w.dataset.begun, to = +w.dataset.ends, left = Math.max(0, Math.ceil((to - now) / 60));
    one('.gone', w).setAttribute('width', String(Math.min(100, Math.max(0, 100 * (now - from) / (to - from)))));
    one('[data-seen]', w).hidden = left > 0;
    one('.left', w).textContent = left === 0 ? 'over' : left < 60 ? left + ' min' : Math.floor(left / 60) + ' h ' + String(left % 60).padStart(2, '0');
  });
  setInterval(run, 10000);
  document.addEventListener('visibilitychange', () => { run(); clock(); flush(); });

  /* ---- what changes elsewhere is here as soon as nobody is in the middle of something ---- */
  let ear = null, news = '';
  const renew = () => {
    if (!news || sending || q.pending.length || document.body.classList.contains('measuring')) return;
    if (news !== plan) location.reload();
    news = '';
  };
  const listen = () => {
    if (document.hidden) { if (ear) { ear.close(); ear = null; } return; }
    if (ear) return;
    ear = new EventSource('/jobs/' + job + '/bench/watch');
    ear.addEventListener('plan', e => { news = e.data; renew(); });
  };
  document.addEventListener('visibilitychange', listen);
  setInterval(renew, 1000);
  listen();

  all('[data-min]').forEach(li => { li.style.flexGrow = String(Math.max(5, +li.dataset.min)); });

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
    if (more) { ({ undo: notDone, measure: () => measure(more.dataset.name) }[more.dataset.do] || (() => ask(more.dataset.do)))(); return; }
    const back = e.target.closest('[data-back]');
    if (back) { moved = true; if (add({ kind: 'takeback', subject: back.dataset.back })) back.closest('li').remove(); return; }
    const seen = e.target.closest('[data-seen]');
    if (seen) { if (add({ kind: 'undone', subject: 'wait / ' + seen.dataset.seen })) seen.closest('li').remove(); return; }
    if (e.target.closest('[data-main]')) { if (asking) putIn(); else done(); return; }
    if (e.target.closest('[data-second]')) { show(asking ? at : at - 1); }
  });

  // what still waits to be sent is shown as done
  q.pending.forEach(act => {
    if (['done', 'cut', 'undone'].includes(act.kind)) {
      all('[role=checkbox]').filter(t => t.dataset.subject === act.subject).forEach(t => t.setAttribute('aria-checked', act.kind === 'undone' ? 'false' : 'true'));
    }
    if (['done', 'undone', 'sawn'].includes(act.kind)) cards.filter(c => c.dataset.card === act.subject).forEach(c => { c.dataset.done = act.kind === 'undone' ? '' : 'yes'; });
    if (act.kind === 'wait') waitLine(act.subject, act.at, act.at + act.minutes * 60);
  });
  net(waiting());
  run();
  const wanted = decodeURIComponent(location.hash.slice(1)), openNow = cards.findIndex(c => !isDone(c) && seg(c.dataset.card)[0].classList.contains('today')), open0 = openNow >= 0 ? openNow : cards.findIndex(c => !isDone(c));
  const found = wanted ? cards.findIndex(c => c.dataset.card === wanted) : -1;
  // another plan numbers the boards anew: the operation is still the same
  const near = wanted ? cards.findIndex(c => !isDone(c) && (c.dataset.card.startsWith(wanted + ' / ') || c.dataset.card.startsWith(wanted.slice(0, wanted.lastIndexOf(' / ')) + ' / '))) : -1;
  const again = recall('scantling-saw-' + job, false) ? cards.findIndex(c => c.dataset.sawn && !isDone(c)) : -1;
  if (again >= 0) keep('scantling-saw-' + job, false);
  show(again >= 0 ? again : found >= 0 ? found : near >= 0 ? near : Math.max(0, open0));
  flush();
})();
