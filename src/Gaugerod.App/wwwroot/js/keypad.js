// The keypad for lengths, and the way from field to field. Works for every input[data-length] under the root it is started on.
// Before the first touch the device's main pointer tells: on a phone a field may have the focus before it is tapped.
let wanted = read(), touching = matchMedia("(pointer: coarse)").matches, root = null, on = null;

function read() {
  try { return localStorage.getItem("gaugerod-pad") !== "no"; } catch { return true; }
}

const pad = () => document.getElementById("pad");
const isLength = element => element instanceof HTMLInputElement && element.hasAttribute("data-length");

// As goTo, of something that is still being drawn: parts of a long station come one after another.
export async function goToSoon(ids) {
  for (const until = performance.now() + 5000; !await goTo(ids) && performance.now() < until;) await new Promise(requestAnimationFrame);
}

// Opens all that is folded over an element and brings it into sight.
export async function goTo(ids) {
  const find = () => ids.split(" ").map(id => document.getElementById(id) ?? document.querySelector(`[data-fold~="${id}"]`)).find(found => found);
  // What is folded away is drawn when it is unfolded, and may hold the place itself.
  for (let fold; fold = closed(find());) if (!await unfold(fold)) break;
  let element = find();
  if (!element) return false;
  if (element instanceof HTMLDetailsElement) element = element.querySelector("summary");
  element.scrollIntoView({ block: "center" });
  const had = document.activeElement === element;
  element.focus({ preventScroll: true });
  if (had) ready(element);
  return true;
}

// The outermost fold that hides something, or is it.
function closed(element) {
  let fold = null;
  for (let at = element; at; at = at.parentElement) if (at instanceof HTMLDetailsElement && !at.open) fold = at;
  return fold;
}

async function unfold(fold) {
  if (!("fold" in fold.dataset)) return fold.open = true;
  fold.querySelector("summary").click();
  for (let frames = 0; !fold.open && frames < 60; frames++) await new Promise(requestAnimationFrame);
  return fold.open;
}

// A part opens at its top, below the bar. A field that is gone takes the keypad with it.
export function toTop(element) {
  if (!isLength(document.activeElement)) hide();
  scrollTo(0, element.getBoundingClientRect().top + scrollY);
}

export function isWanted() { return wanted; }

export function setWanted(yes) {
  wanted = yes;
  try { localStorage.setItem("gaugerod-pad", yes ? "yes" : "no"); } catch { /* kept for this visit only */ }
  if (!yes) hide();
}

export function start(element) {
  stop();
  root = element;
  on = new AbortController();
  const options = { signal: on.signal };
  root.addEventListener("pointerdown", touched, { ...options, capture: true });
  root.addEventListener("focusin", entered, options);
  root.addEventListener("click", tapped, options);
  root.addEventListener("focusout", left, options);
  root.addEventListener("keydown", keyed, options);
  // The pad must not take the focus from the field it types into.
  pad()?.addEventListener("mousedown", event => event.preventDefault(), options);
  pad()?.addEventListener("click", pressed, options);
  addEventListener("resize", turned, options);
  if (root.contains(document.activeElement)) ready(document.activeElement);
}

export function stop() {
  on?.abort();
  hide();
}

// Whether the last touch was a finger's or a pen's. The keyboard of the device comes up on focus, so the field is told before.
function touched(event) {
  touching = event.pointerType !== "mouse";
  if (isLength(event.target)) prepare(event.target);
}

function prepare(field) {
  field.inputMode = wanted && touching && !field.readOnly ? "none" : field.dataset.inputmode;
}

function entered(event) {
  if (isLength(event.target)) event.target.select();
  ready(event.target);
}

// A field that had the focus before may be typed into already: selecting it now would lose the first key to the second.
function ready(field) {
  if (!isLength(field)) return;
  prepare(field);
  if (field.inputMode === "none") show(field);
}

function tapped(event) {
  if (isLength(event.target) && event.target.inputMode === "none") show(event.target);
}

// Not before the tap that took the focus away is over: what it was aimed at would move away under the finger.
function left(event) {
  if (!isLength(event.relatedTarget)) setTimeout(() => { if (!isLength(document.activeElement)) hide(); }, 250);
}

function show(field) {
  const open = pad();
  if (!open) return;
  open.hidden = false;
  // After the tap that opened it is over, so that nothing moves away under the finger.
  setTimeout(() => uncover(field, open), 60);
}

// The field is brought to stand above the keypad, and below the row that stays at the top.
function uncover(field, open) {
  if (open.hidden || !field.isConnected) return;
  const box = (field.closest(".field") ?? field).getBoundingClientRect(), over = open.getBoundingClientRect();
  const low = box.right > over.left && box.left < over.right ? box.bottom + 8 - over.top : 0;
  const below = element => element?.getBoundingClientRect().bottom ?? 0;
  const head = Math.max(below(root.querySelector(".head")), below(field.closest(".readings")?.querySelector(".verdict")));
  const room = box.top - head - 4;
  if (low > 0) scrollBy(0, Math.min(low, Math.max(room, 0) || low));
  else if (room < 0) scrollBy(0, room);
}

// The device was turned: the keypad has another size, and the field another place.
function turned() {
  const open = pad();
  if (open && !open.hidden && isLength(document.activeElement)) setTimeout(() => uncover(document.activeElement, open), 60);
}

function hide() {
  const open = pad();
  if (open) open.hidden = true;
}

function keyed(event) {
  if (event.key === "Escape" && pad() && !pad().hidden) return hide();
  const field = event.target;
  if (event.key !== "Enter" || !(field instanceof HTMLInputElement) || field.type !== "text") return;
  event.preventDefault();
  step(field, event.shiftKey ? -1 : 1);
}

function step(field, by) {
  const all = [...root.querySelectorAll("input[data-length], input[data-next], select[data-next]")]
    .filter(other => !other.disabled && other.checkVisibility());
  const next = all[all.indexOf(field) + by];
  if (!next) return field.blur();
  next.focus();
  next.scrollIntoView({ block: "nearest" });
}

function put(field, text, from = field.selectionStart ?? field.value.length, to = field.selectionEnd ?? field.value.length) {
  if (field.value.length - (to - from) + text.length > 64) return;
  field.setRangeText(text, from, to, "end");
  field.dispatchEvent(new Event("input", { bubbles: true }));
  // What is said of it below may have become longer.
  const open = pad();
  if (open && !open.hidden) setTimeout(() => uncover(field, open), 120);
}

// A fraction's key takes the place of the fraction before it, and stands off from the whole number.
function part(field, text) {
  const [from, to] = [field.selectionStart ?? 0, field.selectionEnd ?? 0];
  const before = field.value.slice(0, from), old = before.match(/\s*\b\d+\/\d+$/);
  const begin = old ? from - old[0].length : from;
  const stands = /[\d'′]$/.test(field.value.slice(0, begin));
  put(field, (stands ? " " : "") + text, begin, to);
}

function pressed(event) {
  const key = event.target.closest("button"), field = document.activeElement;
  if (!key || !isLength(field)) return;
  if (key.dataset.part) return part(field, key.dataset.part);
  if (key.dataset.put) return put(field, key.dataset.put);
  const [from, to] = [field.selectionStart ?? 0, field.selectionEnd ?? 0];
  switch (key.dataset.do) {
    case "rub": return put(field, "", from === to ? Math.max(0, from - 1) : from, to);
    case "next": return step(field, 1);
    case "back": return step(field, -1);
    case "close": return field.blur();
    case "system":
      field.blur();
      touching = false;
      field.focus();
  }
}
