// Brings recipe, core and answer together.
import { insert, showBest, showFaults, showMending, showRanking, showSheet, wayOfStyle } from "./answer.js";
import { openCore } from "./core.js";
import { byId, element } from "./element.js";
import { Form } from "./form.js";
import { OwnSheet } from "./judge.js";
import { addressOf, keepRecipe, keptRecipe, recipeIn } from "./keep.js";
import { asked, emptyRecipe, History, isBegun } from "./recipe.js";

const SETTLED = 250; // milliseconds without a change after which what takes longer is worked out
const demoBeers = JSON.parse(byId("demo-beers").textContent);

class Page {
  constructor(core, shelf, recipe) {
    this.core = core;
    this.recipe = recipe;
    this.history = new History(recipe);
    this.form = new Form(byId("recipe-form"), shelf, (changed, at) => this.changed(at));
    this.form.show(recipe);
    this.view = "sheet";
    this.own = new OwnSheet(byId("own-sheet"), shelf.sections, {
      change: () => this.showView(),
      open: (scores, notes) => this.explain(scores, notes),
      cannotKeep: () => this.tellCannotKeep(),
    });
    this.#listen();
    this.showView();
    this.refresh();
  }

  // After each change of the recipe. `at` is where, or null for a change of its shape.
  changed(at, { isStep = false } = {}) {
    this.history.note(this.recipe, at, performance.now());
    this.refresh();
    this.keep(isStep);
  }

  // Another recipe in the place of this one, which the way back leads to.
  replace(recipe, isStep = true) {
    this.recipe = recipe;
    this.form.show(recipe);
    this.changed(null, { isStep });
  }

  step(by) {
    this.recipe = this.history.step(by);
    this.form.show(this.recipe);
    this.refresh();
    this.keep(false);
  }

  enter(way) {
    const style = way;
    this.recipe.style = style;
    this.form.show(this.recipe);
    this.changed(null, { isStep: true });
    tell(`Entered as ${style.split("/")[1]} ${this.form.styleTitle(style)}.`);
  }

  async keep(isStep) {
    if (!keepRecipe(this.recipe)) this.tellCannotKeep();
    clearTimeout(this.addressing);
    const write = async () => {
      const address = await addressOf(this.recipe);
      if (address === location.hash) return;
      history[isStep ? "pushState" : "replaceState"](null, "", address);
    };
    if (isStep) await write();
    else this.addressing = setTimeout(write, SETTLED);
  }

  tellCannotKeep() {
    byId("not-kept").hidden = false;
  }

  // What is asked of the core about the recipe as it stands.
  question(ask, more = {}) {
    const { question, left } = asked(this.recipe);
    return { question: { ask, recipe: question, ...more }, left };
  }

  async refresh() {
    this.#toolbar();
    this.stale = true;
    clearTimeout(this.settling);
    this.settling = setTimeout(() => this.settle(), SETTLED);
    byId("answer").toggleAttribute("data-begun", isBegun(this.recipe));
    if (!isBegun(this.recipe)) {
      this.form.mark([]);
      showFaults([]);
      return;
    }
    if (this.recipe.style) await this.check();
    else if (this.leading) await this.check(this.leading);
  }

  async check(style) {
    const began = performance.now();
    const { question, left } = this.question("check", style ? { style } : {});
    const answer = await this.core.quick(question);
    if (!answer) return;
    if (!this.#sound(answer, left)) return;
    showSheet(answer);
    byId("not-entered").hidden = !style;
    byId("answer").dataset.milliseconds = (performance.now() - began).toFixed(1);
    byId("answer").dataset.coreMilliseconds = answer.milliseconds.toFixed(1);
  }

  // Whether there is an answer; if not, what is wrong is shown at its fields, and the rest above the report.
  #sound(answer, left) {
    const faults = (answer.faults ?? []).map((fault) => ({ ...fault, at: fault.at && left(fault.at) }));
    const unplaced = this.form.mark(faults);
    showFaults(unplaced);
    byId("answer").toggleAttribute("data-faulty", faults.length > 0);
    byId("answer").setAttribute("aria-busy", "false");
    return faults.length === 0;
  }

