// A recipe as the page holds it: the recipe file as JSON, every amount the text that it is written with.

export const emptyRecipe = () => ({
  format: "entrywise/recipe/1",
  name: "New beer",
  volume: "20 L",
  boil: { time: "60 min" },
  efficiency: "72 %",
  mash: [{ temperature: "66 C", time: "60 min" }],
  grist: [],
  hops: [],
  yeast: { class: "" },
});

const steps = (at) => at.split(".").map((step) => (/^\d+$/.test(step) ? Number(step) - 1 : step));

// Ways are those of the faults: `hops.2.alpha`, items counted from one.
export const valueAt = (recipe, at) => steps(at).reduce((value, step) => value?.[step], recipe);

export function setAt(recipe, at, text) {
  const way = steps(at);
  const last = way.pop();
  const owner = way.reduce((value, step) => (value[step] ??= {}), recipe);
  if (text === "") delete owner[last];
  else owner[last] = text;
  dropEmpty(recipe, way);
}

// A map that nothing is left in says nothing. Rows of lists stay: whoever adds one is about to fill it.
function dropEmpty(recipe, way) {
  if (way.length !== 1 || typeof way[0] !== "string") return;
  const map = recipe[way[0]];
  if (map && !Array.isArray(map) && Object.keys(map).length === 0) delete recipe[way[0]];
}

export const nameKey = { grist: ["malt", "sugar", "extract"], hops: ["hop"], extras: ["name"], yeast: ["class"], mash: ["temperature"] };
export const keyOfName = (list, row) => nameKey[list].find((key) => key in row) ?? nameKey[list][0];

// One yeast may stand without a list around it, and no mash is a word.
export function rowsOf(recipe, list) {
  const value = recipe[list];
  if (value === undefined || typeof value === "string") return [];
  return Array.isArray(value) ? value : [value];
}

export function setRows(recipe, list, rows) {
  if (list === "yeast" && rows.length === 1) recipe.yeast = rows[0];
  else if (rows.length > 0 || list === "grist") recipe[list] = rows;
  else delete recipe[list];
}

export const wayOfRow = (recipe, list, index) => (Array.isArray(recipe[list]) ? `${list}.${index + 1}` : list);

// What the core is asked about: without rows that have no name yet. `ways` leads from its ways back to those of the page.
export function asked(recipe) {
  const question = structuredClone(recipe);
  const ways = [];
  for (const list of Object.keys(nameKey)) {
    const rows = rowsOf(recipe, list);
    const kept = rows.map((row, index) => ({ row, index })).filter(({ row }) => (row[keyOfName(list, row)] ?? "") !== "");
    if (kept.length === rows.length) continue;
    const lone = !Array.isArray(recipe[list]);
    kept.forEach(({ index }, place) => ways.push([`${list}.${place + 1}`, lone ? list : `${list}.${index + 1}`]));
    if (kept.length > 0 || list === "grist") question[list] = structuredClone(kept.map(({ row }) => row));
    else delete question[list];
  }
  return {
    question,
    left: (at) => {
      const found = ways.find(([from]) => at === from || at.startsWith(from + "."));
      return found ? found[1] + at.slice(found[0].length) : at;
    },
  };
}

export const isBegun = (recipe) => rowsOf(recipe, "grist").some((row) => row[keyOfName("grist", row)]);

// Everything that was, and what was undone. Moves of one slider are one change.
export class History {
  constructor(recipe) {
    this.states = [JSON.stringify(recipe)];
    this.place = 0;
    this.last = { at: null, time: 0 };
  }

  note(recipe, at, now) {
    const state = JSON.stringify(recipe);
    if (state === this.states[this.place]) return;
    const continues = at !== null && at === this.last.at && now - this.last.time < 1000 && this.place > 0;
    this.states.length = this.place + 1;
    if (continues) this.states[this.place] = state;
    else this.states.push(state);
    if (this.states.length > 200) this.states.shift();
    this.place = this.states.length - 1;
    this.last = { at, time: now };
  }

  get canUndo() {
    return this.place > 0;
  }
  get canRedo() {
    return this.place < this.states.length - 1;
  }
  step(by) {
    this.place = Math.max(0, Math.min(this.states.length - 1, this.place + by));
    this.last = { at: null, time: 0 };
    return JSON.parse(this.states[this.place]);
  }
}
