// Keeps the page free to move while the core works.
import { core } from "./wasm.js";

let ask;
onmessage = async ({ data }) => {
  if (data.module) {
    ask = core(data.module);
    return;
  }
  try {
    const began = performance.now();
    const answer = (await ask)(data.question);
    postMessage({ id: data.id, answer, milliseconds: performance.now() - began });
  } catch (error) {
    postMessage({ id: data.id, failed: String(error?.message ?? error) });
  }
};
