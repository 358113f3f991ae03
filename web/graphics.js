// A browser may take the WebGL context from a page: after a driver error, during long sleep, or
// because another page needs it. The app cannot continue to draw after that; the jump is in the
// browser's storage, so the page is reloaded as soon as the context is restored.

const root = document.documentElement;
const canvas = document.getElementById("stage");
const interrupted = document.getElementById("interrupted");

canvas.addEventListener("webglcontextlost", (event) => {
  // Without this the browser does not restore the context.
  event.preventDefault();
  root.dataset.state = "interrupted";
  interrupted.hidden = false;
});
canvas.addEventListener("webglcontextrestored", () => location.reload());
interrupted.querySelector("button").addEventListener("click", () => location.reload());
