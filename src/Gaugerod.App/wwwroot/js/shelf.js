// Jobs kept on the device. What is held is written soon, and at once when the page hides.
const SOON = 300;
let opened, held = new Map(), timer = 0, last = 0, trouble = "", watcher = null;

function say() {
  watcher?.invokeMethodAsync("Say", state());
}

export function watch(who) {
  watcher = who;
  say();
}

function db() {
  return opened ??= new Promise((resolve, reject) => {
    const request = indexedDB.open("gaugerod", 1);
    request.onupgradeneeded = () => request.result.createObjectStore("jobs", { keyPath: "id" });
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
  });
}

async function run(mode, work) {
  const base = await db();
  return new Promise((resolve, reject) => {
    const deed = base.transaction("jobs", mode, { durability: "strict" });
    const request = work(deed.objectStore("jobs"));
    deed.oncomplete = () => resolve(request?.result);
    deed.onerror = deed.onabort = () => reject(deed.error);
  });
}

async function write() {
  clearTimeout(timer);
  timer = 0;
  const jobs = [...held.values()];
  held = new Map();
  if (jobs.length === 0) return;
  try {
    await run("readwrite", store => { for (const job of jobs) store.put(job); });
    last = Date.now();
    trouble = "";
  } catch (error) {
    for (const job of jobs) if (!held.has(job.id)) held.set(job.id, job);
    trouble = String(error?.message ?? error);
  }
  say();
}

addEventListener("pagehide", write);
addEventListener("visibilitychange", () => { if (document.visibilityState === "hidden") write(); });

export async function list() {
  await write();
  const all = await run("readonly", store => store.getAll());
  return all.map(job => ({ id: job.id, name: job.name, saved: job.saved })).sort((a, b) => b.saved - a.saved);
}

export async function read(id) {
  await write();
  const job = await run("readonly", store => store.get(id));
  return job ? { text: job.text, ticks: job.ticks ?? [] } : null;
}

export function hold(id, name, text, ticks) {
  held.set(id, { id, name, text, ticks, saved: Date.now() });
  timer ||= setTimeout(write, SOON);
  say();
}

export async function remove(id) {
  held.delete(id);
  await run("readwrite", store => store.delete(id));
}

export function lock(id) {
  if (!navigator.locks) return true;
  return new Promise(resolve => {
    navigator.locks.request("job-" + id, { ifAvailable: true }, got => {
      resolve(got !== null);
      return got && new Promise(() => { });
    });
  });
}

function state() {
  if (trouble) return "not saved: " + trouble + ". Save the job to a file.";
  if (held.size > 0) return "saving";
  return last ? "saved " + new Date(last).toTimeString().slice(0, 5) : "kept on this device";
}

export function saveFile(name, type, bytes) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([bytes], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}
