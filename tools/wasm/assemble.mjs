// Puts the page together: one HTML file that needs no other. Use: node assemble.mjs WASM FOLDER
import { execFileSync } from "node:child_process";
import { mkdirSync, readFileSync, readdirSync, renameSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { gzipSync } from "node:zlib";

const [wasmFile, folder] = process.argv.slice(2);
const root = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "../..");
const app = path.join(root, "src/page/app");
const text = (...way) => readFileSync(path.join(root, ...way), "utf8");

function bundled(entry, ...more) {
  return execFileSync("esbuild", [path.join(app, entry), "--bundle", "--minify", "--charset=utf8", "--log-level=warning", ...more], { encoding: "utf8" });
}

// The worker is started from its text: a page on disk may load no second file.
function script(scratch) {
  const worker = path.join(scratch, "worker-source.txt");
  writeFileSync(worker, bundled("worker.js", "--format=iife"));
  return bundled("main.js", "--format=iife", "--loader:.txt=text", `--alias:worker-source=${worker}`);
}

function demoBeers() {
  return readdirSync(path.join(root, "recipes"))
    .filter((file) => file.endsWith(".yaml"))
    .map((file) => ({ file, text: text("recipes", file) }))
    .map((beer) => ({ ...beer, name: /^name: *(.*)$/m.exec(beer.text)[1] }));
}

// What ends a script element would end it in a string as well.
const inScript = (source) => source.replaceAll("</script", "<\\/script").replaceAll("<!--", "<\\!--");
const version = /project\(entrywise VERSION ([\d.]+)/.exec(text("CMakeLists.txt"))[1];

// A report here is as wide as its part of the page, not as the screen.
const reportStyles = text("src/report/page/style.css").replaceAll("@media (max-width: 44rem)", "@container (max-width: 44rem)");

const scratch = path.resolve(path.dirname(wasmFile));
const parts = {
  "/*styles*/": reportStyles + text("src/page/app/page.css"),
  "<!--version-->": version,
  "<!--demo-beers-->": JSON.stringify(demoBeers()).replaceAll("<", "\\u003c"),
  "<!--core-->": gzipSync(readFileSync(wasmFile), { level: 9 }).toString("base64"),
  "/*script*/": inScript(script(scratch)),
};
let page = text("src/page/app/page.html");
for (const [mark, part] of Object.entries(parts)) page = page.split(mark).join(part);

mkdirSync(folder, { recursive: true });
const file = path.join(folder, "entrywise.html");
writeFileSync(file + ".new", page);
renameSync(file + ".new", file);
console.log(`${file}: ${(page.length / 1e6).toFixed(2)} MB`);
