// Ticks and notes stay in this browser, by the id of the work, so that a pack made again keeps them.
(() => {
  const key = 'holloway/' + KEY;
  const boxes = [...document.querySelectorAll('input[data-id]')];
  const notes = [...document.querySelectorAll('textarea[data-note]')];
  const told = document.getElementById('told');
  const FILE = document.querySelector('footer').dataset.file;
  const anew = () => ({ sizes: SIZES, places: PLACES, file: FILE, ticks: {}, notes: {} });
  let state = anew();
  let houses = [state];
  let stored = true;

  // Houses whose names are all the same are told apart by the sizes of their rooms and by where these
  // lie; what was measured again moves by less than this.
  const SAME_MM = 400, SHIFTED_MM = 1000;
  const off = (mine, theirs) => mine.length !== theirs.length ? Infinity
    : Math.max(0, ...mine.map((m, i) => Math.abs(m - theirs[i])));
  const alike = h => off(SIZES, h.sizes) <= SAME_MM && (!h.places || off(PLACES, h.places) <= SHIFTED_MM);
  const ask = document.getElementById('twin');

  // Twins differ in the name of the house file only: ticks of another file are taken over when asked.
  function mine() {
    const near = houses.filter(alike).sort((a, b) => off(SIZES, a.sizes) - off(SIZES, b.sizes));
    const own = near.find(h => h.file === FILE) || near.find(h => !h.file);
    state = own || anew();
    if (!own) houses.push(state);
    Object.assign(state, { sizes: SIZES, places: PLACES, file: FILE });
    // A test was ticked by its run once.
    for (const id of Object.keys(state.ticks)) if (id.startsWith('test/')) {
      state.ticks['step/' + id] = true;
      delete state.ticks[id];
    }
    const twin = near.find(h => h.file && h.file !== FILE && Object.keys(h.ticks).length);
    ask.hidden = !!own || !twin;
    if (ask.hidden) return;
    document.getElementById('twin-file').textContent = twin.file;
    document.getElementById('take-over').addEventListener('click', () => {
      Object.assign(state, { ticks: { ...twin.ticks }, notes: { ...twin.notes } });
      settle();
    });
    document.getElementById('begin-anew').addEventListener('click', settle);
  }

  function settle() {
    ask.hidden = true;
    write();
    show();
  }

  function read() {
    try {
      const text = localStorage.getItem(key);
      if (text) houses = JSON.parse(text);
      mine();
    } catch (e) {
      stored = false;
    }
  }

  function write() {
    try {
      // Nothing is kept of a house whose question nobody has answered yet.
      localStorage.setItem(key, JSON.stringify(houses.filter(h => h !== state || ask.hidden)));
    } catch (e) {
      stored = false;
    }
    document.getElementById('no-store').hidden = stored;
  }

  function show() {
    for (const b of boxes) b.checked = !!state.ticks[b.dataset.id];
    for (const n of notes) n.value = state.notes[n.dataset.note] || '';
    const ids = new Set(boxes.map(b => b.dataset.id));
    document.getElementById('done').textContent = [...ids].filter(i => state.ticks[i]).length;
    document.getElementById('all').textContent = ids.size;
    progress();
  }

  function save(name, text, type) {
    const a = document.createElement('a');
    a.href = URL.createObjectURL(new Blob([text], { type }));
    a.download = name;
    a.click();
    URL.revokeObjectURL(a.href);
    told.textContent = SAVED + ' ' + name;
  }

  // Of the plan: parts of minutes are added up first and rounded once, as the total above is.
  const minutes = list => Math.round(list.reduce((sum, b) => sum + Number(b.dataset.min), 0));

  // The work by itself: what is bought, labelled and brought along is counted above only.
  function progress() {
    const steps = [...document.querySelectorAll('.step input[data-id]')];
    document.getElementById('steps-done').textContent = steps.filter(b => b.checked).length;
    document.getElementById('steps').textContent = steps.length;
    document.getElementById('minutes-done').textContent = minutes(steps.filter(b => b.checked));
    document.getElementById('minutes').textContent = minutes(steps);
    for (const turn of document.querySelectorAll('.turn')) {
      const here = [...turn.querySelectorAll('input[data-id]')];
      turn.querySelector('.count').textContent = here.filter(b => b.checked).length + '/' + here.length
        + (minutes(here) ? ', ' + minutes(here.filter(b => b.checked)) + '/' + minutes(here) + ' min' : '');
    }
  }

  const turns = [...document.querySelectorAll('.turn')];
  const filters = ['place', 'person'].map(name => ({ name, list: document.getElementById('by-' + name) }));
  function filter() {
    for (const t of turns) t.hidden = filters.some(f => f.list.value && f.list.value !== t.dataset[f.name]);
  }
  for (const f of filters) {
    const values = [...new Set(turns.map(t => t.dataset[f.name]))].filter(v => v).sort();
    for (const v of values) f.list.append(new Option(v, v));
    f.list.parentElement.hidden = values.length < 2;
    f.list.addEventListener('change', filter);
  }

  // Cables lie in a hole once every pull that takes them through it is ticked.
  function lying(hole) {
    const pulls = boxes.filter(b => b.dataset.holes && b.dataset.holes.split('\n').includes(hole));
    const of = list => list.flatMap(b => b.dataset.runs.split('\n'));
    const open = new Set(of(pulls.filter(b => !b.checked)));
    return new Set(of(pulls.filter(b => b.checked)).filter(r => !open.has(r))).size;
  }

  function remarks() {
    const ids = Object.keys(state.notes).sort();
    // A remark ends with its line: what YAML takes for the end of one, or cannot read, is spelled out.
    const spelled = s => JSON.stringify(s).replace(/[\u007f-\u009f\u2028\u2029\ufeff\ufffe\uffff]/g,
      c => '\\u' + c.charCodeAt(0).toString(16).padStart(4, '0'));
    const line = id => '# ' + spelled(id) + ': ' + spelled(state.notes[id]) + '\n';
    return ids.map(line).join('');
  }

  function found() {
    const made = boxes.filter(b => b.checked && b.dataset.hole);
    const holes = made.map(b =>
      '  - { id: ' + JSON.stringify(b.dataset.hole) + ', diameter: ' + b.dataset.diameter
        + ' mm, cables: ' + lying(b.dataset.hole) + ' }\n').join('');
    return (made.length ? 'holes:\n' + holes : 'holes: []\n') + remarks();
  }

  // A picture fills the width of the screen until somebody wants to see more of it.
  for (const b of document.querySelectorAll('.zoom')) b.addEventListener('click', () => {
    const large = b.parentElement.classList.toggle('large');
    b.setAttribute('aria-pressed', large);
    b.textContent = large ? SMALLER : LARGER;
  });

  const fileName = HOUSE.toLowerCase().replace(/[^a-z0-9]+/g, '-');
  for (const b of boxes) b.addEventListener('change', () => {
    if (b.checked) state.ticks[b.dataset.id] = true; else delete state.ticks[b.dataset.id];
    ask.hidden = true;
    write();
    show();
  });
  for (const n of notes) n.addEventListener('input', () => {
    if (n.value) state.notes[n.dataset.note] = n.value; else delete state.notes[n.dataset.note];
    ask.hidden = true;
    write();
  });
  document.getElementById('save-ticks').addEventListener('click', () =>
    save(fileName + '.ticks.json', JSON.stringify({ ticks: state.ticks, notes: state.notes }, null, 1), 'application/json'));
  document.getElementById('save-found').addEventListener('click', () =>
    save(fileName + '.found.yaml', found(), 'text/yaml'));
  document.getElementById('load-ticks').addEventListener('change', async e => {
    try {
      const given = JSON.parse(await e.target.files[0].text());
      state.ticks = { ...given.ticks };
      state.notes = { ...given.notes };
      write();
      show();
      told.textContent = READ;
    } catch (wrong) {
      told.textContent = WRONG;
    }
  });
  read();
  write();
  show();
})();
