//! The module of the page that makes documents. `web/documents.js` fetches it when it is first asked for.

fn main() {}

#[cfg(target_arch = "wasm32")]
mod page {
    use turns_aloft_documents::made;
    use turns_aloft_words::{Language, provide};
    use wasm_bindgen::prelude::wasm_bindgen;

    /// Takes the texts of a language, once.
    #[wasm_bindgen(js_name = "provide")]
    pub fn provide_texts(tag: &str, texts: &str) -> Result<(), String> {
        let language = Language::of_tags([tag]);
        provide(language, texts).map_err(|why| why.0)
    }

    /// The document that a request asks for.
    #[wasm_bindgen]
    pub fn make(request: &str) -> Result<String, String> {
        made(request)
    }
}
