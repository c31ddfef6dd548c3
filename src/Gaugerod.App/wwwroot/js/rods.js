// The rods under the hand. What moves is moved here; the engine is asked at most once a frame.
import { draw } from "./frame.js";
import { share } from "./look.js";
import { unpick } from "./pick.js";

const REACH = 7, KEPT = 2000, SHOWN = 40, SOON = 500;

export function take(bench, event) {
  const strip = event.target.closest("[data-rod], [data-curve]");
  if (!strip || bench.hand || event.button > 0) return;
  const rod = Number(strip.dataset.rod ?? strip.dataset.curve), box = strip.getBoundingClientRect();
  strip.setPointerCapture(event.pointerId);
  restNow(bench);
  unpick(bench);
  bench.net.invokeMethod("Grab");
  bench.work.length = 0;
  // A rod shows as much of the run as the drawing does; a curve always its whole repeat.
  const shown = strip.dataset.rod === undefined ? 1 : share(bench, rod);
  const perPixel = Number(strip.dataset.span) * shown / (rod === 0 ? box.width : box.height);
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

export function move(bench, event) {
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
  if (bench.work.length < KEPT) bench.work.push(performance.now() - began);
}

export function leave(bench, event) {
  if (bench.hand?.pointer !== event.pointerId) return;
  if (bench.frame) { cancelAnimationFrame(bench.frame); bench.frame = 0; }
  slide(bench);
  bench.hand = null;
  // What was let go is on the screen before the job is written and planned anew.
  restIn(bench, SHOWN);
}

export function rodKey(bench, event) {
  const strip = event.target.closest("[data-rod]");
  if (!strip || event.altKey || event.ctrlKey || event.metaKey) return false;
  const rod = Number(strip.dataset.rod);
  switch (event.key) {
    case "ArrowRight": case "ArrowUp": stepped(bench, "Nudge", rod, 1); break;
    case "ArrowLeft": case "ArrowDown": stepped(bench, "Nudge", rod, -1); break;
    case "PageUp": stepped(bench, "Peak", rod, true); break;
    case "PageDown": stepped(bench, "Peak", rod, false); break;
    default: return false;
  }
  event.preventDefault();
  return true;
}

// The keys beside the figures: which rod, and which way.
export function rodPress(bench, event) {
  const key = event.target.closest("[data-nudge], [data-peak]");
  if (!key || key.disabled) return false;
  const [rod, way] = (key.dataset.nudge ?? key.dataset.peak).split(" ").map(Number);
  if (key.dataset.nudge) stepped(bench, "Nudge", rod, way);
  else stepped(bench, "Peak", rod, way > 0);
  return true;
}

function stepped(bench, how, rod, way) {
  unpick(bench);
  draw(bench.root, bench.net.invokeMethod(how, rod, way), true);
  restIn(bench);
}

// The job is written, and planned anew, when the rods have rested a while.
export function restIn(bench, milliseconds = SOON) {
  clearTimeout(bench.rest);
  bench.rest = setTimeout(() => restNow(bench), milliseconds);
}

// A rod that was to rest soon rests at once.
export function restNow(bench) {
  if (!bench.rest) return;
  clearTimeout(bench.rest);
  bench.rest = 0;
  bench.net.invokeMethod("Rest");
}
