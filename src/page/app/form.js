// The recipe as a form. It tells each change and shows where the core found a fault; it decides nothing.
import { moved, parts as partsOf, sliderSpan, withUnit } from "./amount.js";
import { byId, element } from "./element.js";
import { parts } from "./fields.js";
import { keyOfName, nameKey, rowsOf, setAt, setRows, valueAt, wayOfRow } from "./recipe.js";

const idOf = (at) => "at-" + at.replaceAll(/[^\w]+/g, "-");

export class Form {
  // `tell(recipe, at)` after each change; `at` is null where a row came or went.
  constructor(root, shelf, tell) {
    this.root = root;
    this.shelf = shelf;
    this.tell = tell;
    this.opened = new Set();
    this.root.append(...this.#suggestions());
    this.body = this.root.appendChild(element("div", { class: "parts" }));
  }

  show(recipe) {
    const focused = document.activeElement?.id;
    this.recipe = recipe;
    this.spans = new Map();
    this.body.replaceChildren(...parts.map((part) => this.#part(part)));
    if (focused && focused.startsWith("at-")) byId(focused)?.focus({ preventScroll: true });
  }

  // Puts each fault beside its field; those without one are given back.
  mark(faults) {
    for (const old of this.body.querySelectorAll(".fault")) old.remove();
    for (const field of this.body.querySelectorAll("[aria-invalid]")) {
      field.removeAttribute("aria-invalid");
      field.removeAttribute("aria-describedby");
    }
    return faults.filter((fault) => !this.#markOne(fault));
  }

  #markOne(fault) {
    const field = fault.at && this.#fieldAt(fault.at);
    if (!field) return false;
    const id = field.id + "-fault";
    const text = faultText(fault);
    field.setAttribute("aria-invalid", "true");
    field.setAttribute("aria-describedby", id);
    const note = element("p", { class: "fault", id }, text);
    if (fault.nearest) {
      const take = () => {
        field.value = fault.nearest;
        field.dispatchEvent(new Event("change"));
        field.focus();
      };
      note.append(" ", element("button", { type: "button", class: "plain", onclick: take }, `Take “${fault.nearest}”`));
    }
    field.closest(".field").append(note);
    for (let around = field.closest("details"); around; around = around.parentElement.closest("details")) around.open = true;
    return true;
  }

  // A fault of a whole row is shown at its name.
  #fieldAt(at) {
    for (let way = at; way !== ""; way = way.slice(0, Math.max(0, way.lastIndexOf(".")))) {
      const found = byId(idOf(way)) ?? byId(idOf(way + ".name"));
      if (found) return found;
    }
    return null;
  }

  #suggestions() {
    const list = (id, options) => element("datalist", { id }, ...options);
    const named = ({ name, aliases = [] }) => [name, ...aliases].map((each) => element("option", { value: each }));
    return [
      ...["fermentables", "hops", "yeasts"].map((kind) => list("known-" + kind, this.shelf[kind].flatMap(named))),
      list("known-styles", this.shelf.styles.map(({ guide, code, name }) => element("option", { value: `${guide}/${code}`, label: `${code} ${name}` }, `${code} ${name}`))),
    ];
  }

  #part(part) {
    const content = part.list ? this.#rows(part) : [];
    const fields = [...(part.list ? (part.also ?? []) : part.fields)];
    const content2 = this.#group(fields, (field) => this.#field(field, field.key), part.title);
    const pairs = part.pairs ? [this.#pairs(part.pairs)] : [];
    const hint = part.hint ? [element("p", { class: "quiet hint" }, part.hint)] : [];
    const heading = part.title;
    if (part.rare) return this.#more(heading, [...hint, ...content2], "part " + heading, "part");
    return element("section", { class: "part" }, element("h3", {}, heading), ...hint, ...content, ...content2, ...pairs);
  }

  // The fields in sight, and those behind "more" where the recipe says none of them.
  #group(fields, draw, name) {
    const common = fields.filter((field) => !field.rare);
    const others = fields.filter((field) => field.rare);
    const grid = element("div", { class: "fields" }, ...common.map(draw));
    if (others.length === 0) return common.length ? [grid] : [];
    return [...(common.length ? [grid] : []), this.#more("More", [element("div", { class: "fields" }, ...others.map(draw))], name, "more")];
  }

  #more(title, content, key, kind) {
    const details = element("details", { class: kind }, element("summary", {}, title), ...content);
    details.open = this.opened.has(key);
    details.addEventListener("toggle", () => (details.open ? this.opened.add(key) : this.opened.delete(key)));
    return details;
  }

