// The device's own database: jobs as they stand, and for each a ring of earlier states.
const RING = 50, MINUTE = 60_000;
let opened;

function db() {
  return opened ??= new Promise((resolve, reject) => {
    if (!globalThis.indexedDB) throw new DOMException("no database", "SecurityError");
    const request = indexedDB.open("gaugerod", 2);
    request.onupgradeneeded = event => {
      if (event.oldVersion < 1) request.result.createObjectStore("jobs", { keyPath: "id" });
      if (event.oldVersion < 2) request.result.createObjectStore("versions", { keyPath: ["id", "saved"] });
    };
    request.onblocked = () => reject(new DOMException("an older tab", "BlockedError"));
    request.onerror = () => reject(request.error);
    request.onsuccess = () => {
      // A newer tab that must rebuild the database, or a device that closed it, is not held up; the next use opens it anew.
      request.result.onversionchange = () => { request.result.close(); opened = undefined; };
      request.result.onclose = () => { opened = undefined; };
      resolve(request.result);
    };
  }).catch(error => { opened = undefined; throw error; });
}

async function deed(mode, work) {
  for (let attempt = 0; ; attempt++) {
    const base = await db();
    let transaction;
    try {
      transaction = base.transaction(["jobs", "versions"], mode, { durability: "strict" });
    } catch (error) {
      if (attempt > 0 || error.name !== "InvalidStateError") throw error;
      opened = undefined;
      continue;
    }
    return await new Promise((resolve, reject) => {
      let result;
      transaction.oncomplete = () => resolve(result);
      transaction.onerror = transaction.onabort = event => reject(transaction.error ?? event.target.error);
      work(transaction.objectStore("jobs"), transaction.objectStore("versions"), value => { result = value; }, transaction);
    });
  }
}

function ring(id) {
  return IDBKeyRange.bound([id, 0], [id, Infinity]);
}

// What is overwritten becomes a version, at most one a minute; the oldest beyond the ring go.
function overwrite(jobs, versions, job, always, done) {
  jobs.get(job.id).onsuccess = event => {
    const before = event.target.result;
    jobs.put(job);
    if (before) versions.getAllKeys(ring(job.id)).onsuccess = found => {
      const keys = found.target.result;
      const newest = keys.length > 0 ? keys[keys.length - 1][1] : 0;
      if (before.text !== job.text && (always || before.saved - newest >= MINUTE)) {
        versions.put(before);
        for (const key of keys.slice(0, Math.max(0, keys.length + 1 - RING))) versions.delete(key);
      }
    };
    done?.(before !== undefined);
  };
}

export const store = {
  /** Fails when nothing can be kept here. */
  probe: () => deed("readwrite", jobs => {
    jobs.put({ id: "\u0000probe", name: "", text: "", ticks: [], saved: 0 });
    jobs.delete("\u0000probe");
  }),
  all: () => deed("readonly", (jobs, _, give) => { jobs.getAll().onsuccess = event => give(event.target.result); }),
  get: id => deed("readonly", (jobs, _, give) => { jobs.get(id).onsuccess = event => give(event.target.result); }),
  /** Writes jobs; tells whether one of them was there before. */
  put: list => deed("readwrite", (jobs, versions, give) => {
    for (const job of list) overwrite(jobs, versions, job, false, before => { if (before) give(true); });
  }),
  /** Writes jobs and waits for nothing; no version is made of what they overwrite. */
  putAtOnce: list => deed("readwrite", (jobs, versions, give, transaction) => {
    for (const job of list) jobs.put(job);
    transaction.commit?.();
  }),
  remove: id => deed("readwrite", (jobs, versions) => {
    jobs.delete(id);
    versions.delete(ring(id));
  }),
  versions: id => deed("readonly", (_, versions, give) => { versions.getAll(ring(id)).onsuccess = event => give(event.target.result); }),
  restore: (id, saved) => deed("readwrite", (jobs, versions) => {
    versions.get([id, saved]).onsuccess = event => {
      const version = event.target.result;
      if (version) overwrite(jobs, versions, { ...version, saved: Date.now() }, true);
    };
  }),
};

/** What is wrong, in words. */
export function friendly(error) {
  switch (error?.name) {
    case "QuotaExceededError": return "the storage of this device is full";
    case "BlockedError": return "an older tab of this page is still open; close it";
    case "SecurityError":
    case "InvalidStateError":
    case "NotAllowedError":
    case "UnknownError": return "this browser keeps nothing for this page, as in a private window";
    default: return "the browser says “" + String(error?.message ?? error) + "”";
  }
}
