// The station where the rods slide: what it listens to, and what C# asks of it.
import { draw, clear } from "./frame.js";
import { look, lookAgain, letGo } from "./look.js";
import { tapped, pieceKey, pieceStep, unpick } from "./pick.js";
import { take, move, leave, rodKey, rodPress, restNow } from "./rods.js";

const benches = new Map();

export function attach(root, net) {
  const bench = { root, net, hand: null, frame: 0, rest: 0, look: null, hold: new AbortController(), work: [] };
  benches.set(root, bench);
  // For whoever measures: the work of the frames of the last slide, in milliseconds.
  root.frameWork = bench.work;
  const on = (name, work) => root.addEventListener(name, event => work(bench, event), { signal: bench.hold.signal });
  on("pointerdown", take);
  on("pointermove", move);
  on("pointerup", leave);
  on("pointercancel", leave);
  on("keydown", (_, event) => { if (!rodKey(bench, event)) pieceKey(bench, event); });
  on("click", (_, event) => { if (!rodPress(bench, event) && !pieceStep(bench, event)) tapped(bench, event); });
}

export function detach(root) {
  const bench = benches.get(root);
  if (!bench) return;
  bench.hold.abort();
  letGo(bench);
  restNow(bench);
  benches.delete(root);
}

// A new drawing, or the same one with its rods elsewhere.
export function show(root, frame, sliding, anew) {
  const bench = benches.get(root);
  if (!bench) return;
  for (const name of root.querySelectorAll("[data-wide]")) name.style.flexGrow = name.dataset.wide;
  if (anew) {
    clear(root);
    unpick(bench);
    look(bench);
  }

  draw(root, frame, sliding);
  // Until now the drawing and the rods stood as they were made, not as they are to be seen.
  root.querySelector(".wall-and-rods")?.setAttribute("data-shown", "yes");
  if (sliding) unpick(bench);
}

export function face(root, at) {
  const bench = benches.get(root);
  if (bench) lookAgain(bench, root.querySelector(`[data-face="${at}"]`));
}

export function reveal(root) {
  const panel = root.querySelector(".want");
  panel?.scrollIntoView({ block: "nearest" });
  panel?.querySelector("input")?.focus({ preventScroll: true });
}
