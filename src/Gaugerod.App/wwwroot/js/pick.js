// One piece picked out: outlined on the drawing, said in words on the card beside it. One click serves all pieces.
import { reveal, middle } from "./look.js";

const WAYS = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };

export function tapped(bench, event) {
  const wall = event.target.closest("[data-wall]");
  if (!wall || event.target.closest("[data-edge]")) return;
  const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(wall.getScreenCTM().inverse());
  outline(bench, bench.net.invokeMethod("Tap", at.x, at.y, false), true);
}

// The keys of the drawing: Enter picks the piece in the middle of what is shown, Shift with an arrow the one beside it.
export function pieceKey(bench, event) {
  if (event.altKey || event.ctrlKey || event.metaKey) return;
  const onDrawing = event.target.matches("[data-look]");
  if (event.key === "Escape" && bench.picked && (onDrawing || event.target.closest("[data-card]"))) close(bench);
  else if (onDrawing && event.key === "Enter") {
    const at = middle(bench);
    outline(bench, bench.net.invokeMethod("Tap", at.x, at.y, true));
  } else if (onDrawing && event.shiftKey && WAYS[event.key] && bench.picked) outline(bench, bench.net.invokeMethod("Beside", ...WAYS[event.key]));
  else return;
  event.preventDefault();
}

// The card's own keys.
export function pieceStep(bench, event) {
  const key = event.target.closest("[data-card-key]")?.dataset.cardKey;
  if (!key) return false;
  if (key === "close") close(bench);
  else outline(bench, bench.net.invokeMethod("Step", key === "after" ? 1 : -1));
  return true;
}

// Nothing is picked any more: the pieces are no longer where they were.
export function unpick(bench) {
  if (!bench.picked) return;
  bench.picked = false;
  outlines(bench, "");
  bench.net.invokeMethod("Unpick");
}

function close(bench) {
  unpick(bench);
  bench.root.querySelector("[data-look]")?.focus({ preventScroll: true });
}

function outline(bench, path, byTap = false) {
  bench.picked = path.length > 0;
  const last = outlines(bench, path);
  if (!bench.picked) return;
  if (!byTap) reveal(bench, last.getBBox());
  bench.root.querySelector("[data-card]")?.scrollIntoView({ block: "nearest" });
}

function outlines(bench, path) {
  const lines = bench.root.querySelectorAll("[data-picked]");
  for (const line of lines) line.setAttribute("d", path);
  return lines[lines.length - 1];
}
