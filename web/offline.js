// Has the page kept for use without a network, once it is ready, and says when a new version is
// there. `worker.js` does the keeping.

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

async function keep() {
  await ready();
  const registration = await workers.register("sw.js", { updateViaCache: "none" });
  // The browser looks for a new version whenever a page is opened; an installed one may stay open
  // for days, so also when the network or the user comes back to it. A failure means no network.
  const look = () => registration.update().catch(() => {});
  addEventListener("online", look);
  document.addEventListener("visibilitychange", () => document.hidden || look());

  // Only asked for by an installed page: some browsers put the question to the user.
  if (matchMedia("(display-mode: standalone)").matches) {
    await navigator.storage.persist();
  }
}

// There are none where the page doesn't come from a trustworthy address.
if (workers) {
  // The first worker to take over brings no new version, each later one does.
  let kept = workers.controller !== null;
  workers.addEventListener("controllerchange", () => {
    if (kept) offerReload();
    kept = true;
  });
  // A browser that keeps nothing goes on loading the page from the network.
  keep().catch(() => {});
}
