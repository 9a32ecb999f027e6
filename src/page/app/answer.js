// The answer beside the recipe: the sheet, where to enter, what to change. It shows what the core wrote.
import { byId, element } from "./element.js";
import { faultText } from "./form.js";

const codeOf = ({ guide, code }) => (guide === "bjcp-2021" ? code : `${guide}/${code}`);
export const wayOfStyle = ({ guide, code }) => `${guide}/${code}`;

// A report in a part of the page: its names become the part's own, and its links lead there without leaving the recipe's
// address.
export function insert(panel, markup) {
  const made = document.createElement("template");
  made.innerHTML = markup;
  const prefix = panel.id + "-";
  for (const named of made.content.querySelectorAll("[id]")) named.id = prefix + named.id;
  for (const link of made.content.querySelectorAll('a[href^="#"]')) {
    const target = prefix + link.getAttribute("href").slice(1);
    link.href = "#" + target;
    link.addEventListener("click", (event) => {
      event.preventDefault();
      byId(target)?.scrollIntoView({ block: "start" });
    });
  }
  panel.replaceChildren(made.content);
}

export function showSheet({ document: { style }, article }) {
  const panel = byId("sheet-report");
  insert(panel, article);
  showInShort(panel);
  byId("held-against").textContent = `${codeOf(style)} ${style.name}`;
}

// What stays in sight while a slider moves, with the digits that the report prints: rounding twice would tell others.
function showInShort(report) {
  const fact = (name, middle, unit, span) => element("div", {}, element("dt", {}, name), element("dd", {}, middle, unit && element("span", { class: "unit" }, unit), element("small", {}, span)));
  const [risk, of] = report.querySelector(".lead .figure").childNodes;
  const facts = [fact("At risk", risk.textContent.trim(), of.textContent, report.querySelector(".lead .quiet").textContent.split(": ").at(-1))];
  const numbers = [["OG"], ["FG"], ["ABV", " %"], ["IBU"], ["SRM"]];
  report.querySelectorAll(".numbers tbody .beer").forEach((cell, index) => {
    const [name, unit] = numbers[index];
    facts.push(fact(name, cell.querySelector("strong").textContent, unit, cell.querySelector(".quiet").textContent));
  });
  byId("in-short").replaceChildren(...facts);
}

// The first three, to enter there by one step.
export function showBest({ document: ranking }, enter, declared) {
  const printed = byId("ranking-report").querySelectorAll("tbody .best");
  const best = ranking.ranking.slice(0, 3).map(({ style }, index) => {
    const way = wayOfStyle(style);
    const percent = printed[index]?.textContent ?? "";
    const label = element("span", {}, `${codeOf(style)} ${style.name}`);
    const odds = element("span", { class: "quiet" }, percent);
    const here = way === declared;
    const button = element("button", { type: "button", class: "place-choice", "aria-pressed": String(here), onclick: () => enter(way) }, label, " ", odds);
    return element("li", {}, button);
  });
  byId("best-places").replaceChildren(...best);
}

export function showRanking(answer, enter, declared) {
  const panel = byId("ranking-report");
  insert(panel, answer.article);
  const styles = answer.document.ranking.map(({ style }) => style);
  panel.querySelectorAll(".ranking tbody tr").forEach((row, index) => {
    const style = styles[index];
    if (!style || wayOfStyle(style) === declared) return;
    const label = `Enter as ${codeOf(style)} ${style.name}`;
    row.querySelector("th").append(" ", element("button", { type: "button", class: "plain", "aria-label": label, onclick: () => enter(wayOfStyle(style)) }, "Enter here"));
  });
}

export function showMending(answer, take) {
  const panel = byId("mending-report");
  insert(panel, answer.article);
  panel.querySelectorAll(".proposal").forEach((proposal, index) => {
    const recipe = answer.mended[index];
    const heading = proposal.querySelector("h2");
    if (!recipe) {
      heading.after(element("p", { class: "quiet" }, "A blend or water in the finished beer: no recipe has words for it."));
      return;
    }
    const number = index + 1;
    heading.after(element("p", {}, element("button", { type: "button", class: "main", "aria-label": `Take way ${number} into the recipe`, onclick: () => take(recipe, number) }, "Take this into the recipe")));
  });
}

export function showFaults(faults) {
  const box = byId("faults");
  box.hidden = faults.length === 0;
  const lines = faults.map((fault) => {
    const nearest = fault.nearest ? ` Did you mean “${fault.nearest}”?` : "";
    return element("li", {}, faultText(fault) + nearest);
  });
  box.querySelector("ul").replaceChildren(...lines);
}
