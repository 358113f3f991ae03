// Pictures and sheets of paper are made by a module of their own, fetched when it is first asked for: the
// page draws its first picture without it.

{
  const { turnsAloft } = window;
  const { documents } = document.documentElement.dataset;
  let loading;

  async function load() {
    const bindings = await import(turnsAloft.address?.(`${documents}.js`) ?? `./${documents}.js`);
    await bindings.default({ module_or_path: fetch(`${documents}_bg.wasm`) });
    return bindings;
  }

  // The text of the document that a request asks for, in a language; rejects with a sentence.
  turnsAloft.makeDocument = async (request, tag) => {
    loading ??= load().catch((reason) => {
      // The next one who asks tries again.
      loading = undefined;
      throw reason;
    });
    const bindings = await loading;
    bindings.provide(tag, await turnsAloft.texts(tag));
    return bindings.make(request);
  };
}
