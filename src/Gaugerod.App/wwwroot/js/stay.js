// What is moved in a list stays under the finger that moves it: the page is scrolled by as much as the list moved it.
const found = id => document.getElementById(id);

// How far down the screen it stands; nothing for what is not there.
export function top(id) { return found(id)?.getBoundingClientRect().top ?? 0; }

// Brings it back to where it stood, and keeps the focus in it: on the key it was moved by, or at an end of the list on the other.
export function hold(id, stood, key) {
  const item = found(id);
  if (!item) return;
  scrollBy(0, item.getBoundingClientRect().top - stood);
  const keys = [...item.querySelectorAll("button")], wanted = keys[key];
  (wanted && !wanted.disabled ? wanted : keys.find(one => !one.disabled))?.focus({ preventScroll: true });
}
