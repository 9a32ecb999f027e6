// What the form shows of a recipe: the fields of each part, in the words of the trade.
// kind: text, style, amount (with the unit of a bare number and the limits of its slider by unit), choice, known
// (suggestions from the tables). `rare` ones stand behind "more".

const amount = (key, label, unit, limits, more = {}) => ({ key, label, kind: "amount", unit, limits, ...more });
const choice = (key, label, choices, more = {}) => ({ key, label, kind: "choice", choices, ...more });
const rare = { rare: true };
const yesNo = [["", "not said"], ["true", "yes"], ["false", "no"]];

const mashing = { C: [50, 78, 0.5], F: [122, 172, 1] };
const fermenting = { C: [0, 38, 0.5], F: [32, 100, 1] };
const cold = { C: [-2, 30, 0.5], F: [28, 86, 1] };

const times = (unit) => amount("time", "Time", unit);

export const parts = [
  {
    title: "The entry",
    fields: [
      { key: "name", label: "Name", kind: "text" },
      { key: "style", label: "Entered as", kind: "style", hint: "Guide and code, or part of the name" },
      { key: "base_style", label: "Base style", kind: "style", rare: true },
    ],
    pairs: { key: "declares", label: "Declared on the form", hint: "One a line, such as strength: standard" },
  },
  {
    title: "Grist",
    list: "grist",
    one: "malt or sugar",
    fresh: { malt: "", mass: "500 g" },
    fields: [
      { key: "name", label: "Malt, sugar or extract", kind: "known", shelf: "fermentables" },
      amount("mass", "Amount", "kg"),
      choice("add", "Added to", [["", "mash"], ["boil", "boil"], ["fermenter", "fermenter"]], rare),
      amount("color", "Color", "EBC", { EBC: [0, 200, 1], SRM: [0, 80, 1], L: [0, 80, 1] }, rare),
      amount("extract", "Extract", "%", { "%": [50, 100, 0.5] }, { rare: true, onlyOf: ["malt", "sugar"] }),
      amount("sugar_content", "Extract", "%", { "%": [50, 100, 0.5] }, { rare: true, onlyOf: ["extract"] }),
    ],
  },
  {
    title: "Hops",
    list: "hops",
    one: "hop addition",
    fresh: { hop: "", mass: "30 g", add: "boil", time: "60 min" },
    fields: [
      { key: "name", label: "Hop", kind: "known", shelf: "hops" },
      amount("mass", "Amount", "g"),
      choice("add", "Added to", [["mash", "mash"], ["first wort", "first wort"], ["boil", "boil"], ["whirlpool", "whirlpool"], ["dry hop", "dry hop"]]),
      times("min"),
      amount("alpha", "Alpha acids", "%", { "%": [0, 20, 0.1] }, rare),
      amount("temperature", "Temperature", "C", { C: [40, 100, 1], F: [104, 212, 1] }, rare),
      choice("form", "Form", [["", "pellet"], ["whole", "whole"], ["extract", "extract"]], rare),
    ],
  },
  {
    title: "Wort",
    fields: [
      amount("volume", "Into the fermenter", "L"),
      amount("efficiency", "Brewhouse efficiency", "%", { "%": [40, 100, 0.5] }),
      amount("boil.time", "Boil", "min", { min: [0, 180, 5] }),
      amount("boil.evaporation", "Evaporation", "L/h", undefined, rare),
    ],
  },
  {
    title: "Mash",
    list: "mash",
    one: "rest",
    fresh: { temperature: "66 C", time: "60 min" },
    fields: [amount("temperature", "Temperature", "C", mashing), times("min")],
  },
  {
    title: "Yeast and fermentation",
    list: "yeast",
    one: "yeast",
    fresh: { class: "" },
    fields: [
      { key: "name", label: "Yeast class", kind: "known", shelf: "yeasts" },
      amount("attenuation", "Attenuation", "%", { "%": [50, 100, 0.5] }, rare),
      amount("pitch", "Pitch", "M/mL/P", undefined, rare),
    ],
    also: [
      amount("fermentation.temperature", "Fermented at", "C", fermenting),
      amount("fermentation.time", "For", "d", undefined, rare),
    ],
  },
  {
    title: "Extras",
    list: "extras",
    one: "spice, fruit or other",
    fresh: { name: "", kind: "spice", mass: "10 g", add: "boil" },
    fields: [
      { key: "name", label: "What", kind: "text" },
      choice("kind", "Kind", ["spice", "fruit", "wood", "fining", "acid", "salt", "tea", "coffee", "cocoa", "nut", "other"].map((word) => [word, word])),
      amount("mass", "Amount", "g"),
      choice("add", "Added to", [["mash", "mash"], ["", "boil"], ["whirlpool", "whirlpool"], ["fermenter", "fermenter"]]),
      amount("volume", "Volume", "L", undefined, rare),
      amount("time", "Time", "min", undefined, rare),
    ],
  },
  {
    title: "Conditioning",
    fields: [
      amount("conditioning.carbonation", "Carbonation", "vol", { vol: [0, 5, 0.1] }),
      amount("conditioning.time", "Time", "d", { d: [0, 120, 1] }),
      amount("conditioning.temperature", "Temperature", "C", cold),
      choice("conditioning.package", "Packaged in", [["", "not said"], ["bottle", "bottle"], ["keg", "keg"], ["cask", "cask"], ["can", "can"]]),
      choice("conditioning.filtered", "Filtered", yesNo, rare),
      choice("conditioning.nitrogen", "On nitrogen", yesNo, rare),
    ],
  },
  {
    title: "Measured",
    rare: true,
    hint: "What was measured takes the place of what would be estimated.",
    fields: [
      amount("measured.original_gravity", "Original gravity", ""),
      amount("measured.final_gravity", "Final gravity", ""),
      amount("measured.alcohol", "Alcohol", "%", { "%": [0, 15, 0.1] }),
      amount("measured.bitterness", "Bitterness", "IBU"),
      amount("measured.color", "Color", "SRM", { SRM: [0, 60, 0.5], EBC: [0, 120, 1] }),
      amount("measured.carbonation", "Carbonation", "vol", { vol: [0, 5, 0.1] }),
    ],
  },
];
