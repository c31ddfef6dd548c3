// Shows a frame of a slide. A frame: for each rod its marks, its place on the curve and its words; then for each face its
// lattice and its cut tiles, kind by kind. What is null is as it was.
const KINDS = 7, RODS = 6;
const known = new WeakMap();

// The drawing may have other parts now.
export function clear(root) { known.delete(root); }

export function draw(root, frame, sliding) {
  if (!frame?.length) return;
  const parts = partsOf(root);
  for (let rod = 0; rod < 2; rod++) {
    set(parts.rods[rod].marks, "transform", frame[rod * 3]);
    set(parts.rods[rod].here, "transform", frame[rod * 3 + 1]);
    set(parts.rods[rod].strip, "aria-valuetext", frame[rod * 3 + 2]);
  }

  for (let face = 0; face < parts.faces.length; face++) {
    const at = RODS + face * (KINDS + 1);
    set(parts.faces[face].lattice, "transform", frame[at]);
    for (let kind = 0; kind < KINDS; kind++) {
      for (const cut of parts.faces[face].cuts[kind]) set(cut, "d", frame[at + 1 + kind]);
    }
  }

  set(parts.wall, "data-sliding", sliding ? "yes" : "no");
}

function set(element, name, value) {
  if (element && value !== null && value !== undefined) element.setAttribute(name, value);
}

function partsOf(root) {
  let parts = known.get(root);
  if (parts) return parts;
  const one = query => root.querySelector(query);
  parts = {
    wall: one("[data-wall]"),
    rods: [0, 1].map(rod => ({ marks: one(`[data-marks="${rod}"]`), here: one(`[data-here="${rod}"]`), strip: one(`[data-rod="${rod}"]`) })),
    faces: [...root.querySelectorAll("[data-lattice]")].map((lattice, face) => ({
      lattice, cuts: Array.from({ length: KINDS }, (_, kind) => [...root.querySelectorAll(`[data-cut="${face} ${kind}"]`)]),
    })),
  };
  known.set(root, parts);
  return parts;
}
