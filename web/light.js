// Light or dark: as the user has chosen, or as the device is set. The root element's `data-light` is
// what the styles and the module draw with; this is where it is decided. Runs before anything is
// drawn; from then on the module follows what is chosen (src/page/appearance.rs).

{
  const root = document.documentElement;
  const dark = matchMedia("(prefers-color-scheme: dark)");

  function chosen() {
    try {
      return localStorage.getItem("turns-aloft/light");
    } catch {
      return null; // This browser keeps nothing.
    }
  }

  const light = chosen();
  root.dataset.light = ["day", "night"].includes(light) ? light : dark.matches ? "night" : "day";

  // The system's own bars around the page.
  function paint() {
    const ground = getComputedStyle(root).getPropertyValue("--ice").trim();
    document.querySelector("meta[name=theme-color]").content = ground;
  }

  new MutationObserver(paint).observe(root, { attributeFilter: ["data-light"] });
  addEventListener("DOMContentLoaded", paint);
}
