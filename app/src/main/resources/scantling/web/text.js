// The text beside the drawing: problems underlined where they stand, and what may stand there offered.
(() => {
  'use strict';
  const page = document.querySelector('.textpage');
  if (!page) return;
  const job = page.dataset.job, text = page.querySelector('textarea'), under = page.querySelector('.under'), offers = page.querySelector('.offers');
  const stamp = document.querySelector('meta[name=stamp]').content;
  const ask = async (what, values) => {
    const answer = await fetch('/jobs/' + job + '/text/' + what, { method: 'POST', headers: { 'X-Stamp': stamp, 'Content-Type': 'application/x-www-form-urlencoded' }, body: new URLSearchParams(values) });
    return answer.ok ? answer.json() : null;
  };
  const underline = problems => {
    const spans = problems.map(p => [p.start, Math.max(p.end, p.start + 1)]).sort((a, b) => a[0] - b[0]);
    under.replaceChildren();
    let from = 0;
    for (const [a, b] of spans) {
      if (a < from) continue;
      const mark = document.createElement('mark');
      mark.textContent = text.value.slice(a, b);
      under.append(text.value.slice(from, a), mark);
      from = b;
    }
    under.append(text.value.slice(from) + '\n');
    slide();
  };
  const slide = () => { under.scrollTop = text.scrollTop; under.scrollLeft = text.scrollLeft; };
  text.addEventListener('scroll', slide);
  const list = (id, lines) => document.getElementById(id).replaceChildren(...lines.map(words => { const li = document.createElement('li'); li.textContent = words; return li; }));
  let round = 0;
  const check = async () => {
    const mine = ++round, said = await ask('check', { text: text.value });
    if (!said || mine !== round) return;
    underline(said.problems);
    list('wrong', said.problems.map(p => 'line ' + p.line + ': ' + p.words));
    list('findings', said.findings);
    if (said.front) document.getElementById('front').innerHTML = said.front;
  };
  let later = 0;
  text.addEventListener('input', () => { under.replaceChildren(); clearTimeout(later); later = setTimeout(check, 250); hide(); });

  const hide = () => { offers.hidden = true; };
  const take = li => {
    const at = text.selectionStart, typed = +li.dataset.typed;
    text.focus();
    text.setSelectionRange(at - typed, at);
    // typed for the maker, so that the browser's own undo takes it back
    if (!document.execCommand('insertText', false, li.dataset.word)) text.setRangeText(li.dataset.word, at - typed, at, 'end');
    hide();
    text.dispatchEvent(new Event('input'));
  };
  const offer = async () => {
    const found = await ask('complete', { text: text.value, at: text.selectionStart });
    if (!found || !found.length) { hide(); return; }
    offers.replaceChildren(...found.map((o, i) => {
      const li = document.createElement('li'), says = document.createElement('small');
      li.setAttribute('role', 'option');
      li.setAttribute('aria-selected', i === 0 ? 'true' : 'false');
      li.dataset.word = o.word; li.dataset.typed = o.typed;
      li.textContent = o.word; says.textContent = o.says; li.append(says);
      return li;
    }));
    const lines = text.value.slice(0, text.selectionStart).split('\n'), high = parseFloat(getComputedStyle(text).lineHeight);
    offers.style.top = Math.min(text.clientHeight - 40, 12 + lines.length * high - text.scrollTop) + 'px';
    offers.style.left = Math.min(text.clientWidth - 200, 12 + lines[lines.length - 1].length * high * 0.4) + 'px';
    offers.hidden = false;
  };
  offers.addEventListener('mousedown', e => { const li = e.target.closest('li'); if (li) { e.preventDefault(); take(li); } });
  text.addEventListener('blur', hide);
  text.addEventListener('keydown', e => {
    if (e.key === ' ' && e.ctrlKey) { e.preventDefault(); offer(); return; }
    if (offers.hidden) return;
    const all = [...offers.children], at = all.findIndex(li => li.getAttribute('aria-selected') === 'true');
    const move = to => { all.forEach((li, i) => li.setAttribute('aria-selected', i === to ? 'true' : 'false')); all[to].scrollIntoView({ block: 'nearest' }); };
    if (e.key === 'ArrowDown') { e.preventDefault(); move((at + 1) % all.length); }
    if (e.key === 'ArrowUp') { e.preventDefault(); move((at + all.length - 1) % all.length); }
    if (e.key === 'Enter' || e.key === 'Tab') { e.preventDefault(); take(all[at]); }
    if (e.key === 'Escape') { e.preventDefault(); hide(); }
  });
  check();
})();
