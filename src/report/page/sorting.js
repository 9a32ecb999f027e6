"use strict";
(() => {
  const table = document.querySelector("table.entries");
  const form = document.querySelector("form.filter");
  const body = table.tBodies[0];
  const rows = [...body.rows];
  const numbers = new Set(["order", "risk"]);
  const order = new Intl.Collator("en", { numeric: true });

  const compare = (key) => (first, second) =>
    numbers.has(key)
      ? Number(first.dataset[key]) - Number(second.dataset[key])
      : order.compare(first.dataset[key], second.dataset[key]);

  const show = () => {
    const wanted = new FormData(form);
    let count = 0;
    for (const row of rows) {
      row.hidden = ["category", "status"].some((key) => wanted.get(key) && wanted.get(key) !== row.dataset[key]);
      count += row.hidden ? 0 : 1;
    }
    form.querySelector("output").textContent = `${count} shown`;
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
  form.hidden = false;
  form.addEventListener("input", show);
  form.addEventListener("submit", (event) => event.preventDefault());
  show();
})();
