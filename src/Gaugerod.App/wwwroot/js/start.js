// The service worker keeps the page for places without a network, and a new version waits until it is asked for.
import { flush } from "./shelf.js";
import "./press.js";

let registration = null, watcher = null, going = false;

try {
  const light = localStorage.getItem("light");
  if (light) document.documentElement.setAttribute("data-light", light);
} catch { /* A browser that keeps nothing shows the device's own light. */ }

export function lightNow() {
  return document.documentElement.getAttribute("data-light") ?? "";
}

export function setLight(light) {
  document.documentElement.setAttribute("data-light", light);
  try { localStorage.setItem("light", light); } catch { /* It then lasts as long as the page. */ }
}

function tell() {
  if (registration?.waiting && navigator.serviceWorker.controller) watcher?.invokeMethodAsync("Waits");
}

function follow(worker) {
  worker?.addEventListener("statechange", () => { if (worker.state === "installed") tell(); });
}

/** Who is told that a new version waits. */
export function watch(who) {
  watcher = who;
  tell();
}

/** Lets the waiting version take over; the page opens anew once it has. */
export function take() {
  registration?.waiting?.postMessage("now");
}

if ("serviceWorker" in navigator) {
  // The very first version takes no page over, so a change of hands always means a new version: asked for here or in another tab.
  navigator.serviceWorker.addEventListener("controllerchange", async () => {
    if (going) return;
    going = true;
    await flush();
    location.reload();
  });
  keep();
}

// Nobody waits for it: without a network the browser may first try for seconds whether a newer version is there.
async function keep() {
  try {
    registration = await navigator.serviceWorker.register("service-worker.js", { updateViaCache: "none" });
    follow(registration.installing);
    registration.addEventListener("updatefound", () => follow(registration.installing));
    tell();
    document.addEventListener("visibilitychange", () => {
      if (document.visibilityState === "visible") registration.update().catch(() => { });
    });
  } catch { /* Without it the page works, though not without a network. */ }
}
