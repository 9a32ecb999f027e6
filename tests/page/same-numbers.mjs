// Holds what the page's core answers against what the program prints, for every beer of the demo club.
// Use: node same-numbers.mjs PROGRAM WASM RECIPES
import { execFileSync } from "node:child_process";
import { readFileSync, readdirSync } from "node:fs";
import path from "node:path";
import { core } from "../../src/page/app/wasm.js";

const [program, wasm, recipes] = process.argv.slice(2);
const ask = await core(await WebAssembly.compile(readFileSync(wasm)));
const answerTo = (question) => JSON.parse(ask(JSON.stringify(question)));
const files = readdirSync(recipes).filter((file) => file.endsWith(".yaml"));

const asks = {
  check: { call: [] },
  rank: { call: [], question: { guide: "bjcp-2021" } },
  mend: { call: [] },
  explain: {
    call: ["--note", "thin", "--note", "too bitter", "--scores", "aroma=9,flavor=12"],
    question: { notes: ["thin", "too bitter"], scores: { aroma: "9", flavor: "12" } },
  },
};

// The file is called by its name by the one and has none for the other.
const comparable = (document) => JSON.stringify({ ...document, recipe: document.recipe.name, written: undefined });

let compared = 0;
const differing = [];
for (const file of files) {
  const way = path.join(recipes, file);
  const { recipe } = answerTo({ ask: "read", text: readFileSync(way, "utf8"), file });
  for (const [name, { call, question = {} }] of Object.entries(asks)) {
    const native = JSON.parse(execFileSync(program, [name, way, ...call, "--format", "json"], { encoding: "utf8", stdio: ["ignore", "pipe", "ignore"] }));
    const answer = answerTo({ ask: name, recipe, ...question });
    compared += 1;
    if (!answer.document || comparable(answer.document) !== comparable(native)) differing.push(`${file}: ${name}`);
  }
}
console.log(`${compared} answers compared, ${differing.length} differ`);
for (const each of differing) console.error(each);
process.exit(differing.length === 0 && compared > 0 ? 0 : 1);
