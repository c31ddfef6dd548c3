// A key that is pressed is pressed, though it slides from under the pointer. Leaving a field may say something beneath it, and
// all below moves down between press and release: the browser then sees two different elements and makes no click of it.
const near = 12;
let pressed = null;

const stands = key => { const box = key.getBoundingClientRect(); return `${box.left} ${box.top}`; };

const keyOf = target => target instanceof Element ? target.closest("button") : null;

addEventListener("pointerdown", event => {
  const key = event.button === 0 ? keyOf(event.target) : null;
  pressed = key && { key, stood: stands(key), x: event.clientX, y: event.clientY, id: event.pointerId };
}, true);

addEventListener("pointerup", event => {
  const press = pressed;
  pressed = null;
  if (!press || press.id !== event.pointerId || press.key === keyOf(event.target)) return;
  const still = Math.hypot(event.clientX - press.x, event.clientY - press.y) < near;
  const slid = press.key.isConnected && stands(press.key) !== press.stood;
  if (still && slid && !press.key.disabled) press.key.click();
}, true);

addEventListener("pointercancel", () => { pressed = null; }, true);
