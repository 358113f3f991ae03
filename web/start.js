// Shows the progress of loading, and a message when it fails. Trunk calls these functions while it
// fetches, compiles and starts the module; the app itself sets data-state="ready" with its first
// picture.

const root = document.documentElement;
const text = document.getElementById("loading-text");
const bar = document.getElementById("loading-progress");

const { say } = window.turnsAloft;

const ONE_DECIMAL = new Intl.NumberFormat(root.lang, {
  minimumFractionDigits: 1,
  maximumFractionDigits: 1,
});
const megabytes = (bytes) => ONE_DECIMAL.format(bytes / 1e6);

// Shows a message. One without values follows when the language changes (words.js).
function show(name, values) {
  if (values) delete text.dataset.words;
  else text.dataset.words = name;
  text.textContent = say(name, values);
}

// The touch targets: name to [x, y, width, height], in CSS pixels of the page.
function rects() {
  const canvas = document.getElementById("stage").getBoundingClientRect();
  const targets = JSON.parse(window.wasmBindings.touch_targets());
  for (const rect of Object.values(targets)) {
    rect[0] += canvas.left;
    rect[1] += canvas.top;
  }
  return targets;
}

// The app has not started, and why, for the console.
function fail(reason) {
  root.dataset.state = "failed";
  show("not-started");
  console.error(reason);
}

export default function initializer() {
  // The module calls it where it lacks something.
  window.turnsAloft.fail = fail;
  // Trunk's own total is the size before optimisation; web/finish.py writes the size of the file.
  const total = Number(bar.dataset.bytes);

  return {
    onProgress({ current }) {
      // Some browsers report progress even after a failure.
      if (root.dataset.state === "failed") return;
      if (current < total) {
        bar.max = total;
        bar.value = current;
        show("loading-part", { done: megabytes(current), whole: megabytes(total) });
      } else {
        bar.removeAttribute("value");
        if (total > 0) show("loaded");
        else show("loading-so-far", { done: megabytes(current) });
      }
    },

    onSuccess({ memory }) {
      Object.assign(window.turnsAloft, {
        rects,
        // For measurements by script.
        memoryBytes: () => memory.buffer.byteLength,
        panelsMs: () => window.wasmBindings.panels_ms(),
        workMs: () => window.wasmBindings.work_ms(),
      });
      // A WebAssembly trap ends the app, whatever its cause: say so, instead of leaving a frozen
      // picture.
      addEventListener("error", ({ error }) => {
        const interrupted = root.dataset.state === "interrupted";
        if (error instanceof WebAssembly.RuntimeError && !interrupted) {
          root.dataset.state = "stopped";
          document.getElementById("notice").textContent = say("stopped");
        }
      });
    },

    onFailure: fail,
  };
}
