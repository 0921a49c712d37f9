// Ticks and notes stay in this browser, by the id of the work, so that a pack made again keeps them.
(() => {
  const key = 'holloway/' + HOUSE;
  const boxes = [...document.querySelectorAll('input[data-id]')];
  const notes = [...document.querySelectorAll('textarea[data-note]')];
  const told = document.getElementById('told');
  let state = { ticks: {}, notes: {} };
  let stored = true;

  function read() {
    try {
      const text = localStorage.getItem(key);
      if (text) state = { ticks: {}, notes: {}, ...JSON.parse(text) };
    } catch (e) {
      stored = false;
    }
  }

  function write() {
    try {
      localStorage.setItem(key, JSON.stringify(state));
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
  }

  function save(name, text, type) {
    const a = document.createElement('a');
    a.href = URL.createObjectURL(new Blob([text], { type }));
    a.download = name;
    a.click();
    URL.revokeObjectURL(a.href);
    told.textContent = SAVED + ' ' + name;
  }

  function found() {
    const made = boxes.filter(b => b.checked && b.dataset.hole);
    if (!made.length) return 'holes: []\n';
    return 'holes:\n' + made.map(b =>
      '  - { id: ' + JSON.stringify(b.dataset.hole) + ', diameter: ' + b.dataset.diameter
        + ' mm, cables: 0 }\n').join('');
  }

  const fileName = HOUSE.toLowerCase().replace(/[^a-z0-9]+/g, '-');
  for (const b of boxes) b.addEventListener('change', () => {
    if (b.checked) state.ticks[b.dataset.id] = true; else delete state.ticks[b.dataset.id];
    write();
    show();
  });
  for (const n of notes) n.addEventListener('input', () => {
    if (n.value) state.notes[n.dataset.note] = n.value; else delete state.notes[n.dataset.note];
    write();
  });
  document.getElementById('save-ticks').addEventListener('click', () =>
    save(fileName + '.ticks.json', JSON.stringify(state, null, 1), 'application/json'));
  document.getElementById('save-found').addEventListener('click', () =>
    save(fileName + '.found.yaml', found(), 'text/yaml'));
  document.getElementById('load-ticks').addEventListener('change', async e => {
    try {
      const given = JSON.parse(await e.target.files[0].text());
      state = { ticks: { ...given.ticks }, notes: { ...given.notes } };
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
