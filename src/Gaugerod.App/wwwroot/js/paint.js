// A touch is answered with the next picture; what takes longer comes behind it.
export function next() {
  return new Promise(done => {
    // A page that is not in sight is not painted.
    const late = setTimeout(done, 120);
    requestAnimationFrame(() => setTimeout(() => { clearTimeout(late); done(); }, 0));
  });
}
