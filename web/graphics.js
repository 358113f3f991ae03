// A browser may take the graphics away from a page: after a fault of the driver, in a long sleep, or
// because something else needs them. What was drawn cannot be drawn on; the jump is kept in the
// browser's storage, so the page starts anew as soon as there are graphics again.

const root = document.documentElement;
const canvas = document.getElementById("stage");
const interrupted = document.getElementById("interrupted");

canvas.addEventListener("webglcontextlost", (event) => {
  // Only then does the browser give them back.
  event.preventDefault();
  root.dataset.state = "interrupted";
  interrupted.hidden = false;
  // Every further frame would be drawn into nothing.
  window.requestAnimationFrame = () => 0;
});
canvas.addEventListener("webglcontextrestored", () => location.reload());
interrupted.querySelector("button").addEventListener("click", () => location.reload());
