// Where the work is kept: in the address, for reloading, going back and sharing, and in the browser's own storage.

const RECIPE = "entrywise.recipe";
const SHEET = "entrywise.own-sheet";

async function through(stream, bytes) {
  return new Uint8Array(await new Response(new Blob([bytes]).stream().pipeThrough(stream)).arrayBuffer());
}

export async function addressOf(recipe) {
  const packed = await through(new CompressionStream("deflate-raw"), new TextEncoder().encode(JSON.stringify(recipe)));
  const letters = Array.from(packed, (byte) => String.fromCharCode(byte)).join("");
  return "#beer=" + btoa(letters).replaceAll("+", "-").replaceAll("/", "_").replace(/=+$/, "");
}

// The recipe of an address; null where it has none, undefined where what it has is none.
export async function recipeIn(address) {
  const found = /^#beer=([\w-]+)$/.exec(address);
  if (!found) return address.startsWith("#beer=") ? undefined : null;
  try {
    const letters = atob(found[1].replaceAll("-", "+").replaceAll("_", "/"));
    const bytes = await through(new DecompressionStream("deflate-raw"), Uint8Array.from(letters, (letter) => letter.charCodeAt(0)));
    const recipe = JSON.parse(new TextDecoder().decode(bytes));
    return isRecipe(recipe) ? recipe : undefined;
  } catch {
    return undefined;
  }
}

const isRecipe = (value) => typeof value === "object" && value !== null && typeof value.format === "string";

function kept(key) {
  try {
    return JSON.parse(localStorage.getItem(key));
  } catch {
    return null;
  }
}

function keep(key, value) {
  try {
    localStorage.setItem(key, JSON.stringify(value));
    return true;
  } catch {
    return false;
  }
}

export const keptRecipe = () => {
  const recipe = kept(RECIPE);
  return isRecipe(recipe) ? recipe : null;
};
export const keepRecipe = (recipe) => keep(RECIPE, recipe);
export const keptSheet = () => kept(SHEET);
export const keepSheet = (sheet) => keep(SHEET, sheet);
