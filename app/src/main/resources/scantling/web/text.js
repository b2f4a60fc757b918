// The text beside the drawing: problems underlined where they stand, and what may stand there offered.
(() => {
  'use strict';
  const page = document.querySelector('.textpage');
  if (!page) return;
  const job = page.dataset.job, text = page.querySelector('textarea'), under = page.querySelector('.under'), offers = page.querySelector('.offers');
  const stamp = document.querySelector('meta[name=stamp]').content;
  const ask = async (what, values) => {
    const answer = await fetch('/jobs/' + job + '/text/' + what, { method: 'POST', headers: { 'X-Stamp': stamp, 'Content-Type': 'application/x-www-form-urlencoded' }, body: new URLSearchParams(values) });
    if (!answer.ok) throw new Error(await answer.text());
    return answer.json();
  };
  const most = +page.dataset.most;
  // where a text is too long to be sent at all, that is all there is to say of it; it stays where it was put
  const tooLong = () => text.value.length > most
    ? `This text is ${text.value.length.toLocaleString('en')} characters long; a piece may have ${most.toLocaleString('en')} at most. Nothing of it is checked or written. Was it put in more than once?` : '';
  const unchecked = words => {
    under.replaceChildren();
    list('wrong', [words]);
    list('findings', []);
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
    const mine = ++round;
    if (tooLong()) { unchecked(tooLong()); return; }
    let said = null;
    try {
      said = await ask('check', { text: text.value });
    } catch (trouble) {
      if (mine === round) unchecked(trouble instanceof TypeError ? 'The shop does not answer just now: this text is not checked. It stays here.' : trouble.message);
    }
    if (!said || mine !== round) return;
    underline(said.problems);
    list('wrong', said.problems.map(p => 'line ' + p.line + ': ' + p.words));
    list('findings', said.findings);
    if (said.front) document.getElementById('front').innerHTML = said.front;
  };
  text.form.addEventListener('submit', e => { if (tooLong()) { e.preventDefault(); unchecked(tooLong()); document.getElementById('wrong').scrollIntoView({ block: 'nearest' }); } });
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
    const found = tooLong() ? [] : await ask('complete', { text: text.value, at: text.selectionStart }).catch(() => []);
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
