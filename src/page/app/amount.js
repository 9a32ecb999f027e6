// Amounts as texts with their unit, and how a slider moves them.

// A single number with or without a unit. Two units (`4 lb 6 oz`) and spans (`5..6 %`) are no matter of a slider.
export function parts(text) {
  const found = /^\s*(-?\d+(?:\.\d+)?)\s*([^\d]*?)\s*((?:\+-|±|\+\/-)\s*\d.*)?$/.exec(text ?? "");
  return found && !found[2].includes("..") ? { number: Number(found[1]), unit: found[2], spread: found[3] ?? "" } : null;
}

// By unit: the least and the most that a slider sets where the amount says nothing else, and its step.
const scales = {
  kg: [0, 1, 0.05], g: [0, 50, 1], lb: [0, 2, 0.1], oz: [0, 2, 0.05],
  L: [0, 10, 0.5], gal: [0, 3, 0.1], mL: [0, 50, 1],
  min: [0, 90, 1], h: [0, 4, 0.25], d: [0, 14, 1], wk: [0, 8, 1],
  "%": [0, 100, 0.5], C: [0, 100, 0.5], F: [32, 212, 1],
  vol: [0, 5, 0.1], "L/h": [0, 8, 0.1], EBC: [0, 100, 1], SRM: [0, 50, 1],
};
const withoutDegree = (unit) => unit.replace(/^°/, "");

// The span of a slider: what the field lays down, or else twice the amount that stood there first.
export function sliderSpan(text, limits) {
  const amount = parts(text);
  if (!amount) return null;
  const unit = withoutDegree(amount.unit);
  const [least, most, step] = limits?.[unit] ?? scales[unit] ?? [];
  if (step === undefined) return null;
  const room = limits?.[unit] ? most : Math.max(most, 2 * amount.number);
  return { least: Math.min(least, amount.number), most: Math.max(room, amount.number), step };
}

const decimalsOf = (step) => (String(step).split(".")[1] ?? "").length;

// The same amount at another number, its unit and spread as they were.
export function moved(text, number, step) {
  const { unit, spread } = parts(text);
  const digits = Number(Number(number).toFixed(decimalsOf(step)));
  return [digits, unit, spread].filter((part) => part !== "").join(" ").replace(/ +%/, " %");
}

// A bare number takes the unit that the field usually has.
export function withUnit(text, unit) {
  const trimmed = text.trim().replace(/^(-?\d+),(\d+)/, "$1.$2");
  return unit && /^-?\d+(\.\d+)?$/.test(trimmed) ? `${trimmed} ${unit}` : trimmed;
}
