// One writer a job among the tabs. A tab that closes or crashes lets go by itself.
const PATIENCE = 3000;
const channel = "BroadcastChannel" in globalThis ? new BroadcastChannel("gaugerod") : null;
const mineNow = new Map();
let keeper = { flush: async () => { }, lost: () => { } };

/** Who saves what is held before a lock is given away, and who is told that it is gone. */
export function watch(who) {
  keeper = who;
}

export function mine(id) {
  return !navigator.locks || mineNow.has(id);
}

function request(id, options) {
  return new Promise(resolve => {
    navigator.locks.request("job-" + id, options, got => {
      resolve(got !== null);
      return got && new Promise(release => mineNow.set(id, release));
    }).catch(error => {
      // Either it was not got in time, or another tab took it by force.
      if (mineNow.delete(id)) keeper.lost(id);
      resolve(false);
      return error;
    });
  });
}

/** Becomes the writer of a job and lets go of the others; false when another tab writes it. */
export async function take(id) {
  for (const [other, release] of mineNow) {
    if (other === id) continue;
    await keeper.flush();
    mineNow.delete(other);
    release();
  }
  return mine(id) || await request(id, { ifAvailable: true });
}

/** Asks the writer to let go; one that does not answer is frozen, and is set aside. */
export async function takeOver(id) {
  if (mine(id)) return;
  channel?.postMessage({ give: id });
  const got = await request(id, { signal: AbortSignal.timeout(PATIENCE) });
  if (!got) await request(id, { steal: true });
}

channel?.addEventListener("message", async event => {
  const id = event.data?.give;
  const release = mineNow.get(id);
  if (!release) return;
  await keeper.flush();
  mineNow.delete(id);
  release();
  keeper.lost(id);
});