  // Where to enter, and in the views that are open what takes longer.
  async settle() {
    if (!isBegun(this.recipe)) return;
    await this.rank();
    if (this.view === "mending") await this.mend();
    this.own.askAgain();
    const risk = byId("in-short").querySelector("dd")?.firstChild.textContent;
    if (risk && !this.own.isSealed) announce(`${risk} points of 50 at risk.`);
  }

  async rank() {
    const began = performance.now();
    const guide = byId("guide").value;
    const { question, left } = this.question("rank", { guide });
    const answer = await this.core.thorough(question);
    if (!answer) return;
    if (answer.faults) {
      this.#sound(answer, left);
      return;
    }
    const enter = (way) => this.enter(way);
    showRanking(answer, enter, this.recipe.style);
    showBest(answer, enter, this.recipe.style);
    byId("ranking-report").dataset.milliseconds = (performance.now() - began).toFixed(1);
    byId("ranking-report").dataset.coreMilliseconds = answer.milliseconds.toFixed(1);
    const first = answer.document.ranking[0];
    this.leading = first && wayOfStyle(first.style);
    if (!this.recipe.style && this.leading) await this.check(this.leading);
  }

  async mend() {
    const report = byId("mending-report");
    const key = JSON.stringify([this.recipe, this.leading, byId("stage").value]);
    if (this.mendedFor === key) return;
    report.setAttribute("aria-busy", "true");
    const style = this.recipe.style ? {} : { style: this.leading };
    const { question } = this.question("mend", { stage: byId("stage").value, ...style });
    const answer = await this.core.thorough(question);
    if (!answer) return;
    report.setAttribute("aria-busy", "false");
    if (answer.faults) return;
    this.mendedFor = key;
    showMending(answer, (recipe, number) => {
      this.replace(recipe);
      tell(`Way ${number} is in the recipe. Undo takes it back.`);
      this.select("sheet");
    });
  }

  async explain(scores, notes) {
    const style = this.recipe.style ? {} : { style: this.leading };
    const { question } = this.question("explain", { scores, notes, ...style });
    const answer = await this.core.thorough(question);
    if (!answer) return;
    const report = byId("judge-report");
    if (answer.faults) {
      showFaults(answer.faults);
      return;
    }
    insert(report, answer.article);
  }

  async openText(text, file, pick = "") {
    const answer = await this.core.quick({ ask: "read", text, file, pick }, "read");
    if (!answer) return;
    if (answer.faults) {
      tellFaults(`${file} was not opened. The recipe here is as it was.`, answer.faults, (choice) => this.openText(text, file, choice));
      return;
    }
    this.replace(answer.recipe);
    const count = answer.remarks.length;
    tell(`${answer.recipe.name} is open${count ? `; ${count} things to know of how it was read` : ""}.`, answer.remarks.map(({ kind, text: words }) => `${kind}: ${words}`));
  }

  async openFile(file) {
    const most = 8_000_000;
    if (file.size > most) {
      tellFaults(`${file.name} was not opened.`, [{ found: `${file.size} bytes`, expected: `a recipe of at most ${most}` }]);
      return;
    }
    await this.openText(await file.text(), file.name);
  }

  async save(to) {
    const { question } = this.question("write", { to });
    const answer = await this.core.quick(question, "write");
    if (!answer) return;
    if (answer.faults) {
      tellFaults("Nothing was saved: the recipe is not whole yet.", answer.faults);
      return;
    }
    const name = fileName(this.recipe.name) + (to === "beerjson" ? ".json" : ".yaml");
    download(name, answer.text);
    tell(`Saved as ${name}.`, answer.remarks.map(({ kind, text }) => `${kind}: ${text}`));
  }

  async share() {
    const address = location.href.split("#")[0] + (await addressOf(this.recipe));
    history.replaceState(null, "", address);
    try {
      await navigator.clipboard.writeText(address);
      tell("The link is copied. It holds the whole recipe; nothing was sent anywhere.");
    } catch {
      const box = element("input", { value: address, readonly: true, "aria-label": "Link with the recipe" });
      tell("The link holds the whole recipe. Copy it from here:", [], box);
      box.select();
    }
  }

