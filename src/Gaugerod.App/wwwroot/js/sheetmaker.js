// A worker: draws sheets in a runtime of its own, so that the page never stands still meanwhile.
import { dotnet } from "../_framework/dotnet.js";

// What the page leaves for later is what is needed here; what only a page needs is left out.
const onConfigLoaded = config => {
  const parts = config.resources;
  const ofThePage = /^Microsoft\.(AspNetCore|JSInterop|Extensions\.(Configuration|DependencyInjection|Options|Primitives|Logging\.wasm))/;
  parts.assembly = [...parts.assembly.filter(part => !ofThePage.test(part.name)), ...parts.lazyAssembly ?? []];
  parts.lazyAssembly = [];
};

async function begin() {
  const { getAssemblyExports, getConfig } = await dotnet.withModuleConfig({ onConfigLoaded }).create();
  return (await getAssemblyExports(getConfig().mainAssemblyName)).Gaugerod.App.Sheetmaking.SheetWork.Make;
}

const ready = begin();
ready.then(() => postMessage({ ready: true }), error => postMessage({ lame: String(error?.message ?? error) }));

addEventListener("message", async ({ data }) => {
  try {
    const make = await ready;
    const pdf = make(data.job, data.kind, words => postMessage({ words }));
    postMessage({ pdf }, [pdf.buffer]);
  } catch (error) {
    postMessage({ trouble: String(error?.message ?? error) });
  }
});
