// Where a person is stands behind the # of the page's address, so that the device's own Back leads to where they were.
let watcher = null;

/** Who is told when Back or Forward leads elsewhere. Gives where the page opened. */
export function watch(who) {
  watcher = who;
  return location.hash;
}

export function go(mark, instead) {
  history[instead ? "replaceState" : "pushState"](null, "", location.pathname + location.search + mark);
}

addEventListener("popstate", () => watcher?.invokeMethodAsync("Follow", location.hash));