  #rows(part) {
    const rows = rowsOf(this.recipe, part.list);
    const add = element("button", { type: "button", class: "add", id: "add-" + part.list, onclick: () => this.#addRow(part) }, `Add ${part.one}`);
    const none = rows.length === 0 && part.list === "mash" ? [element("p", { class: "quiet hint" }, "No mash rests are stated.")] : [];
    return [element("ul", { class: "rows" }, ...rows.map((row, index) => this.#row(part, row, index, rows.length))), ...none, add];
  }

  #row(part, row, index, count) {
    const way = wayOfRow(this.recipe, part.list, index);
    const name = row[keyOfName(part.list, row)] || `${part.one} ${index + 1}`;
    const kept = part.fields.filter((field) => !field.onlyOf || field.onlyOf.includes(keyOfName(part.list, row)));
    const remove = element("button", { type: "button", class: "remove", "aria-label": `Remove ${name}`, title: `Remove ${name}`, onclick: () => this.#removeRow(part, index) }, "✕");
    const draw = (field) => this.#field(field, field.key === "name" ? `${way}.${keyOfName(part.list, row)}` : `${way}.${field.key}`, { way, list: part.list, name, id: `${way}.${field.key}` });
    const group = this.#group(kept, draw, `${part.list} ${index}`);
    return element("li", { class: "row" }, element("div", { role: "group", "aria-label": count > 1 ? `${name}, ${index + 1} of ${count}` : name }, ...group, remove));
  }

  #field(field, at, row) {
    const id = idOf(row?.id ?? at);
    const text = valueAt(this.recipe, at) ?? "";
    const label = element("label", { for: id }, field.label);
    const wide = field.kind !== "choice";
    return element("div", { class: `field ${field.kind}${wide ? " wide" : ""}` }, label, ...this.#control(field, at, id, String(text), row));
  }

  #control(field, at, id, text, row) {
    switch (field.kind) {
      case "choice":
        return [this.#choice(field, at, id, text)];
      case "amount":
        return this.#amount(field, at, id, text, row);
      case "known":
        return [this.#known(field, at, id, text, row)];
      case "style":
        return [this.#style(at, id, text)];
      default:
        return [element("input", { id, value: text, autocomplete: "off", oninput: ({ target }) => this.#set(at, target.value) })];
    }
  }

  #choice(field, at, id, text) {
    const known = field.choices.some(([value]) => value === text);
    const choices = known ? field.choices : [...field.choices, [text, text]];
    const options = choices.map(([value, label]) => element("option", { value, selected: value === text }, label));
    return element("select", { id, onchange: ({ target }) => this.#set(at, target.value) }, ...options);
  }

  #amount(field, at, id, text, row) {
    const input = element("input", { id, value: text, autocomplete: "off", spellcheck: "false", placeholder: field.unit });
    const slider = element("input", { type: "range", id: id + "-slider", "aria-label": `${field.label}${row ? ` of ${row.name}` : ""}` });
    const align = () => this.#align(slider, field, at, input.value);
    input.addEventListener("input", () => {
      this.#set(at, withUnit(input.value, field.unit));
      align();
    });
    input.addEventListener("change", () => {
      input.value = withUnit(input.value, field.unit);
      this.#set(at, input.value);
      this.spans.delete(at);
      align();
    });
    slider.addEventListener("input", () => {
      input.value = moved(input.value, slider.value, Number(slider.step));
      slider.setAttribute("aria-valuetext", input.value);
      this.#set(at, input.value);
    });
    align();
    return [element("div", { class: "amount-line" }, input, slider)];
  }

  // The span stays as it is while the slider moves; what is typed beyond it widens it.
  #align(slider, field, at, text) {
    const amount = partsOf(text);
    const known = this.spans.get(at);
    const holds = known && amount && known.unit === amount.unit && amount.number >= known.least && amount.number <= known.most;
    const span = holds ? known : sliderSpan(text, field.limits);
    slider.hidden = !span;
    if (!span) return;
    this.spans.set(at, { ...span, unit: amount.unit });
    Object.assign(slider, { min: span.least, max: span.most, step: span.step });
    slider.value = amount.number;
    slider.setAttribute("aria-valuetext", text);
  }

  #known(field, at, id, text, row) {
    const take = (input) => this.#rename(field, at, input.value, row);
    return element("input", {
      id, value: text, list: "known-" + field.shelf, autocomplete: "off", spellcheck: "false",
      oninput: ({ target }) => take(target), onchange: ({ target }) => take(target),
    });
  }

  // A sugar is named by another key than a malt, which the tables know.
  #rename(field, at, name, row) {
    const owner = valueAt(this.recipe, row.way);
    const known = this.shelf[field.shelf].find((each) => [each.name, ...each.aliases].some((any) => any.toLowerCase() === name.trim().toLowerCase()));
    const was = keyOfName(row.list, owner);
    const key = row.list === "grist" && known ? known.key : was;
    if (key !== was) {
      const rest = Object.entries(owner).filter(([each]) => !nameKey.grist.includes(each));
      for (const each of Object.keys(owner)) delete owner[each];
      Object.assign(owner, { [key]: name }, Object.fromEntries(rest));
    } else {
      owner[was] = name;
    }
    this.tell(this.recipe, `${row.way}.name`);
  }

  #style(at, id, text) {
    const input = element("input", { id, value: text, list: "known-styles", autocomplete: "off", spellcheck: "false", placeholder: "not entered yet" });
    const title = element("span", { class: "quiet style-name" }, this.styleTitle(text));
    input.addEventListener("input", () => {
      const style = this.#styleCalled(input.value);
      title.textContent = style ? style.name : "";
      if (style || input.value === "") this.#set(at, style ? `${style.guide}/${style.code}` : "");
    });
    input.addEventListener("change", () => {
      const style = this.#styleCalled(input.value);
      if (style) input.value = `${style.guide}/${style.code}`;
      this.#set(at, input.value.trim());
    });
    return element("div", { class: "beside-title" }, input, title);
  }

  #styleCalled(text) {
    const wanted = text.trim().toLowerCase();
    if (wanted === "") return undefined;
    const { styles } = this.shelf;
    return (
      styles.find(({ guide, code }) => `${guide}/${code}`.toLowerCase() === wanted) ??
      styles.find(({ code }) => code.toLowerCase() === wanted) ??
      styles.find(({ name }) => name.toLowerCase() === wanted)
    );
  }

  styleTitle(text) {
    return this.#styleCalled(text ?? "")?.name ?? "";
  }

  // Keys and values of a map, one a line.
  #pairs({ key, label, hint }) {
    const map = this.recipe[key] ?? {};
    const id = idOf(key);
    const text = Object.entries(map).map(([name, value]) => `${name}: ${Array.isArray(value) ? value.join(", ") : value}`).join("\n");
    const area = element("textarea", { id, rows: Math.max(2, text.split("\n").length), spellcheck: "false" }, text);
    area.addEventListener("input", () => {
      const pairs = area.value.split("\n").map((line) => /^\s*([^:]+?)\s*:\s*(.+?)\s*$/.exec(line)).filter(Boolean);
      if (pairs.length) this.recipe[key] = Object.fromEntries(pairs.map(([, name, value]) => [name, value]));
      else delete this.recipe[key];
      this.tell(this.recipe, key);
    });
    return this.#more(label, [element("div", { class: "field wide" }, element("label", { for: id }, hint), area)], key, "more");
  }

  #set(at, text) {
    setAt(this.recipe, at, text);
    this.tell(this.recipe, at);
  }

  #addRow(part) {
    setRows(this.recipe, part.list, [...rowsOf(this.recipe, part.list), { ...part.fresh }]);
    this.tell(this.recipe, null);
    this.show(this.recipe);
    const way = wayOfRow(this.recipe, part.list, rowsOf(this.recipe, part.list).length - 1);
    byId(idOf(`${way}.${part.fields[0].key}`))?.focus();
  }

  #removeRow(part, index) {
    setRows(this.recipe, part.list, rowsOf(this.recipe, part.list).filter((row, place) => place !== index));
    this.tell(this.recipe, null);
    this.show(this.recipe);
    byId("add-" + part.list)?.focus();
  }
}

export function faultText({ found, expected, remedy }) {
  return `Found ${found}, expected ${expected}.${remedy ? ` ${remedy}` : ""}`;
}
