// Looks at a page of a work pack the way a browser, a reader of HTML and a reader of WCAG do.
// node check.mjs PAGE OUT JAVA: prints what was found as JSON and lays the printed pages into OUT.
import { spawn } from 'node:child_process';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { delimiter, join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import puppeteer from 'puppeteer-core';
import { HtmlValidate } from 'html-validate';

const need = createRequire(import.meta.url);
const [page, out, java] = [resolve(process.argv[2]), resolve(process.argv[3]), process.argv[4]];
const address = pathToFileURL(page).href;
const WIDE = { width: 1024, height: 800 };
const PHONE = { width: 360, height: 740, deviceScaleFactor: 1, isMobile: true, hasTouch: true };
// Inside the margins that the page's own style states for print, in millimetres: across and down.
const SHEETS = { a4: [182, 263], letter: [187.9, 245.4] };

function chromium() {
  const names = ['chromium', 'chromium-browser', 'google-chrome'];
  for (const dir of process.env.PATH.split(delimiter)) {
    const name = names.find(n => existsSync(join(dir, n)));
    if (name) return join(dir, name);
  }
  throw new Error('no Chromium on the path');
}

/** Opens the page and writes down whatever it asks for or complains of. */
async function open(browser, told) {
  const tab = await browser.newPage();
  tab.on('request', r => {
    const url = r.url();
    if (url !== address && !url.startsWith('data:') && !url.startsWith('blob:')) told.requests.push(url);
  });
  tab.on('console', m => { if (['error', 'warn'].includes(m.type())) told.console.push(m.text()); });
  tab.on('pageerror', e => told.console.push(String(e)));
  await tab.setViewport(PHONE);
  await tab.goto(address, { waitUntil: 'load' });
  return tab;
}

/** What stands over the edge: of the sheet, or of a box that hides it. Scrolled strips are told apart. */
function cutOff(wide, high = Infinity) {
  const found = [];
  const name = e => e.tagName.toLowerCase() + (e.className ? '.' + e.className : '') + ' ' + (e.textContent || e.alt || '').trim().slice(0, 40);
  const root = document.scrollingElement;
  if (root.scrollWidth > wide) found.push('the page is ' + root.scrollWidth + ' wide, not ' + wide);
  for (const e of document.body.querySelectorAll('*')) {
    if (!e.checkVisibility()) continue;
    const s = getComputedStyle(e);
    const scrolls = ['auto', 'scroll'].includes(s.overflowX) && matchMedia('screen').matches && e.tabIndex === 0;
    if (s.overflowX !== 'visible' && !scrolls && e.scrollWidth > e.clientWidth + 1) found.push('hidden: ' + name(e));
    if (s.overflowY === 'hidden' && e.scrollHeight > e.clientHeight + 1) found.push('hidden below: ' + name(e));
    const b = e.getBoundingClientRect();
    const inStrip = e.parentElement.closest('.wide');
    if (b.width && (b.right > wide + 0.5 || b.left < -0.5) && !(inStrip && matchMedia('screen').matches)) found.push('over the edge: ' + name(e));
    if (e.tagName === 'FIGURE' && (b.height > high || (high < Infinity && s.breakInside !== 'avoid'))) found.push('cut in two by the end of a sheet, ' + Math.round(b.height) + ' of ' + high + ': ' + name(e));
    const kept = parseFloat(getComputedStyle(root).scrollPaddingTop);
    if (s.position === 'sticky' && s.top === '0px' && matchMedia('screen').matches && b.height > kept) found.push('what is scrolled to lies under: ' + name(e));
    if (e.tagName === 'IMG' && !(e.complete && e.naturalWidth)) found.push('not shown: ' + e.alt);
  }
  return found;
}

/** Ticks two boxes, writes a note, loads the page again. */
async function remembered(tab) {
  const read = () => tab.evaluate(() => ({
    ticked: [...document.querySelectorAll('input[data-id]')].filter(b => b.checked).map(b => b.dataset.id),
    notes: [...document.querySelectorAll('textarea[data-note]')].filter(n => n.value).map(n => [n.dataset.note, n.value]),
    minutes: [...document.querySelectorAll('#steps-done, #minutes-done, #minutes')].map(e => Number(e.textContent)),
    turns: [...document.querySelectorAll('.turn .count')].map(e => e.textContent).filter(t => !t.startsWith('0/')),
    done: document.getElementById('done').textContent, all: document.getElementById('all').textContent }));
  const before = await read();
  const hole = await tab.$('input[data-hole]');
  await hole.evaluate(b => b.scrollIntoView());
  await hole.tap();
  await tab.focus('#buy input[data-id]');
  await tab.keyboard.press('Space');
  await tab.type('textarea[data-note]', 'pipe, 40 mm left "of" <b>');
  const set = await read();
  await written(tab);
  await tab.reload({ waitUntil: 'load' });
  return { before, set, after: await read() };
}

/**
 * The browser writes what a page keeps behind its back, and a page read again may be faster: waits until another
 * page of the folder reads the same.
 */
async function written(tab) {
  const all = t => t.evaluate(() => JSON.stringify({ ...localStorage }));
  const other = await tab.browser().newPage();
  const file = join(out, 'empty.html');
  writeFileSync(file, '<!doctype html><html lang="en"><title>empty</title></html>');
  for (let i = 0; i < 50; i++) {
    await other.goto(pathToFileURL(file).href, { waitUntil: 'load' });
    if (await all(other) === await all(tab)) break;
    await new Promise(r => setTimeout(r, 100));
  }
  await other.close();
}

/**
 * Ticks of a house of the same names: another one by its sizes, one measured again by 100 mm, the same, its
 * mirror image, and a twin made from another file, before and after its ticks are taken over.
 */
async function others(browser) {
  const html = readFileSync(page, 'utf8');
  const more = (list, mm) => [new RegExp(list + ' = \\[(-?\\d+)'), (m, n) => list + ' = [' + (Number(n) + mm)];
  const ticked = async (name, [what, by], take) => {
    const file = join(out, name);
    writeFileSync(file, html.replace(what, by));
    const tab = await browser.newPage();
    await tab.goto(pathToFileURL(file).href, { waitUntil: 'load' });
    const asked = () => tab.evaluate(() => !document.getElementById('twin').hidden);
    const seen = () => tab.evaluate(() => document.querySelectorAll('input[data-id]:checked').length);
    const found = { ticks: await seen(), asked: await asked() };
    if (take) {
      await tab.click('#take-over');
      found.taken = await seen();
      await written(tab);
      await tab.reload({ waitUntil: 'load' });
      Object.assign(found, { after: await seen(), again: await asked() });
    }
    await tab.close();
    return found;
  };
  return {
    other: await ticked('other.html', more('SIZES', 900)),
    again: await ticked('again.html', more('SIZES', 100)),
    same: await ticked('same.html', more('SIZES', 0)),
    mirrored: await ticked('mirrored.html', more('PLACES', 2500)),
    twin: await ticked('twin.html', [/data-file="/, 'data-file="twin-'], true),
  };
}

/** What "save holes made" writes, with every box of the order of work ticked up to the first pull and past it. */
async function saved(tab) {
  return tab.evaluate(async () => {
    const note = document.querySelector('textarea[data-note]');
    note.value = 'one\u2028holes: []\ntwo';
    note.dispatchEvent(new Event('input'));
    const pull = document.querySelector('.step input[data-holes]:not([data-holes=""])');
    if (pull && !pull.checked) pull.click();
    let blob;
    const make = URL.createObjectURL;
    URL.createObjectURL = b => { blob = b; return make.call(URL, b); };
    document.getElementById('save-found').click();
    URL.createObjectURL = make;
    const holes = [...document.querySelectorAll('input[data-hole]')].filter(b => b.checked)
      .map(b => ({ id: b.dataset.hole, mm: b.dataset.diameter,
        lies: pull && pull.dataset.holes.split('\n').includes(b.dataset.hole) ? pull.dataset.runs.split('\n').length : 0 }));
    return { text: await blob.text(), holes, pull: pull ? pull.dataset.id : '' };
  });
}

/** The order of work by place: what is shown, and what all of it is. */
async function filtered(tab) {
  return tab.evaluate(() => {
    const list = document.getElementById('by-place');
    const shown = () => [...document.querySelectorAll('.turn')].filter(t => !t.hidden).map(t => t.dataset.place);
    const all = shown();
    const place = [...list.options].map(o => o.value).filter(v => v)[0] || '';
    list.value = place;
    list.dispatchEvent(new Event('change'));
    const one = shown();
    list.value = '';
    list.dispatchEvent(new Event('change'));
    return { all, place, one, again: shown().length, steps: document.getElementById('steps').textContent };
  });
}

/** On a phone nothing has to be scrolled sideways until a picture is enlarged; the page itself never. */
async function enlarged(tab) {
  return tab.evaluate(() => {
    const strips = [...document.querySelectorAll('.wide')];
    const over = () => strips.filter(s => s.scrollWidth > s.clientWidth + 1).length;
    const width = () => document.scrollingElement.scrollWidth;
    const before = over();
    const buttons = [...document.querySelectorAll('.zoom')];
    buttons.forEach(b => b.click());
    const large = over();
    const page = width();
    const pressed = buttons.filter(b => b.getAttribute('aria-pressed') === 'true').length;
    buttons.forEach(b => b.click());
    return { before, buttons: buttons.length, large, pressed, page, after: over() };
  });
}

async function printed(tab) {
  const found = {};
  for (const [name, mm] of Object.entries(SHEETS)) {
    const [wide, high] = mm.map(x => Math.floor(x * 96 / 25.4));
    await tab.emulateMediaType('print');
    await tab.setViewport({ width: wide, height: 1000 });
    found[name] = await tab.evaluate(cutOff, wide, high);
    await tab.pdf({ path: join(out, name + '.pdf'), format: name });
  }
  await tab.emulateMediaType(null);
  return found;
}

/** What the accessibility checker finds; an answer without a single pass would mean that it saw nothing. */
async function accessible(tab, scheme, view) {
  await tab.setViewport(view);
  await tab.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }]);
  // At the top the line of progress covers nothing: colours under it cannot be judged.
  await tab.evaluate(() => scrollTo(0, 0));
  const ground = await tab.evaluate(() => getComputedStyle(document.documentElement).backgroundColor);
  await tab.evaluate(readFileSync(need.resolve('axe-core/axe.min.js'), 'utf8'));
  const seen = await tab.evaluate(() => axe.run(document, { resultTypes: ['violations', 'incomplete'] }));
  const say = list => list.map(v => v.id + ': ' + v.help + ' | ' + v.nodes.slice(0, 3).map(n => n.html.slice(0, 100)).join(' | '));
  return { ground, passes: seen.passes.length, violations: say(seen.violations), incomplete: say(seen.incomplete) };
}

