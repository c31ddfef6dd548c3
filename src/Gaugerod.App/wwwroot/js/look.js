// How the drawing is looked at: nearer, farther, moved about. Only the view is changed, at most once a frame: nothing is asked
// of C# and nothing is drawn anew.
import { gestures } from "./gestures.js";
import { hatch, letter } from "./screen.js";

export const MOST = 30;
const STEP = 1.5, PUSH = 0.15, EDGE = 8;

// Takes up the drawing as it now is, looked at as before where it is of the same run.
export function look(bench) {
  const frame = bench.root.querySelector("[data-look]"), wall = frame?.querySelector("[data-wall]");
  if (!wall) return;
  const whole = { w: Number(wall.dataset.width), h: Number(wall.dataset.height), run: wall.dataset.wall };
  const old = bench.look;
  if (old?.frame !== frame) {
    letGo(bench);
    bench.look = { frame, wall, whole, zoom: 1, x: whole.w / 2, y: whole.h / 2, frameAsked: 0, hold: new AbortController(), hatched: 0 };
    gestures(bench, bench.look);
    bench.look.sized = new ResizeObserver(() => ask(bench));
    bench.look.sized.observe(frame);
    keys(bench);
  } else {
    if (old.whole.run !== whole.run) Object.assign(old, { zoom: 1, x: whole.w / 2, y: whole.h / 2 });
    Object.assign(old, { wall, whole, hatched: 0 });
  }

  wall.style.aspectRatio = `${whole.w} / ${whole.h}`;
  apply(bench);
}

export function letGo(bench) {
  bench.look?.hold.abort();
  bench.look?.sized?.disconnect();
  bench.look = null;
}

// The part of the run that a rod shows, of its whole length; more than one where there is air around it.
export function share(bench, rod) {
  const now = view(bench.look);
  return rod === 0 ? now.w / bench.look.whole.w : now.h / bench.look.whole.h;
}

// What is shown, in the drawing's units, given how near it is looked at and what is in the middle.
export function view(look) {
  const { w, h, perPixel } = size(look);
  look.x = within(look.x, w, look.whole.w);
  look.y = within(look.y, h, look.whole.h);
  return { x: look.x - w / 2, y: look.y - h / 2, w, h, perPixel };
}

function size(look) {
  const box = look.wall.getBoundingClientRect();
  if (!box.width || !box.height) return { box, w: look.whole.w, h: look.whole.h, perPixel: 1 };
  const w = Math.max(look.whole.w, look.whole.h * box.width / box.height) / look.zoom;
  return { box, w, h: w * box.height / box.width, perPixel: w / box.width };
}

// The middle of what is shown.
export function middle(bench) {
  const now = view(bench.look);
  return { x: now.x + now.w / 2, y: now.y + now.h / 2 };
}

// A place on the screen as a place of the drawing.
export function placeAt(look, at) {
  const now = view(look), box = look.wall.getBoundingClientRect();
  return { x: now.x + (at.x - box.left) * now.perPixel, y: now.y + (at.y - box.top) * now.perPixel };
}

// Looks nearer or farther, with a place on the screen, or else the middle, staying where it is.
export function nearer(bench, by, at) {
  const look = bench.look, place = at && placeAt(look, at);
  look.zoom = Math.min(MOST, Math.max(1, look.zoom * by));
  if (place) put(look, place, at);
  ask(bench);
}

// Puts a place of the drawing under a place on the screen.
export function put(look, place, at) {
  const { box, w, h, perPixel } = size(look);
  look.x = place.x - (at.x - box.left) * perPixel + w / 2;
  look.y = place.y - (at.y - box.top) * perPixel + h / 2;
}

// Moves by parts of what is shown; false where there is nothing more that way.
export function push(bench, right, down) {
  const look = bench.look, before = view(look), was = { x: look.x, y: look.y };
  look.x += right * before.w;
  look.y += down * before.h;
  view(look);
  if (look.x === was.x && look.y === was.y) return false;
  ask(bench);
  return true;
}

// Brings a box of the drawing into sight, if it is not.
export function reveal(bench, box) {
  const look = bench.look, now = view(look), air = EDGE * now.perPixel;
  const shift = (from, size, start, length) => size > length ? (from + size / 2) - (start + length / 2) : Math.min(0, from - air - start) + Math.max(0, from + size + air - start - length);
  const [right, down] = [shift(box.x, box.width, now.x, now.w), shift(box.y, box.height, now.y, now.h)];
  if (right || down) push(bench, right / now.w, down / now.h);
}

// Brings another face into the middle when it is out of sight.
export function lookAgain(bench, face) {
  if (!face || !bench.look || bench.look.zoom === 1) return;
  const box = face.getBBox(), now = view(bench.look);
  if (box.x < now.x + now.w && box.x + box.width > now.x) return;
  push(bench, (box.x + box.width / 2 - bench.look.x) / now.w, 0);
}

export function ask(bench) {
  const look = bench.look;
  look.frameAsked ||= requestAnimationFrame(() => { look.frameAsked = 0; if (bench.look === look) apply(bench); });
}

function apply(bench) {
  const look = bench.look;
  const now = view(look), say = number => Math.round(number * 10) / 10;
  look.wall.setAttribute("viewBox", `${say(now.x)} ${say(now.y)} ${say(now.w)} ${say(now.h)}`);
  bench.root.querySelector('[data-rod="0"] svg')?.setAttribute("viewBox", `${say(now.x)} 0 ${say(now.w)} 100`);
  bench.root.querySelector('[data-rod="1"] svg')?.setAttribute("viewBox", `0 ${say(now.y)} 100 ${say(now.h)}`);
  hatch(look, now.perPixel);
  letter(look, now.perPixel);
  const zoomed = look.zoom > 1.001 ? "yes" : "no";
  if (look.frame.dataset.zoomed !== zoomed) look.frame.dataset.zoomed = zoomed;
  for (const key of bench.root.querySelectorAll("[data-look-key]")) {
    const idle = key.dataset.lookKey === "nearer" ? look.zoom >= MOST : zoomed === "no";
    if (key.ariaDisabled !== `${idle}`) key.ariaDisabled = `${idle}`;
  }
}

function within(middle, shown, whole) {
  return shown >= whole ? whole / 2 : Math.min(whole - shown / 2, Math.max(shown / 2, middle));
}

function keys(bench) {
  const { frame, hold } = bench.look, signal = hold.signal;
  bench.root.addEventListener("click", event => {
    const key = event.target.closest("[data-look-key]")?.dataset.lookKey;
    if (key) turn(bench, key);
  }, { signal });
  frame.addEventListener("keydown", event => {
    if (event.target !== frame || event.altKey || event.ctrlKey || event.metaKey) return;
    let done = true;
    switch (event.key) {
      case "+": case "=": turn(bench, "nearer"); break;
      case "-": case "_": turn(bench, "farther"); break;
      case "0": turn(bench, "fit"); break;
      case "ArrowLeft": done = !event.shiftKey && push(bench, -PUSH, 0); break;
      case "ArrowRight": done = !event.shiftKey && push(bench, PUSH, 0); break;
      case "ArrowUp": done = !event.shiftKey && push(bench, 0, -PUSH); break;
      case "ArrowDown": done = !event.shiftKey && push(bench, 0, PUSH); break;
      default: done = false;
    }
    // An arrow with nothing more that way moves the page, as it does elsewhere.
    if (done) event.preventDefault();
  }, { signal });
}

function turn(bench, key) {
  if (key === "fit") nearer(bench, 0);
  else nearer(bench, key === "nearer" ? STEP : 1 / STEP);
}
