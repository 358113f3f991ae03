// Sets the theme, day or night, as the user has chosen or as the device is set. Styles and module
// read it from the root element's `data-light`. Runs before anything is drawn; later choices are
// made in the module (src/page/appearance.rs).

{
  const root = document.documentElement;
  const dark = matchMedia("(prefers-color-scheme: dark)");

  // The stored value of that name; null if there is none.
  function stored(name) {
    try {
      return localStorage.getItem(name);
    } catch {
      return null; // Storage is blocked.
    }
  }
  // The page as one file has put something there already.
  window.turnsAloft = { ...window.turnsAloft, stored };

  const theme = stored("turns-aloft/light");
  root.dataset.light = ["day", "night"].includes(theme) ? theme : dark.matches ? "night" : "day";

  // Sets the colour of the system bars around the page.
  function updateThemeColor() {
    const ground = getComputedStyle(root).getPropertyValue("--background").trim();
    document.querySelector("meta[name=theme-color]").content = ground;
  }

  new MutationObserver(updateThemeColor).observe(root, { attributeFilter: ["data-light"] });
  addEventListener("DOMContentLoaded", updateThemeColor);
}
