// Has sheets drawn by js/sheetmaker.js: a worker begun when sheets are first asked for, and let go after a rest.
import { saveFile } from "./shelf.js";

// A runtime that waits holds memory; a person who prints again within this time has it at hand.
const longestRest = 5 * 60_000;
const type = "application/pdf";
let worker = null, begun = false, rest = 0, stopped = null, made = null;

function drop() {
  clearTimeout(rest);
  if (worker) {
    // What it had posted before would still arrive: sheets handed over after they were stopped.
    worker.onmessage = worker.onerror = null;
    worker.terminate();
  }
  [worker, begun, stopped] = [null, false, null];
}

function heed(who, done, failed) {
  stopped = () => done("stopped");
  worker.onmessage = ({ data }) => {
    if (data.ready) begun = true;
    else if (data.words) who.invokeMethodAsync("Say", data.words);
    else if (data.pdf) done("made", data.pdf);
    else if (data.lame) done("refused");
    else failed(data.trouble);
  };
  // A worker that never began was not let in, or its files are not to be had.
  worker.onerror = event => {
    event.preventDefault();
    if (begun) failed(event.message || "its thread ended"); else done("refused");
  };
}

/** Has a job's sheets made and hands them to the person; tells "made", "stopped" or "refused", or throws words. */
export function make(job, kind, name, who) {
  clearTimeout(rest);
  return new Promise((resolve, reject) => {
    const done = (how, pdf) => {
      stopped = null;
      if (pdf) {
        keep(name, pdf);
        rest = setTimeout(drop, longestRest);
      } else drop();
      resolve(how);
    };
    const failed = words => {
      drop();
      reject(words);
    };
    try {
      worker ??= new Worker(new URL("sheetmaker.js", import.meta.url), { type: "module" });
    } catch {
      resolve("refused");
      return;
    }
    heed(who, done, failed);
    worker.postMessage({ job, kind });
  });
}

/** Ends the making at once. */
export function stop() {
  stopped?.();
}

/** Hands sheets to the person and keeps them for another time. */
export function keep(name, pdf) {
  made = { name, pdf };
  again();
}

/** Hands over once more what was made last. */
export function again() {
  saveFile(made.name, type, made.pdf);
}