  select(view) {
    this.view = view;
    this.showView();
    if (view === "mending" && !this.own.isSealed) this.mend();
  }

  showView() {
    const sealed = this.own.isSealed;
    document.body.toggleAttribute("data-sealed", sealed);
    for (const tab of document.querySelectorAll("[role=tab]")) {
      const chosen = tab.id === `tab-${this.view}`;
      tab.setAttribute("aria-selected", String(chosen));
      tab.tabIndex = chosen ? 0 : -1;
      byId(tab.getAttribute("aria-controls")).hidden = !chosen || (sealed && this.view !== "judge");
    }
    byId("sealed").hidden = !sealed || this.view === "judge";
  }

  #toolbar() {
    byId("undo").disabled = !this.history.canUndo;
    byId("redo").disabled = !this.history.canRedo;
    document.title = `${this.recipe.name || "Recipe"} – Entrywise`;
  }

  #listen() {
    const on = (id, event, act) => byId(id).addEventListener(event, act);
    on("new", "click", () => {
      this.leading = undefined;
      this.replace(emptyRecipe());
      byId("at-name")?.select();
      tell("An empty recipe. Undo brings the last one back.");
    });
    on("open", "click", () => byId("file").click());
    on("file", "change", async ({ target }) => {
      if (target.files[0]) await this.openFile(target.files[0]);
      target.value = "";
    });
    on("demo", "change", async ({ target }) => {
      const chosen = demoBeers.find(({ file }) => file === target.value);
      target.value = "";
      if (chosen) await this.openText(chosen.text, chosen.file);
    });
    on("save", "click", () => this.save("recipe"));
    on("save-beerjson", "click", () => this.save("beerjson"));
    on("share", "click", () => this.share());
    on("undo", "click", () => this.step(-1));
    on("redo", "click", () => this.step(1));
    on("guide", "change", () => this.rank());
    on("stage", "change", () => this.mend());
    on("to-own-sheet", "click", () => this.select("judge"));
    on("break-seal", "click", () => this.own.leave());
    document.querySelector(".skip").addEventListener("click", (event) => {
      event.preventDefault();
      showPane("answer");
      byId("answer").focus();
    });
    on("show-recipe", "click", () => showPane("recipe"));
    on("show-answer", "click", () => showPane("answer"));
    this.#listenToTabs();
    this.#listenToKeys();
    this.#listenToDrops();
    addEventListener("popstate", () => this.#goTo(location.hash));
    addEventListener("hashchange", () => this.#goTo(location.hash));
  }

  async #goTo(address) {
    if (address === (await addressOf(this.recipe))) return;
    const recipe = await recipeIn(address);
    if (recipe) {
      this.recipe = recipe;
      this.history.note(recipe, null, performance.now());
      this.form.show(recipe);
      this.refresh();
      if (!keepRecipe(recipe)) this.tellCannotKeep();
    } else if (recipe === undefined) {
      tellFaults("This link holds no recipe. The recipe here is as it was.", []);
    }
  }

  #listenToTabs() {
    const tabs = [...document.querySelectorAll("[role=tab]")];
    for (const tab of tabs) {
      tab.addEventListener("click", () => this.select(tab.id.slice("tab-".length)));
      tab.addEventListener("keydown", (event) => {
        const step = { ArrowRight: 1, ArrowLeft: -1 }[event.key];
        const place = { Home: 0, End: tabs.length - 1 }[event.key] ?? (step && (tabs.indexOf(tab) + step + tabs.length) % tabs.length);
        if (place === undefined) return;
        event.preventDefault();
        tabs[place].focus();
        this.select(tabs[place].id.slice("tab-".length));
      });
    }
  }

  #listenToKeys() {
    addEventListener("keydown", (event) => {
      if (!(event.ctrlKey || event.metaKey) || event.altKey || event.target.closest?.(".own-sheet")) return;
      const key = event.key.toLowerCase();
      const by = key === "z" ? (event.shiftKey ? 1 : -1) : key === "y" ? 1 : 0;
      if (by === 0) return;
      event.preventDefault();
      if (by < 0 ? this.history.canUndo : this.history.canRedo) this.step(by);
    });
  }

  #listenToDrops() {
    addEventListener("dragover", (event) => {
      if (!event.dataTransfer.types.includes("Files")) return;
      event.preventDefault();
      document.body.toggleAttribute("data-dragging", true);
    });
    addEventListener("dragleave", (event) => {
      if (!event.relatedTarget) document.body.removeAttribute("data-dragging");
    });
    addEventListener("drop", async (event) => {
      document.body.removeAttribute("data-dragging");
      if (!event.dataTransfer.files[0]) return;
      event.preventDefault();
      await this.openFile(event.dataTransfer.files[0]);
    });
    addEventListener("paste", async (event) => {
      if (event.target.closest?.("input, textarea")) return;
      const text = event.clipboardData.getData("text/plain");
      if (text.trim()) await this.openText(text, "pasted text");
    });
  }
}

