// Goes over every HTML file of a folder in headless Chromium: axe-core at WCAG 2.1 AA and its best practices, wide, narrow and in print;
// nothing asked of the network; nothing hidden at the right edge of a narrow window. Writes what was found; leaves with 1 if there was anything.
// node check.mjs FOLDER BROWSER
import fs from 'node:fs';
import path from 'node:path';
import { createRequire } from 'node:module';
import { pathToFileURL } from 'node:url';

const [folder, browserPath] = process.argv.slice(2);
const require = createRequire(path.resolve(folder) + path.sep);
const puppeteer = require('puppeteer-core');
const axe = fs.readFileSync(require.resolve('axe-core/axe.min.js'), 'utf8');
const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'best-practice'];
const browser = await puppeteer.launch({ executablePath: browserPath, headless: true, args: ['--no-sandbox', '--disable-dev-shm-usage'] });
let found = 0;
let passes = 0;
let files = 0;
const undecided = new Set();
for (const file of fs.readdirSync(folder).filter(f => f.endsWith('.html')).sort()) {
  files++;
  for (const [name, width, media] of [['wide', 1100, 'screen'], ['narrow', 320, 'screen'], ['print', 794, 'print']]) {
    const page = await browser.newPage();
    const asked = [];
    page.on('request', r => asked.push(r.url()));
    await page.setViewport({ width, height: 900 });
    await page.emulateMediaType(media);
    await page.goto(pathToFileURL(path.resolve(folder, file)).href);
    const outside = asked.filter(u => !u.startsWith('file:') || !u.endsWith(file));
    outside.forEach(u => { found++; console.log(`${file}: asks for ${u}`); });
    await page.evaluate(axe);
    const result = await page.evaluate(tags => window.axe.run(document, { runOnly: { type: 'tag', values: tags } }), rules);
    passes += result.passes.length;
    for (const violation of result.violations) {
      found++;
      console.log(`${file} (${name}): ${violation.id}: ${violation.help}`);
      violation.nodes.slice(0, 3).forEach(n => console.log(`    ${n.html.slice(0, 160)}\n    ${n.failureSummary.replace(/\n/g, ' ')}`));
    }
    result.incomplete.forEach(i => undecided.add(`${i.id} (${i.nodes.length} places in ${file}, ${name}): ${i.nodes[0].html.slice(0, 120)}`));
    if (name === 'narrow') {
      const over = await page.evaluate(() => [...document.querySelectorAll('p, li, h1, h2, h3, textarea, input, .caution')]
        .filter(e => !e.closest('table, .graph, .spoken, .seen')).filter(e => e.getBoundingClientRect().right > 321).map(e => e.outerHTML.slice(0, 120)));
      over.slice(0, 3).forEach(e => { found++; console.log(`${file}: 1.4.10: over the edge at 320 pixels: ${e}`); });
    }
    await page.close();
  }
  console.log(`${file}: looked at, ${found} found so far`);
}
const version = await browser.version();
await browser.close();
undecided.forEach(u => console.log(`not decided by the rules, for a person to look at: ${u}`));
console.log(`${files} files, ${version}: ${found} found, ${passes} rules passed`);
process.exit(found > 0 || files === 0 ? 1 : 0);
