// Jobs kept on the device. What is held is written soon, and at once when the page hides. Only the tab that has a job's
// lock writes it.
import { store, friendly } from "./store.js";
import * as locks from "./locks.js";

const SOON = 300, AGAIN = 5000;
let held = new Map(), going = [], known = new Map(), writing = Promise.resolve(), timer = 0, last = 0, trouble = "", safe = null, asked = false, watcher = null;

function say() {
  watcher?.invokeMethodAsync("Say", state(), trouble, safe);
}

function state() {
  if (trouble) return "not saved";
  if (held.size > 0) return "saving";
  return last ? "saved " + new Date(last).toTimeString().slice(0, 5) : "kept on this device";
}

/** Who is told how the saving stands. Whether anything can be kept at all is found out now, not at the first loss. */
export async function watch(who) {
  watcher = who;
  locks.watch({ flush, lost: id => { held.delete(id); known.delete(id); watcher?.invokeMethodAsync("Lose", id); } });
  try {
    await store.probe();
    safe = await navigator.storage?.persisted?.() ?? null;
    const room = await navigator.storage?.estimate?.();
    if (room && room.quota - room.usage < 5_000_000) trouble = "the storage of this device is nearly full";
  } catch (error) {
    trouble = friendly(error);
  }
  say();
}

async function write() {
  clearTimeout(timer);
  timer = 0;
  const jobs = [...held.values()];
  held = new Map();
  if (jobs.length === 0) return;
  going = jobs;
  try {
    const again = await store.put(jobs);
    last = Date.now();
    trouble = "";
    if (again) await askToKeep();
  } catch (error) {
    for (const job of jobs) if (!held.has(job.id)) held.set(job.id, job);
    trouble = friendly(error);
    timer ||= setTimeout(flush, AGAIN);
  }
  going = [];
  say();
}

// A page that goes hears no answer any more, so all is put and committed in one breath, what was under way among it.
function lastWord() {
  // What is being typed counts as typed: the field hands it over as when it is left.
  document.activeElement?.dispatchEvent(new FocusEvent("blur"));
  const jobs = [...new Map([...going, ...held.values()].map(job => [job.id, job])).values()];
  if (jobs.length > 0) store.putAtOnce(jobs).catch(() => { });
}

/** Writes all that is held, now. */
export function flush() {
  return writing = writing.then(write, write);
}

// Asked once a job of the person's own is there: a browser grants it more readily then, and a mere visitor is not bothered.
async function askToKeep() {
  if (asked || !navigator.storage?.persist) return;
  asked = true;
  safe = await navigator.storage.persisted() || await navigator.storage.persist();
}

addEventListener("pagehide", lastWord);
addEventListener("visibilitychange", () => { if (document.visibilityState === "hidden") lastWord(); });

export async function list() {
  await flush();
  const all = await store.all();
  return all.map(job => ({ id: job.id, name: job.name, saved: job.saved })).sort((a, b) => b.saved - a.saved);
}

export async function read(id) {
  await flush();
  const job = await store.get(id);
  if (!job) return null;
  known.set(id, mark(job.text, job.ticks ?? []));
  return { text: job.text, ticks: job.ticks ?? [] };
}

/** Every job whole, for a copy of all of them. */
export async function all() {
  await flush();
  return (await store.all()).map(job => ({ name: job.name, saved: job.saved, text: job.text }));
}

function mark(text, ticks) {
  return text + "\n" + [...ticks].sort().join(" ");
}

export function hold(id, name, text, ticks) {
  // Looking at a job is no change of it, and a tab that lost its lock has no say.
  if (!locks.mine(id) || known.get(id) === mark(text, ticks)) return;
  known.set(id, mark(text, ticks));
  held.set(id, { id, name, text, ticks, saved: Date.now() });
  timer ||= setTimeout(flush, SOON);
  say();
}

export async function remove(id) {
  held.delete(id);
  known.delete(id);
  if (opened() === id) forget();
  await flush();
  await store.remove(id);
}

export async function versions(id) {
  await flush();
  return (await store.versions(id)).map(version => ({ saved: version.saved, name: version.name })).sort((a, b) => b.saved - a.saved);
}

/** Lays an earlier state in the place of the job as it stands, which itself becomes a version. */
export async function restore(id, saved) {
  if (!locks.mine(id)) return null;
  await flush();
  await store.restore(id, saved);
  return read(id);
}

export async function lock(id) {
  const got = await locks.take(id);
  remember(id);
  return got;
}

/** Takes a job over from the tab that writes it, which first saves what it holds. */
export async function takeOver(id) {
  await locks.takeOver(id);
  return read(id);
}

// Which job lies on the desk belongs to the tab and outlives a reload of it.
function remember(id) {
  try { sessionStorage.setItem("job", id); } catch { /* The list of jobs is then where a reload leads. */ }
}

function forget() {
  try { sessionStorage.removeItem("job"); } catch { /* Nothing was kept. */ }
}

export function opened() {
  try { return sessionStorage.getItem("job"); } catch { return null; }
}

export function saveFile(name, type, bytes) {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([bytes], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

const verbs = { list, read, all, versions, restore, lock, takeOver, opened };

/** Does what a word names and gives the outcome as text, which the other side reads by plans of its own. */
export async function ask(verb, words) {
  return JSON.stringify(await verbs[verb](...words) ?? null);
}
