// Once the page is ready, registers the service worker (`worker.js`), which caches the page for use
// without a network; says when a new version is there.

const root = document.documentElement;
const workers = navigator.serviceWorker;

function offerReload() {
  const bar = document.getElementById("update");
  bar.replaceChildren(document.getElementById("update-ready").content.cloneNode(true));
  bar.querySelector("[name=reload]").addEventListener("click", () => location.reload());
  bar.querySelector("[name=later]").addEventListener("click", () => bar.replaceChildren());
}

function ready() {
  return new Promise((resolve) => {
    const look = () => root.dataset.state === "ready" && resolve();
    new MutationObserver(look).observe(root, { attributeFilter: ["data-state"] });
    look();
  });
}

async function register() {
  await ready();
  const registration = await workers.register("sw.js", { updateViaCache: "none" });
  // The browser checks for a new version whenever a page is opened. An installed page may stay open
  // for days, so also check when the network returns or the page becomes visible. A failure means
  // that there is no network.
  const look = () => registration.update().catch(() => {});
  addEventListener("online", look);
  document.addEventListener("visibilitychange", () => document.hidden || look());

  // Only in an installed page, because some browsers ask the user.
  if (matchMedia("(display-mode: standalone)").matches) {
    await navigator.storage.persist();
  }
}

// Service workers exist only in a secure context.
if (workers) {
  // The first worker that takes control brings no new version; each later one does.
  let controlled = workers.controller !== null;
  workers.addEventListener("controllerchange", () => {
    if (controlled) offerReload();
    controlled = true;
  });
  // A browser that refuses caches goes on loading the page from the network.
  register().catch(() => {});
}
