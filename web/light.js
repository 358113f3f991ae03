// Light or dark: as the user has chosen, or as the device is set. The root element's `data-light` is
// what the styles and the module draw with; this is where it is decided. Runs before anything is
// drawn; from then on the module follows what is chosen (src/page/appearance.rs).

{
  const root = document.documentElement;
  const dark = matchMedia("(prefers-color-scheme: dark)");

  // What the browser's storage holds of that name; null where it holds nothing.
  function kept(name) {
    try {
      return localStorage.getItem(name);
    } catch {
      return null; // This browser keeps nothing.
    }
  }
  window.turnsAloft = { kept };

  const light = kept("turns-aloft/light");
  root.dataset.light = ["day", "night"].includes(light) ? light : dark.matches ? "night" : "day";

  // The system's own bars around the page.
  function paint() {
    const ground = getComputedStyle(root).getPropertyValue("--ice").trim();
    document.querySelector("meta[name=theme-color]").content = ground;
  }

  new MutationObserver(paint).observe(root, { attributeFilter: ["data-light"] });
  addEventListener("DOMContentLoaded", paint);
}
