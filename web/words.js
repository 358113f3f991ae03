// Decides the page's language, as the user has chosen or as the browser asks for, and fills in the
// page's own texts. Runs before anything is drawn. From then on the root element's `lang` is the
// language: the module reads it, and sets it when the user chooses another.

{
  const root = document.documentElement;
  // Inserted by web/finish.py: language to message to text.
  const words = JSON.parse(document.getElementById("shell-words").textContent);

  const ATTRIBUTES = [["aria-label", "data-words-label"], ["content", "data-words-content"]];

  const hasWords = (tag) => Object.hasOwn(words, tag);

  function preferred() {
    // The module stores the user's choice as a language tag (src/page/language.rs).
    const stored = window.turnsAloft.stored("turns-aloft/language");
    if (stored !== null && hasWords(stored)) return stored;
    const primary = navigator.languages.map((tag) => tag.toLowerCase().split("-")[0]);
    return primary.find(hasWords) ?? "en";
  }

  let language = preferred();

  // The text of a message, with its values inserted.
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

  // The module's texts, of one language each. Those of the present one are fetched beside the module.
  const fetched = {};
  async function fetchTexts(tag) {
    const answer = await fetch(words[tag].file);
    if (!answer.ok) throw new Error(`${words[tag].file}: ${answer.status}`);
    return answer.text();
  }
  function texts(tag) {
    fetched[tag] ??= fetchTexts(tag).catch((reason) => {
      // The next one who asks tries again.
      delete fetched[tag];
      throw reason;
    });
    return fetched[tag];
  }
  window.turnsAloft.texts = texts;
  // Who needs them hears of a failure.
  texts(language).catch(() => {});

  window.turnsAloft.say = say;
  root.lang = language;
  fill(document);
  new MutationObserver(() => {
    // A browser's own translation of the page may set any tag.
    if (!hasWords(root.lang)) return;
    language = root.lang;
    fill(document);
  }).observe(root, { attributeFilter: ["lang"] });
}
