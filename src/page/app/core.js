// Asks the core, which works in threads of its own: one that answers while a slider moves, one for what takes longer.
import workerSource from "worker-source";

async function unpacked(base64) {
  const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
  const stream = new Blob([bytes]).stream().pipeThrough(new DecompressionStream("gzip"));
  return new Response(stream).arrayBuffer();
}

// Of the questions of one kind that wait, only the latest is asked: a slider asks faster than anyone reads.
class Clerk {
  constructor(module, address) {
    this.worker = new Worker(address);
    this.worker.postMessage({ module });
    this.worker.onmessage = ({ data }) => this.#take(data);
    this.waiting = new Map();
    this.asked = null;
  }

  ask(question, kind = question.ask) {
    return new Promise((answer) => {
      this.waiting.get(kind)?.answer(null);
      this.waiting.delete(kind);
      this.waiting.set(kind, { question, answer });
      this.#next();
    });
  }

  #next() {
    if (this.asked || this.waiting.size === 0) return;
    const [kind, next] = this.waiting.entries().next().value;
    this.waiting.delete(kind);
    this.asked = next;
    this.worker.postMessage({ id: 0, question: JSON.stringify(next.question) });
  }

  #take({ answer, failed, milliseconds }) {
    const { answer: tell } = this.asked;
    this.asked = null;
    tell(failed ? { failed, faults: [{ found: failed, expected: "an answer", at: null }] } : { ...JSON.parse(answer), milliseconds });
    this.#next();
  }
}

// `quick` and `thorough` each take a question and promise the answer, or null where a later one took its place.
export async function openCore(base64) {
  const module = await WebAssembly.compile(await unpacked(base64));
  const address = URL.createObjectURL(new Blob([workerSource], { type: "text/javascript" }));
  const quick = new Clerk(module, address);
  const thorough = new Clerk(module, address);
  return { quick: (question, kind) => quick.ask(question, kind), thorough: (question, kind) => thorough.ask(question, kind) };
}
