// An element with its attributes and what it holds. Texts are texts, never markup.
export function element(name, attributes = {}, ...content) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(attributes)) {
    if (value === undefined || value === null || value === false) continue;
    if (key.startsWith("on")) made.addEventListener(key.slice(2), value);
    else if (key === "value") made.value = value;
    else made.setAttribute(key, value === true ? "" : value);
  }
  made.append(...content.filter((part) => part !== null && part !== undefined && part !== false && part !== ""));
  return made;
}

export const byId = (id) => document.getElementById(id);
