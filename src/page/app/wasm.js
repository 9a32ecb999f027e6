// The core as a function: a question in, an answer out, both JSON. Runs in a worker and in Node.js alike.

const encoder = new TextEncoder();
const decoder = new TextDecoder();
const NOT_SUPPORTED = 52; // errno of WASI: ENOSYS

// The core opens no file and asks for no clock; what the C library wants to link is answered by what does nothing.
function imports(module, memory) {
  const harmless = {
    emscripten_notify_memory_growth: () => undefined,
    environ_sizes_get: (count, size) => {
      const view = new DataView(memory().buffer);
      view.setUint32(count, 0, true);
      view.setUint32(size, 0, true);
      return 0;
    },
    environ_get: () => 0,
    proc_exit: (status) => {
      throw new Error(`the core ended with status ${status}`);
    },
    abort: () => {
      throw new Error("the core gave up");
    },
  };
  const all = {};
  for (const { module: from, name, kind } of WebAssembly.Module.imports(module)) {
    if (kind !== "function") throw new Error(`the core wants ${kind} ${from}.${name}`);
    all[from] ??= {};
    all[from][name] = harmless[name] ?? (() => NOT_SUPPORTED);
  }
  return all;
}

export async function core(module) {
  let exports;
  const instance = await WebAssembly.instantiate(module, imports(module, () => exports.memory));
  exports = instance.exports;
  exports._initialize?.();
  return (question) => {
    const bytes = encoder.encode(question);
    const at = exports.question_memory(bytes.length);
    new Uint8Array(exports.memory.buffer, at, bytes.length).set(bytes);
    const answer = exports.answer_question(at, bytes.length);
    return decoder.decode(new Uint8Array(exports.memory.buffer, answer, exports.answer_size()));
  };
}
