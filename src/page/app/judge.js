// The judge's own sheet, written before the prediction is opened, so that it does not lead the palate.
import { byId, element } from "./element.js";
import { keepSheet, keptSheet } from "./keep.js";

const freshSheet = () => ({ begun: false, opened: false, scores: {}, notes: {} });

export class OwnSheet {
  // `change(sheet)` whenever what may be seen changes, `open(scores, notes)` when the prediction is to be opened.
  constructor(root, sections, { change, open, cannotKeep }) {
    this.root = root;
    this.sections = sections;
    this.told = { change, open, cannotKeep };
    this.sheet = { ...freshSheet(), ...keptSheet() };
    this.show();
  }

  get isSealed() {
    return this.sheet.begun && !this.sheet.opened;
  }

  begin() {
    this.sheet = { ...freshSheet(), begun: true };
    this.#changed();
    byId("own-aroma")?.focus();
  }

  leave() {
    this.sheet = freshSheet();
    this.#changed();
  }

  // Asks again for what belongs to an opened sheet, as the recipe has changed.
  askAgain() {
    if (this.sheet.opened) this.told.open(this.scores, this.notes);
  }

  get scores() {
    return Object.fromEntries(Object.entries(this.sheet.scores).filter(([, points]) => points !== ""));
  }
  get notes() {
    return this.sections.flatMap(({ section }) => (this.sheet.notes[section] ?? "").split("\n")).map((line) => line.trim()).filter(Boolean);
  }

  show() {
    this.root.replaceChildren(...(this.sheet.begun ? this.#form() : this.#invitation()));
    byId("judge-report").hidden = !this.sheet.opened;
  }

  #invitation() {
    return [
      element("h2", {}, "Judge first, then compare"),
      element("p", { class: "lede" }, "Taste, write your own points and notes, then open the prediction: until then everything that is predicted stays sealed. Afterwards each note is traced to the recipe and your points stand beside those to expect."),
      element("p", {}, element("button", { type: "button", class: "main", id: "begin-sheet", onclick: () => this.begin() }, "Begin my sheet")),
    ];
  }

  #form() {
    const total = element("output", { id: "own-total", class: "figure" });
    const rows = this.sections.map((section) => this.#section(section));
    const opened = this.sheet.opened;
    const buttons = opened
      ? [element("button", { type: "button", onclick: () => this.begin() }, "Begin a new sheet"), element("button", { type: "button", onclick: () => this.leave() }, "Put the sheet away")]
      : [element("button", { type: "submit", class: "main" }, "Open the prediction"), element("button", { type: "button", onclick: () => this.leave() }, "Leave without a sheet")];
    const form = element(
      "form",
      { class: "own-sheet", novalidate: true },
      element("h2", {}, "My sheet"),
      element("p", { class: "quiet" }, opened ? "The prediction is open; changes below are compared at once." : "The prediction is sealed. Give points to every section; notes are one remark a line."),
      ...rows,
      element("p", { class: "own-sum" }, "Together ", total, " of 50"),
      element("p", { class: "fault", id: "own-fault", role: "alert" }),
      element("div", { class: "buttons" }, ...buttons),
    );
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      this.#openIfWhole();
    });
    this.total = total;
    this.#sum();
    return [form];
  }

  #section({ section, title, points }) {
    const name = title[0].toUpperCase() + title.slice(1);
    const score = element("input", {
      id: "own-" + section, type: "number", min: 0, max: points, step: 0.5, inputmode: "decimal", value: this.sheet.scores[section] ?? "",
      oninput: ({ target }) => this.#set("scores", section, target.value),
    });
    const notes = element("textarea", { id: "own-notes-" + section, rows: 2, oninput: ({ target }) => this.#set("notes", section, target.value) }, this.sheet.notes[section] ?? "");
    return element(
      "fieldset",
      {},
      element("legend", {}, name),
      element("div", { class: "field points" }, element("label", { for: score.id }, `Points of ${points}`), score),
      element("div", { class: "field wide" }, element("label", { for: notes.id }, "Notes"), notes),
    );
  }

  #set(kind, section, text) {
    this.sheet[kind][section] = text;
    this.#sum();
    this.#keep();
    this.askAgain();
  }

  #sum() {
    const given = Object.values(this.scores).map(Number);
    this.total.textContent = given.length ? String(given.reduce((sum, points) => sum + points, 0)) : "–";
  }

  #openIfWhole() {
    const wrong = this.sections.find(({ section, points }) => {
      const given = this.scores[section];
      return given === undefined || !(Number(given) >= 0 && Number(given) <= points);
    });
    if (wrong) {
      byId("own-fault").textContent = `${wrong.title[0].toUpperCase() + wrong.title.slice(1)} wants points from 0 to ${wrong.points}.`;
      byId("own-" + wrong.section).focus();
      return;
    }
    this.sheet.opened = true;
    this.#changed();
    this.askAgain();
    byId("judge-report").focus();
  }

  #changed() {
    this.#keep();
    this.show();
    this.told.change();
  }

  #keep() {
    if (!keepSheet(this.sheet)) this.told.cannotKeep();
  }
}