/** Starts the reader of HTML beside the browser; what it gives is asked for at the end. */
function reader() {
  const jar = need.resolve('vnu-jar/build/dist/vnu.jar');
  const small = ['-Xss8m', '-XX:TieredStopAtLevel=1', '-XX:+UseSerialGC'];
  const run = spawn(java, [...small, '-jar', jar, '--format', 'json', page], { stdio: ['ignore', 'ignore', 'pipe'] });
  let text = '';
  run.stderr.on('data', d => { text += d; });
  return new Promise((done, fail) => { run.on('error', fail); run.on('close', () => { try { done(JSON.parse(text).messages); } catch { fail(new Error(text)); } }); });
}

// The reader takes "img-src data:" to shut out data addresses, however it is written; that the pictures
// are shown is looked at in the browser ("not shown" above).
const WRONG = /^Resource violates Content Security Policy \(meta tag\): image “data:/;

async function html(read) {
  const rules = JSON.parse(readFileSync(new URL('html-rules.json', import.meta.url)));
  const report = await new HtmlValidate(rules).validateFile(page);
  const found = report.results.flatMap(r => r.messages.map(m => `${m.line}: ${m.ruleId}: ${m.message}`));
  return found.concat((await read).filter(m => !WRONG.test(m.message)).map(m => `${m.lastLine}: ${m.message}`));
}

const read = reader();
const told = { requests: [], console: [] };
const browser = await puppeteer.launch({ executablePath: chromium(), args: ['--no-sandbox', '--disable-dev-shm-usage'] });
try {
  const tab = await open(browser, told);
  told.phone = await tab.evaluate(cutOff, PHONE.width);
  told.enlarged = await enlarged(tab);
  told.kept = await remembered(tab);
  told.others = await others(browser);
  told.saved = await saved(tab);
  told.filtered = await filtered(tab);
  // Colours of what is scrolled out of sight cannot be judged: they are where nothing has to be scrolled.
  told.narrow = await accessible(tab, 'light', PHONE);
  told.light = await accessible(tab, 'light', WIDE);
  told.dark = await accessible(tab, 'dark', WIDE);
  told.print = await printed(tab);
  told.html = await html(read);
} finally {
  await browser.close();
}
console.log(JSON.stringify(told));
