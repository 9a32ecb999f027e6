"use strict";
(() => {
  const table = document.querySelector("table.entries");
  const form = document.querySelector("form.filter");
  const body = table.tBodies[0];
  const rows = [...body.rows];
  const numbers = new Set(["turn", "risk"]);
  const order = new Intl.Collator("en", { numeric: true });

  // What is not known stands before all that is.
  const number = (text) => (text === "" ? -1 : Number(text));
  const compare = (key) => (first, second) =>
    numbers.has(key)
      ? number(first.dataset[key]) - number(second.dataset[key])
      : order.compare(first.dataset[key], second.dataset[key]);

  const show = () => {
    const wanted = new FormData(form);
    let count = 0;
    for (const row of rows) {
      row.hidden = ["category", "status"].some((key) => wanted.get(key) && wanted.get(key) !== row.dataset[key]);
      count += row.hidden ? 0 : 1;
    }
    form.querySelector("output").textContent = `${count} of ${rows.length} shown`;
  };

  for (const head of table.tHead.rows[0].cells) {
    const button = document.createElement("button");
    button.type = "button";
    button.textContent = head.textContent;
    head.replaceChildren(button);
    button.addEventListener("click", () => {
      const down = head.getAttribute("aria-sort") === "ascending";
      for (const other of table.tHead.rows[0].cells) other.removeAttribute("aria-sort");
      head.setAttribute("aria-sort", down ? "descending" : "ascending");
      const sorted = rows.slice().sort(compare(head.dataset.sort));
      body.append(...(down ? sorted.reverse() : sorted));
    });
  }

  const opener = form.querySelector(".all-open");
  opener.addEventListener("click", () => {
    const opens = opener.textContent === "Open all";
    for (const row of rows) row.querySelector("details").open = opens && !row.hidden;
    opener.textContent = opens ? "Close all" : "Open all";
  });

  // A link to an entry finds it, whatever is filtered away, and opens it.
  const reveal = () => {
    const row = rows.find((each) => location.hash === `#${each.id}`);
    if (!row) return;
    if (row.hidden) {
      form.reset();
      show();
    }
    row.querySelector("details").open = true;
    row.scrollIntoView({ block: "center" });
  };
  addEventListener("hashchange", reveal);

  // On paper nothing opens: what wants attention is told.
  let opened = [];
  addEventListener("beforeprint", () => {
    opened = rows.filter((row) => !row.hidden && row.dataset.status !== "ready").map((row) => row.querySelector("details")).filter((details) => !details.open);
    for (const details of opened) details.open = true;
  });
  addEventListener("afterprint", () => {
    for (const details of opened) details.open = false;
  });

  form.hidden = false;
  form.addEventListener("input", show);
  form.addEventListener("submit", (event) => event.preventDefault());
  show();
  reveal();
})();
