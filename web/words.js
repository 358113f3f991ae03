// The page's own words, in the language that the user has chosen or that the browser asks for; this
// is where that is decided. Runs before anything is drawn. From then on the root element's `lang` is
// the language: the module speaks it, and sets it when the user chooses another.

{
  const root = document.documentElement;
  // Written in by web/finish.py: language to message to text.
  const words = JSON.parse(document.getElementById("shell-words").textContent);

  const ATTRIBUTES = [["aria-label", "data-words-label"], ["content", "data-words-content"]];

  const spoken = (tag) => Object.hasOwn(words, tag);

  function wished() {
    // What can be chosen is kept by the module, as a tag (src/page/language.rs).
    const kept = window.turnsAloft.kept("turns-aloft/language");
    if (kept !== null && spoken(kept)) return kept;
    const primary = navigator.languages.map((tag) => tag.toLowerCase().split("-")[0]);
    return primary.find(spoken) ?? "en";
  }

  let language = wished();

  // A message, with its values put in.
  function say(name, values = {}) {
    return words[language][name].replace(/\{ \$(\w+) \}/g, (_, value) => values[value]);
  }

  function fill(part) {
    for (const element of part.querySelectorAll("[data-words]")) {
      element.textContent = say(element.dataset.words);
    }
    for (const [attribute, mark] of ATTRIBUTES) {
      for (const element of part.querySelectorAll(`[${mark}]`)) {
        element.setAttribute(attribute, say(element.getAttribute(mark)));
      }
    }
    for (const template of part.querySelectorAll("template")) fill(template.content);
  }

  window.turnsAloft.say = say;
  root.lang = language;
  fill(document);
  new MutationObserver(() => {
    // A browser that translates pages by itself may write any tag there.
    if (!spoken(root.lang)) return;
    language = root.lang;
    fill(document);
  }).observe(root, { attributeFilter: ["lang"] });
}
