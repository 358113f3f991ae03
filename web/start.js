// Says how far loading has come, and says so when it fails. Trunk calls these while it fetches,
// compiles and starts the module; the app itself sets data-state="ready" with its first picture.

const root = document.documentElement;
const text = document.getElementById("loading-text");
const bar = document.getElementById("loading-progress");

const { say } = window.turnsAloft;

const ONE_DECIMAL = new Intl.NumberFormat(root.lang, {
  minimumFractionDigits: 1,
  maximumFractionDigits: 1,
});
const megabytes = (bytes) => ONE_DECIMAL.format(bytes / 1e6);

// Without values it is told again where the language changes (words.js).
function tell(name, values) {
  if (values) delete text.dataset.words;
  else text.dataset.words = name;
  text.textContent = say(name, values);
}

// Where everything that can be touched is, by name, in CSS pixels of the page.
function rects() {
  const canvas = document.getElementById("stage").getBoundingClientRect();
  const targets = JSON.parse(window.wasmBindings.touch_targets());
  for (const rect of Object.values(targets)) {
    rect[0] += canvas.left;
    rect[1] += canvas.top;
  }
  return targets;
}

export default function initializer() {
  // Trunk's own total is the size before the module was shrunk; web/finish.py wrote the real one.
  const total = Number(bar.dataset.bytes);

  return {
    onProgress({ current }) {
      // Some browsers count on after it has failed.
      if (root.dataset.state === "failed") return;
      if (current < total) {
        bar.max = total;
        bar.value = current;
        tell("loading-part", { done: megabytes(current), whole: megabytes(total) });
      } else {
        bar.removeAttribute("value");
        if (total > 0) tell("loaded");
        else tell("loading-so-far", { done: megabytes(current) });
      }
    },

    onSuccess({ memory }) {
      Object.assign(window.turnsAloft, {
        rects,
        // For whoever measures the page.
        memoryBytes: () => memory.buffer.byteLength,
        panelsMs: () => window.wasmBindings.panels_ms(),
        workMs: () => window.wasmBindings.work_ms(),
      });
      // A trap ends the app for good, whatever its cause; leaving a frozen picture would mislead.
      addEventListener("error", ({ error }) => {
        const interrupted = root.dataset.state === "interrupted";
        if (error instanceof WebAssembly.RuntimeError && !interrupted) {
          root.dataset.state = "stopped";
          document.getElementById("notice").textContent = say("stopped");
        }
      });
    },

    onFailure(reason) {
      root.dataset.state = "failed";
      tell("not-started");
      console.error(reason);
    },
  };
}