// On a narrow screen one of the two is in sight.
function showPane(pane) {
  document.body.dataset.pane = pane;
  byId("show-recipe").setAttribute("aria-pressed", String(pane === "recipe"));
  byId("show-answer").setAttribute("aria-pressed", String(pane === "answer"));
  scrollTo(0, 0);
}

const announce = (text) => {
  byId("spoken").textContent = text;
};

function notice(kind, text, ...more) {
  const close = element("button", { type: "button", class: "remove", "aria-label": "Close", onclick: () => box.replaceChildren() }, "✕");
  const box = byId("notice");
  box.replaceChildren(element("div", { class: `notice ${kind}` }, element("p", {}, text), ...more, close));
}

const listOf = (lines) => (lines.length ? element("ul", {}, ...lines.map((line) => element("li", {}, line))) : null);

function tell(text, lines = [], extra = null) {
  const list = listOf(lines);
  notice("good", text, list && element("details", {}, element("summary", {}, "What there is to know"), list), extra);
}

function tellFaults(text, faults, pick) {
  const lines = faults.map(({ line, column, found, expected, nearest, remedy }) => {
    const place = line ? `Line ${line}${column ? `, column ${column}` : ""}: ` : "";
    const words = remedy?.includes("--pick") ? "" : (remedy ?? "");
    return `${place}found ${found}, expected ${expected}${nearest ? `; did you mean ${nearest}?` : "."} ${words}`.trim();
  });
  const several = pick && faults.some(({ remedy }) => remedy?.includes("--pick"));
  notice("bad", text, listOf(lines), several ? pickOne(pick) : null);
}

// A file of several recipes: which one, by its number or name.
function pickOne(pick) {
  const which = element("input", { id: "which-one", autocomplete: "off" });
  const form = element("form", { class: "pick" }, element("label", { for: "which-one" }, "Which one, by number or name"), which, element("button", { type: "submit" }, "Open it"));
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    pick(which.value);
  });
  return form;
}

const fileName = (name) => (name ?? "").toLowerCase().replaceAll(/[^\p{L}\p{N}]+/gu, "-").replaceAll(/^-+|-+$/g, "").slice(0, 60) || "recipe";

function download(name, text) {
  const address = URL.createObjectURL(new Blob([text], { type: "text/plain" }));
  element("a", { href: address, download: name }).click();
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
}

async function firstRecipe(core) {
  const shared = await recipeIn(location.hash);
  if (shared === undefined) tellFaults("This link holds no recipe.", []);
  const kept = shared ?? keptRecipe();
  if (kept) return kept;
  const first = demoBeers.find(({ file }) => file === "slack-tide.yaml") ?? demoBeers[0];
  return (await core.quick({ ask: "read", text: first.text, file: first.file })).recipe;
}

async function start() {
  byId("demo").append(...demoBeers.map(({ file, name }) => element("option", { value: file }, name)));
  showPane("recipe");
  try {
    const core = await openCore(byId("core").textContent);
    const shelf = await core.quick({ ask: "shelf" });
    new Page(core, shelf, await firstRecipe(core));
    document.body.dataset.ready = "true";
  } catch (error) {
    byId("loading").textContent = `This browser cannot run the core of the page (${error.message}). One of the last few years can.`;
  }
}

start();
