// Opens pages for phones from the disk in Chromium, 360 pixels wide, and uses them:
// npm install puppeteer-core. A picture is left beside each page.
const path = require('path');
const { pathToFileURL } = require('url');
const puppeteer = require('puppeteer-core');

const fail = (words) => { throw new Error(words); };

async function open(browser, name) {
  const page = await browser.newPage();
  await page.setViewport({ width: 360, height: 740, deviceScaleFactor: 2, hasTouch: true, isMobile: true });
  const wrong = [];
  page.on('pageerror', (e) => wrong.push(e.message));
  page.on('console', (m) => m.type() === 'error' && wrong.push(m.text()));
  page.on('request', (r) => r.url() !== pathToFileURL(path.resolve(name)).href && wrong.push(r.url()));
  await page.goto(pathToFileURL(path.resolve(name)).href);
  return { page, wrong };
}

async function use(browser, name) {
  const { page, wrong } = await open(browser, name);
  const wide = await page.evaluate(() => document.documentElement.scrollWidth);
  if (wide > 360) fail(`the page is ${wide} px wide`);
  const small = await page.$$eval('nav a, button', (all) =>
    all.filter((b) => b.offsetHeight > 0 && b.offsetHeight < 44).length);
  if (small > 0) fail(`${small} buttons too small for a thumb`);
  await page.screenshot({ path: name.replace(/html$/, 'phone.png') });

  const first = '#sheet-1';
  const before = await page.$eval(first + ' svg', (s) => s.getBoundingClientRect().width);
  await page.$eval(first + ' [data-job=in]', (b) => b.click());
  const after = await page.$eval(first + ' svg', (s) => s.getBoundingClientRect().width);
  if (Math.abs(after / before - 1.5) > 0.01) fail(`zoomed by ${after / before}`);
  await (await page.$(first)).scrollIntoView();
  await page.screenshot({ path: name.replace(/html$/, 'sheet.png') });

  await page.$eval('details', (d) => { d.open = true; });
  await page.$eval('details input', (box) => box.click());
  await page.reload();
  if (!(await page.$eval('details input', (box) => box.checked))) fail('a tick was forgotten');
  await page.$eval('details input', (box) => box.click());

  await page.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: 'dark' }]);
  const ground = await page.$eval('body', (b) => getComputedStyle(b).backgroundColor);
  if (!/rgb\((\d|[1-3]\d), /.test(ground)) fail('not dark: ' + ground);
  await page.$eval('#figures', (s) => s.scrollIntoView());
  await page.$eval('details', (d) => { d.open = true; });
  await page.screenshot({ path: name.replace(/html$/, 'dark.png') });
  await page.emulateMediaFeatures([]);
  const pdf = await page.pdf({ format: 'A4', timeout: 120000 });
  const sheets = await page.$$eval('.sheet', (s) => s.length);
  if (wrong.length > 0) fail(wrong.join('; '));
  await page.close();
  return `${sheets} sheets, ticks kept, nothing fetched, prints ${(pdf.length / 1024).toFixed(0)} kB`;
}

(async () => {
  const browser = await puppeteer.launch({
    executablePath: process.env.CHROMIUM || '/usr/bin/chromium',
    args: ['--no-sandbox', '--allow-file-access-from-files'],
  });
  try {
    for (const name of process.argv.slice(2)) console.log(await use(browser, name));
  } catch (e) {
    console.error(e.message);
    process.exitCode = 1;
  }
  await browser.close();
})();
