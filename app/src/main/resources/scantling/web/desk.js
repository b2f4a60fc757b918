// The desk: figures that open their sum or are typed over where they stand, and pages that learn what changed elsewhere.
(() => {
  'use strict';
  document.documentElement.classList.add('js');
  const desk = document.querySelector('.desk[data-job]');
  const job = desk && desk.dataset.job;
  const at = () => document.getElementById('at');
  const newId = () => {
    const bytes = crypto.getRandomValues(new Uint8Array(12));
    return 'p-' + [...bytes].map(b => b.toString(16).padStart(2, '0')).join('');
  };

  // every request says which sheet the page shows, and names its act so that sending it twice does it once
  document.addEventListener('htmx:configRequest', e => {
    const p = e.detail.parameters;
    if (e.detail.verb === 'post') {
      p.act = newId();
      if (at()) { p.version = at().dataset.version; p.revision = p.revision || at().dataset.revision; }
    }
  });
  document.addEventListener('htmx:beforeSwap', e => {
    if (e.detail.xhr.status >= 400) { e.detail.shouldSwap = true; e.detail.isError = false; }
  });

  // what the shop cannot say itself, because it does not answer
  const GONE = 'The shop does not answer. What this page shows stands as it was when it last did; nothing can be changed until it does.';
  const tell = words => {
    const said = document.getElementById('said');
    if (!said || said.textContent === words) return;
    const line = document.createElement('p');
    line.textContent = words;
    said.className = words ? 'no' : 'yes';
    said.replaceChildren(...(words ? [line] : []));
  };
  document.addEventListener('htmx:sendError', () => tell(GONE));

  // the words a value is written with stand in "What you gave"
  const written = start => {
    const given = document.querySelector('#given [data-given="' + CSS.escape(start) + '"]');
    return given && given.textContent;
  };

  const startEdit = figure => {
    const text = written(figure.dataset.given);
    if (text === null || document.querySelector('input.edit')) return false;
    const input = document.createElement('input');
    input.className = 'edit';
    input.type = 'text';
    input.value = text;
    input.size = Math.max(3, text.length + 1);
    input.maxLength = 200;
    input.setAttribute('aria-label', figure.title || 'given');
    figure.hidden = true;
    figure.after(input);
    input.focus();
    input.select();
    let left = false;
    const leave = () => { if (left) return; left = true; input.remove(); figure.hidden = false; };
    input.addEventListener('keydown', e => {
      if (e.key === 'Escape') { e.stopPropagation(); leave(); figure.focus(); }
      if (e.key === 'Enter') {
        e.preventDefault();
        const value = input.value.trim();
        leave();
        if (value && value !== text) send('given', { at: figure.dataset.given, value });
        refocus(figure);
      }
    });
    input.addEventListener('blur', leave);
    return true;
  };

  const send = (what, values) => htmx.ajax('POST', '/jobs/' + job + '/' + what, { values, swap: 'none', source: document.body }).catch(() => {});

  // after a strand is taken anew, the figure that was in hand is in hand again
  let inHand = '';
  const refocus = figure => {
    const section = figure.closest('section');
    inHand = (section ? '#' + section.id + ' ' : '') + '[data-given="' + CSS.escape(figure.dataset.given || '') + '"]';
  };
  let swapped = false;
  // an answer may change much: once for all of it
  document.addEventListener('htmx:oobAfterSwap', () => {
    if (swapped) return;
    swapped = true;
    queueMicrotask(() => {
      swapped = false;
      dress();
      const f = inHand && document.querySelector(inHand);
      if (f) f.focus({ preventScroll: true });
      requestAnimationFrame(slide);
    });
  });
  document.addEventListener('htmx:afterSettle', () => { inHand = ''; });

  const slipOf = figure => {
    // what is found opens on the sheet, not in the narrow list beside it
    if (figure.closest('.found')) return { place: document.querySelector('.sayings'), kind: 'after' };
    const sum = figure.closest('.sum');
    if (sum) return { place: sum, kind: 'stack' };
    const row = figure.closest('tr');
    if (row) return { place: row, kind: 'row' };
    return { place: figure.closest('figure, .lead, p, li') || figure, kind: 'after' };
  };

  const openSum = async figure => {
    const name = figure.dataset.path;
    if (figure.getAttribute('aria-expanded') === 'true') { shut(name); return; }
    let html = '';
    try {
      html = await (await fetch('/jobs/' + job + '/number?name=' + encodeURIComponent(name), { headers: { 'HX-Request': 'true' } })).text();
    } catch (gone) {
      tell(GONE);
      return;
    }
    const { place, kind } = slipOf(figure);
    const box = document.createElement(kind === 'row' ? 'tr' : 'div');
    box.className = 'slip';
    box.dataset.slip = name;
    if (kind === 'row') {
      const cell = document.createElement('td');
      cell.colSpan = 20;
      cell.innerHTML = html;
      box.append(cell);
    } else {
      box.innerHTML = html;
    }
    place.after(box);
    htmx.process(box);
    dress();
    figure.setAttribute('aria-expanded', 'true');
    const field = box.querySelector('input[name=size]');
    if (field && !matchMedia('(pointer:coarse)').matches) field.focus({ preventScroll: true });
  };

  const openFound = async figure => {
    const name = figure.dataset.path;
    const slips = () => [...document.querySelectorAll('.slip')].filter(s => s.dataset.slip === name);
    if (!slips().length) await openSum(figure);
    slips().slice(0, 1).forEach(s => s.scrollIntoView({ block: 'center' }));
  };

  const shut = name => {
    document.querySelectorAll('.slip').forEach(s => { if (s.dataset.slip === name) s.remove(); });
    document.querySelectorAll('[aria-expanded="true"]').forEach(f => { if (f.dataset.path === name) { f.removeAttribute('aria-expanded'); f.focus({ preventScroll: true }); } });
  };

  const touched = figure => {
    if (figure.closest('.found')) {
      const there = document.querySelector('#sheet .n[data-path="' + CSS.escape(figure.dataset.path) + '"]');
      openFound(there && there.getClientRects().length ? there : figure);
      return;
    }
    if (figure.dataset.given && figure.classList.contains('given') && startEdit(figure)) return;
    if (figure.dataset.path) openSum(figure);
  };

  // what can be touched can be reached by keyboard
  const dress = () => document.querySelectorAll('.n[data-path]:not(a), .n[data-given]:not(a)').forEach(f => {
    if (!f.hasAttribute('tabindex')) {
      f.tabIndex = 0;
      f.setAttribute('role', 'button');
      const drawing = f.closest('svg');
      if (drawing) drawing.setAttribute('role', 'group');
    }
  });
  // what is wider than the screen can be slid by keyboard
  const slide = () => document.querySelectorAll('.scrollx, table.rows').forEach(f => {
    if (f.scrollWidth > f.clientWidth + 1 && !f.hasAttribute('tabindex')) {
      f.tabIndex = 0;
      if (f.tagName !== 'TABLE') f.setAttribute('role', 'group');
      const caption = f.querySelector('figcaption');
      f.setAttribute('aria-label', caption ? caption.textContent : f.tagName === 'TABLE' ? 'table' : 'drawing');
    }
  });
  slide();
  addEventListener('resize', slide);

  if (job) {
    document.addEventListener('click', e => {
      if (e.target.closest('.leave')) { document.getElementById('said').replaceChildren(); return; }
      const shutter = e.target.closest('.shut');
      if (shutter) { shut(shutter.closest('.sum').dataset.name); return; }
      const figure = e.target.closest('.n[data-path], .n[data-given], .found a[data-path]');
      if (figure) { e.preventDefault(); touched(figure); return; }
      const show = e.target.closest('a[data-show]');
      if (show) {
        const row = document.getElementById(show.dataset.show);
        if (row) { e.preventDefault(); row.scrollIntoView({ block: 'center' }); row.classList.add('shown'); setTimeout(() => row.classList.remove('shown'), 2500); }
      }
    });
    document.addEventListener('keydown', e => {
      if ((e.key === 'Enter' || e.key === ' ') && e.target.matches && e.target.matches('.n[role=button]')) { e.preventDefault(); touched(e.target); }
      if (e.key === 'Escape') { const s = e.target.closest && e.target.closest('.sum'); if (s) shut(s.dataset.name); }
    });
    dress();

    // what changes elsewhere shows here; a page nobody looks at does not ask
    let ear = null, news = '', asked = 0;
    // what this page asked for itself comes with its own answer; only then is there something to hear of
    const look = () => {
      if (!news || asked > 0 || document.querySelector('input.edit')) return;
      const version = at().dataset.version;
      if (news !== version) htmx.ajax('GET', '/jobs/' + job + '/since?version=' + encodeURIComponent(version), { swap: 'none', source: document.body }).catch(() => {});
      news = '';
    };
    // an answer that comes while somebody types over a figure waits until that is done
    document.addEventListener('htmx:beforeSwap', e => {
      if (e.detail.requestConfig.path.includes('/since?') && document.querySelector('input.edit')) { e.detail.shouldSwap = false; news = 'later'; }
    });
    document.addEventListener('htmx:beforeRequest', e => { if (e.detail.requestConfig.verb === 'post') asked += 1; });
    document.addEventListener('htmx:afterRequest', e => { if (e.detail.requestConfig.verb === 'post') { asked -= 1; setTimeout(look, 200); } });
    setInterval(look, 1000);
    const listen = () => {
      if (document.hidden) { if (ear) { ear.close(); ear = null; } return; }
      if (ear) return;
      ear = new EventSource('/jobs/' + job + '/watch');
      const heard = ear;
      // a moment without an answer is none to speak of
      ear.addEventListener('error', () => setTimeout(() => { if (ear === heard && heard.readyState !== EventSource.OPEN) tell(GONE); }, 3000));
      ear.addEventListener('open', () => { if (document.getElementById('said').textContent === GONE) tell(''); });
      ear.addEventListener('sheet', e => { news = e.data; look(); });
      ear.addEventListener('saw', e => {
        const state = document.getElementById('saw-state'), saw = JSON.parse(e.data);
        if (!state) return;
        if (state.textContent !== saw.words) state.textContent = saw.words;
        document.getElementById('saw-stop').hidden = !saw.running || saw.stopped;
        document.getElementById('saw-again').hidden = saw.running || !saw.stopped;
        const share = document.getElementById('saw-share');
        share.toggleAttribute('hidden', !saw.running);
        share.firstElementChild.setAttribute('width', String(saw.share));
        share.setAttribute('aria-label', saw.share + ' % is tried');
      });
    };
    document.addEventListener('visibilitychange', listen);
    listen();
  }

  // waits go on
  const tick = () => document.querySelectorAll('.waits [data-ends]').forEach(w => {
    const now = Date.now() / 1000, from = +w.dataset.begun, to = +w.dataset.ends, left = Math.max(0, Math.round((to - now) / 60));
    const bar = w.querySelector('.gone');
    if (bar) bar.setAttribute('width', String(Math.min(100, Math.max(0, 100 * (now - from) / (to - from)))));
    w.querySelector('.left').textContent = left === 0 ? 'over' : left < 60 ? left + ' min left' : Math.floor(left / 60) + ' h ' + String(left % 60).padStart(2, '0') + ' left';
  });
  if (document.querySelector('.waits')) { tick(); setInterval(tick, 15000); }
})();
