// The rods under the hand. What moves is moved here; the engine is asked at most once a frame.
const REACH = 7, SOON = 500;
const benches = new Map();

export function attach(root, net) {
  const bench = { root, net, hand: null, frame: 0, rest: 0, hold: new AbortController() };
  benches.set(root, bench);
  const on = (name, work) => root.addEventListener(name, work, { signal: bench.hold.signal });
  on("pointerdown", event => take(bench, event));
  on("pointermove", event => move(bench, event));
  on("pointerup", event => leave(bench, event));
  on("pointercancel", event => leave(bench, event));
  on("keydown", event => key(bench, event));
}

export function detach(root) {
  const bench = benches.get(root);
  bench?.hold.abort();
  if (bench?.rest) { clearTimeout(bench.rest); bench.net.invokeMethod("Rest"); }
  benches.delete(root);
}

function take(bench, event) {
  const strip = event.target.closest("[data-rod], [data-curve]");
  if (!strip || bench.hand || event.button > 0) return;
  const rod = Number(strip.dataset.rod ?? strip.dataset.curve), box = strip.getBoundingClientRect();
  strip.setPointerCapture(event.pointerId);
  if (bench.rest) { clearTimeout(bench.rest); bench.rest = 0; bench.net.invokeMethod("Rest"); }
  bench.net.invokeMethod("Grab");
  const perPixel = Number(strip.dataset.span) / (rod === 0 ? box.width : box.height);
  const hand = bench.hand = { rod, pointer: event.pointerId, x: event.clientX, y: event.clientY, perPixel, start: 0, at: null };
  if (strip.dataset.curve !== undefined) {
    const part = rod === 0 ? (event.clientX - box.left) / box.width : (box.bottom - event.clientY) / box.height;
    hand.start = bench.net.invokeMethod("Way", rod, part);
    hand.at = { x: event.clientX, y: event.clientY };
    ask(bench);
  }
  event.preventDefault();
  bench.root.querySelector(`[data-rod="${rod}"]`)?.focus({ preventScroll: true });
}

function move(bench, event) {
  if (bench.hand?.pointer !== event.pointerId) return;
  bench.hand.at = { x: event.clientX, y: event.clientY };
  ask(bench);
}

function ask(bench) {
  bench.frame ||= requestAnimationFrame(() => { bench.frame = 0; slide(bench); });
}

function slide(bench) {
  const hand = bench.hand;
  if (!hand?.at) return;
  const pixels = hand.rod === 0 ? hand.at.x - hand.x : hand.y - hand.at.y;
  const began = performance.now();
  const frame = bench.net.invokeMethod("Slide", hand.rod, Math.round(hand.start + pixels * hand.perPixel), Math.round(REACH * hand.perPixel));
  draw(bench.root, frame, true);
  bench.root.dataset.frameMs = (performance.now() - began).toFixed(1);
}

function leave(bench, event) {
  if (bench.hand?.pointer !== event.pointerId) return;
  if (bench.frame) { cancelAnimationFrame(bench.frame); bench.frame = 0; }
  slide(bench);
  bench.hand = null;
  bench.net.invokeMethod("Rest");
}

function key(bench, event) {
  const strip = event.target.closest("[data-rod]");
  if (!strip || event.altKey || event.ctrlKey || event.metaKey) return;
  const rod = Number(strip.dataset.rod);
  let frame;
  switch (event.key) {
    case "ArrowRight": case "ArrowUp": frame = bench.net.invokeMethod("Nudge", rod, 1); break;
    case "ArrowLeft": case "ArrowDown": frame = bench.net.invokeMethod("Nudge", rod, -1); break;
    case "PageUp": frame = bench.net.invokeMethod("Peak", rod, true); break;
    case "PageDown": frame = bench.net.invokeMethod("Peak", rod, false); break;
    default: return;
  }
  event.preventDefault();
  draw(bench.root, frame, true);
  restSoon(bench.root);
}

export function restSoon(root) {
  const bench = benches.get(root);
  if (!bench) return;
  clearTimeout(bench.rest);
  bench.rest = setTimeout(() => { bench.rest = 0; bench.net.invokeMethod("Rest"); }, SOON);
}

export function show(root, frame, sliding) {
  for (const name of root.querySelectorAll("[data-wide]")) name.style.flexGrow = name.dataset.wide;
  draw(root, frame, sliding);
}

export function reveal(root) {
  const panel = root.querySelector(".want");
  panel?.scrollIntoView({ block: "nearest" });
  panel?.querySelector("input")?.focus({ preventScroll: true });
}

// A frame: for each rod its marks, its place on the curve and its words; then for each face its lattice and its cut tiles.
function draw(root, frame, sliding) {
  if (!frame?.length) return;
  for (let rod = 0; rod < 2; rod++) {
    const [marks, here, words] = frame.slice(rod * 3, rod * 3 + 3);
    root.querySelector(`[data-marks="${rod}"]`)?.setAttribute("transform", marks);
    root.querySelector(`[data-here="${rod}"]`)?.setAttribute("transform", here);
    root.querySelector(`[data-rod="${rod}"]`)?.setAttribute("aria-valuetext", words);
  }
  for (let face = 0; 6 + face * 2 < frame.length; face++) {
    root.querySelector(`[data-lattice="${face}"]`)?.setAttribute("transform", frame[6 + face * 2]);
    const cells = frame[7 + face * 2];
    if (cells !== null) for (const cut of root.querySelectorAll(`[data-cut="${face}"]`)) cut.setAttribute("d", cells);
  }
  root.querySelector("[data-wall]")?.setAttribute("data-sliding", sliding ? "yes" : "no");
}
