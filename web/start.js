// Says how far loading has come, and says so when it fails. Trunk calls these while it fetches,
// compiles and starts the module; the app itself sets data-state="ready" with its first picture.

const root = document.documentElement;
const text = document.getElementById("loading-text");
const bar = document.getElementById("loading-progress");

const megabytes = (bytes) => (bytes / 1e6).toFixed(1);

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
      if (current < total) {
        bar.max = total;
        bar.value = current;
        text.textContent = `Loading the simulator: ${megabytes(current)} of ${megabytes(total)} MB`;
      } else {
        bar.removeAttribute("value");
        text.textContent = total > 0
          ? "Loaded. Setting up the ice…"
          : `Loading the simulator: ${megabytes(current)} MB so far`;
      }
    },

    onSuccess({ memory }) {
      window.turnsAloft = { rects, memoryBytes: () => memory.buffer.byteLength };
      // A trap ends the app for good, whatever its cause; leaving a frozen picture would mislead.
      addEventListener("error", ({ error }) => {
        const interrupted = root.dataset.state === "interrupted";
        if (error instanceof WebAssembly.RuntimeError && !interrupted) {
          root.dataset.state = "stopped";
          document.getElementById("notice").textContent =
            "The simulator has stopped because of a fault of its own; reload the page to go on.";
        }
      });
    },

    onFailure(reason) {
      root.dataset.state = "failed";
      text.textContent =
        "The simulator could not be started; check the connection, then reload the page.";
      console.error(reason);
    },
  };
}
