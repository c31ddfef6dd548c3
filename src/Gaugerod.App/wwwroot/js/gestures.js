// The hand on the drawing: wheel, two fingers, drag. A touch that moves less than a finger trembles is a tap and goes on to
// what lies under it.
import { ask, MOST, nearer, placeAt, push, put } from "./look.js";

const TREMBLE = 10, WHEEL = 0.0015, PINCH = 0.01, LINE = 16, SCROLLING = 250;

export function gestures(bench, look) {
  const { frame, hold } = look, signal = hold.signal, fingers = new Map();
  let held = null, dragged = false, scrolled = 0;
  const on = (name, work, how) => frame.addEventListener(name, work, { signal, ...how });

  on("pointerdown", event => {
    if (event.pointerType === "mouse" && event.button !== 0) return;
    if (fingers.size === 0) dragged = false;
    fingers.set(event.pointerId, { x: event.clientX, y: event.clientY });
    grasp();
  });

  on("pointermove", event => {
    const finger = fingers.get(event.pointerId);
    if (!finger) return;
    [finger.x, finger.y] = [event.clientX, event.clientY];
    const now = span();
    if (!dragged && fingers.size === 1 && Math.hypot(now.x - held.from.x, now.y - held.from.y) < TREMBLE) return;
    dragged = true;
    if (fingers.size === 1 && look.zoom <= 1.001) return;
    if (!frame.dataset.dragged) {
      for (const id of fingers.keys()) frame.setPointerCapture(id);
      grasp();
      frame.dataset.dragged = "yes";
    }

    if (fingers.size > 1) look.zoom = Math.min(MOST, Math.max(1, held.zoom * now.wide / held.from.wide));
    put(look, held.place, now);
    ask(bench);
  });

  const loose = event => {
    if (!fingers.delete(event.pointerId)) return;
    if (fingers.size > 0) grasp();
    else delete frame.dataset.dragged;
  };
  on("pointerup", loose);
  on("pointercancel", loose);

  // What was moved was not tapped.
  on("click", event => {
    if (!dragged) return;
    dragged = false;
    event.preventDefault();
    event.stopPropagation();
  }, { capture: true });

  // The page may scroll under one finger, never under two.
  on("touchmove", event => { if (event.touches.length > 1 && event.cancelable) event.preventDefault(); }, { passive: false });

  on("wheel", event => {
    const turn = event.deltaY * (event.deltaMode === 1 ? LINE : 1);
    // A page that scrolls under the pointer goes on scrolling, and at its whole the drawing can only be looked at nearer.
    if (!event.ctrlKey && (performance.now() - scrolled < SCROLLING || (look.zoom <= 1.001 && turn > 0))) {
      scrolled = performance.now();
      return;
    }

    event.preventDefault();
    if (!event.ctrlKey && Math.abs(event.deltaX) > Math.abs(event.deltaY)) push(bench, event.deltaX / frame.clientWidth, 0);
    else nearer(bench, Math.exp(-turn * (event.ctrlKey ? PINCH : WHEEL)), { x: event.clientX, y: event.clientY });
  }, { passive: false });
  addEventListener("wheel", event => { if (!frame.contains(event.target)) scrolled = performance.now(); }, { signal, passive: true });

  // From here on, what lies under the fingers stays under them.
  function grasp() {
    const from = span();
    held = { from, zoom: look.zoom, place: placeAt(look, from) };
  }

  function span() {
    const [one, other] = fingers.values();
    return other ? { x: (one.x + other.x) / 2, y: (one.y + other.y) / 2, wide: Math.max(1, Math.hypot(one.x - other.x, one.y - other.y)) } : { ...one, wide: 1 };
  }
}
