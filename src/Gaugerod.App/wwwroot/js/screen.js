// What keeps its size on the screen however near the drawing is looked at: hatches and names.
const AIR = 7, LETTERS = 13, WIDE = 0.62;

// How wide apart the hatches are goes by doubling and halving, so that they do not crawl.
export function hatch(look, perPixel) {
  const air = 2 ** Math.round(Math.log2(AIR * perPixel));
  if (air === look.hatched) return;
  look.hatched = air;
  for (const pattern of look.wall.querySelectorAll("pattern[data-part]")) {
    const size = air * Number(pattern.dataset.part) / 4;
    pattern.setAttribute("width", size);
    pattern.setAttribute("height", size);
    pattern.firstElementChild.setAttribute("d", `M0 ${size / 2}h${size}` + (pattern.dataset.crossed ? `M${size / 2} 0v${size}` : ""));
  }
}

// A name stands where it has room, level or upright, as on the sheets.
export function letter(look, perPixel) {
  const names = look.wall.querySelector("[data-names]");
  if (!names) return;
  const high = LETTERS * perPixel;
  names.setAttribute("font-size", high);
  for (const name of names.children) {
    const { w, h, x, y } = name.dataset, long = name.textContent.length * high * WIDE;
    const level = long < w && high * 1.2 < h, upright = !level && long < h && high * 1.2 < w;
    name.setAttribute("visibility", level || upright ? "visible" : "hidden");
    if (upright) name.setAttribute("transform", `rotate(-90 ${x} ${y})`);
    else name.removeAttribute("transform");
  }
}
