// The service worker keeps the page for places without a network.
if ("serviceWorker" in navigator) {
  navigator.serviceWorker.register("service-worker.js", { updateViaCache: "none" });
}
