// While it is being built nothing is kept: what is served is what is shown.
self.addEventListener("fetch", () => { });
