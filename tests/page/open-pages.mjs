// Opens pages as readers do and tells what is wrong with them. Use: node open-pages.mjs kinds|time BROWSER FOLDER
import { readFileSync, readdirSync, statSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { chromium } from "playwright-core";

const [what, browserFile, folder] = process.argv.slice(2);
const axe = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

const screens = [
  { name: "phone", viewport: { width: 320, height: 640 }, colorScheme: "light", thorough: true },
  { name: "phone, dark", viewport: { width: 320, height: 640 }, colorScheme: "dark" },
  { name: "laptop", viewport: { width: 1280, height: 800 }, colorScheme: "light" },
  { name: "laptop, dark", viewport: { width: 1280, height: 800 }, colorScheme: "dark", thorough: true },
  // What WCAG 2.2 calls zoom of 200 % on a laptop: half as many pixels of the page.
  { name: "laptop at 200 %", viewport: { width: 640, height: 400 }, colorScheme: "light" },
];

// The most sheets of paper that each kind of page may take.
const sheets = { check: 2, name: 2, rank: 2, mend: 2, explain: 2, several: 7, screen: 3 };
const mostBytes = { "screen-large": 3_000_000 };
const usualMostBytes = 300_000;

const names = {
  "name-markup": "</title><script>alert(1)</script><img src=x onerror=alert(2)> &amp; {{name}} 'quoted'",
  "name-right-to-left": "בירת הנמל – بيرة الميناء",
  "name-emoji": "🍺👩🏽‍🔬🏴‍☠️ Harbor 🌊",
  "name-long": "Saltmarsh".repeat(55) + "Ales!",
  // A character that turns the writing direction is shown as what it is.
  "name-turned": "Slack \\u{202E}edit\\u{202C} Tide",
};

const faults = [];
const browser = await chromium.launch({
  executablePath: browserFile,
  args: ["--no-sandbox", "--disable-dev-shm-usage"],
});

// Opens a page and has every request, error and dialog of it told.
async function open(file, options, told) {
  const context = await browser.newContext(options);
  const page = await context.newPage();
  const address = "file://" + file;
  page.on("console", (message) => ["error", "warning"].includes(message.type()) && told(`console: ${message.text()}`));
  page.on("pageerror", (error) => told(`error: ${error.message}`));
  page.on("dialog", async (dialog) => {
    told(`dialog: ${dialog.message()}`);
    await dialog.dismiss();
  });
  page.on("request", (request) => request.url() !== address && told(`request of ${request.url()}`));
  await page.goto(address);
  return { page, context };
}

// At every size and in both schemes; the whole of axe at the two that differ most.
async function lookAt(page, thorough, told) {
  for (const screen of screens) {
    await page.setViewportSize(screen.viewport);
    await page.emulateMedia({ colorScheme: screen.colorScheme });
    const [content, room] = await page.evaluate(() => [
      document.documentElement.scrollWidth,
      document.documentElement.clientWidth,
    ]);
    if (content > room) told(`${screen.name} scrolls sideways: ${content} wide in ${room}`);
    if (thorough && screen.thorough) await runAxe(page, (text) => told(`${screen.name}: ${text}`));
  }
  const unnamed = await page.evaluate(
    () => [...document.querySelectorAll("svg")].filter((svg) => svg.getAttribute("role") !== "img" || !svg.querySelector(":scope > title")?.textContent).length,
  );
  if (unnamed) told(`${unnamed} pictures without words`);
}

async function runAxe(page, told) {
  await page.evaluate(axe);
  const violations = await page.evaluate(async () => {
    const tags = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice"];
    const result = await window.axe.run(document, { runOnly: tags, resultTypes: ["violations"] });
    return result.violations.map((each) => `${each.id}: ${each.help}, at ${each.nodes.slice(0, 3).map((node) => node.target.join(" ")).join("; ")}`);
  });
  violations.forEach(told);
}

// Everything that can be used is reached by the keyboard, in the order of the page.
async function walkByKeyboard(page, told) {
  await page.setViewportSize({ width: 1280, height: 800 });
  const wanted = await page.evaluate(
    () => [...document.querySelectorAll("a[href], button, select, summary")].filter((element) => element.checkVisibility()).slice(0, 12).map((element) => element.outerHTML.slice(0, 60)),
  );
  for (const element of wanted) {
    await page.keyboard.press("Tab");
    const got = await page.evaluate(() => document.activeElement.outerHTML.slice(0, 60));
    if (got !== element) {
      told(`the keyboard reaches ${got} instead of ${element}`);
      break;
    }
  }
}

async function print(page, format, most, told) {
  const pdf = (await page.pdf({ format, margin: undefined })).toString("latin1");
  const count = (pdf.match(/\/Type\s*\/Page\b(?!s)/g) ?? []).length;
  if (count < 1 || count > most) told(`${count} sheets of ${format}, expected 1 to ${most}`);
  return count;
}

async function readName(page, name, told) {
  await page.setViewportSize({ width: 320, height: 640 });
  const [heading, title, foreign, cut] = await page.evaluate(() => [
    document.querySelector("h1").textContent,
    document.title,
    document.querySelectorAll("script, img").length,
    document.querySelector("h1").scrollWidth > document.querySelector("h1").clientWidth,
  ]);
  if (heading !== name) told(`the name reads ${heading}`);
  if (!title.includes(name)) told(`the title reads ${title}`);
  if (foreign) told(`${foreign} elements that came from the name`);
  if (cut) told("the name is cut off");
}

async function secondsToOpen(file, told) {
  let least = Infinity;
  for (let time = 0; time < 3 || (time < 12 && least > 1); ++time) {
    const { page, context } = await open(file, { viewport: { width: 1280, height: 800 } }, told);
    least = Math.min(least, await page.evaluate(() => performance.getEntriesByType("navigation")[0].duration / 1000));
    await context.close();
  }
  return least;
}

// Each name of the evening is shown as it is, and does nothing.
async function readNames(page, told) {
  const [shown, foreign] = await page.evaluate(() => [
    [...document.querySelectorAll(".entries summary")].map((summary) => summary.textContent),
    document.querySelectorAll(".entries img, .entries script, .entries b").length,
  ]);
  for (const name of Object.values(names)) if (!shown.includes(name)) told(`no row is named ${name}`);
  if (foreign) told(`${foreign} elements that came from a name`);
}

async function openLargeEvening(file, told) {
  const seconds = await secondsToOpen(file, told);
  if (seconds > 1) told(`opened in ${seconds.toFixed(1)} s`);
  return seconds;
}

// Sorts, filters, opens and follows a link, as an organizer would.
async function useEvening(file, told) {
  const { page, context } = await open(file, { viewport: { width: 1280, height: 800 } }, told);
  const column = (index) => page.evaluate((at) => [...document.querySelectorAll(".entries tbody tr")].filter((row) => !row.hidden).map((row) => row.cells[at].textContent.trim()), index);
  const rows = await column(0);
  await page.getByRole("button", { name: "At risk" }).click();
  const points = (await column(4)).map((text) => (text === "–" ? -1 : parseFloat(text)));
  if (points.some((each, index) => each < points[index - 1])) told("not sorted by points at risk");
  await page.getByRole("button", { name: "Entry" }).click();
  const entries = (await column(0)).map(Number);
  if (entries.some((each, index) => each < entries[index - 1])) told("not sorted by the number of the entry");
  const category = await page.locator("select[name=category] option").nth(1).textContent();
  await page.selectOption("select[name=category]", category);
  const shown = await column(2);
  if (!shown.length || shown.length === rows.length || shown.some((text) => text !== category)) told(`the filter for ${category} shows ${shown}`);
  await page.locator("summary:visible").first().click();
  if (!(await page.locator("details[open] p").first().isVisible())) told("a row does not open its detail");
  const hidden = page.locator(".entries tr[hidden]").first();
  const link = page.locator(`.flights a[href="#${await hidden.getAttribute("id")}"]`);
  if (await link.count()) {
    const wanted = (await link.getAttribute("href")).slice(1);
    await link.click();
    await page.locator(`#${wanted} details[open]`).waitFor({ timeout: 2000 }).catch(() => told("a link of a flight does not open its entry"));
  }
  await context.close();

  const still = await open(file, { javaScriptEnabled: false }, told);
  const count = await still.page.locator(".entries tbody tr").count();
  if (count !== rows.length) told(`${count} rows without a script, ${rows.length} with one`);
  if (await still.page.locator("form.filter").isVisible()) told("shows a filter that does nothing without a script");
  await still.context.close();
}

if (what === "time") {
  const seconds = await openLargeEvening(path.join(folder, "screen-large.html"), (text) => faults.push(text));
  console.log(`a thousand entries: opened in ${seconds.toFixed(2)} s`);
}
for (const entry of what === "time" ? [] : readdirSync(folder).filter((name) => name.endsWith(".html")).sort()) {
  const name = entry.replace(/\.html$/, "");
  const kind = name.endsWith("-rank") ? "rank" : name.split("-")[0];
  const file = path.join(folder, entry);
  const told = (text) => faults.push(`${name}: ${text}`);
  const bytes = statSync(file).size;
  if (bytes > (mostBytes[name] ?? usualMostBytes)) told(`${bytes} bytes`);
  const { page, context } = await open(file, {}, told);
  const given = names[name.replace(/-rank$/, "")];
  // A thousand rows would take axe minutes, and a page of a few has every kind of row as well; nor does it mind a name.
  const isLarge = name === "screen-large";
  await lookAt(page, !isLarge && !given, told);
  await walkByKeyboard(page, told);
  if (given) await readName(page, given, told);
  const counts = [];
  if (name === "screen-names") await readNames(page, told);
  for (const format of isLarge ? [] : given ? ["A4"] : ["A4", "Letter"]) {
    counts.push(await print(page, format, sheets[kind], told));
  }
  await context.close();
  if (kind === "screen" && name !== "screen-names") await useEvening(file, told);
  console.log(`${name}: ${bytes} bytes${counts.length ? `, ${counts.join(" and ")} sheets` : ""}`);
}
await browser.close();
for (const fault of faults) console.error(fault);
process.exit(faults.length ? 1 : 0);
