// The device's own speech. Only a voice that lives on the device is used: a voice of the network would send the words away.
// Whether it is wanted is kept on the device.
const KEY = "gaugerod.aloud", WAIT = 1500;
let on = null;

const speech = () => "speechSynthesis" in globalThis && "SpeechSynthesisUtterance" in globalThis;

const own = () => speechSynthesis.getVoices().find(voice => voice.localService && voice.lang.startsWith("en"));

// Voices may come a while after the page.
export async function isHere() {
  if (!speech()) return false;
  if (own()) return true;
  await new Promise(done => {
    const waited = setTimeout(done, WAIT);
    speechSynthesis.addEventListener?.("voiceschanged", () => { clearTimeout(waited); done(); }, { once: true });
  });
  return Boolean(own());
}

export function isOn() {
  try {
    on ??= localStorage.getItem(KEY) === "yes";
  } catch {
    on ??= false;
  }
  return on;
}

export function turn(wanted) {
  on = wanted;
  try {
    localStorage.setItem(KEY, wanted ? "yes" : "no");
  } catch {
    // Where nothing may be kept it is so until the page is left.
  }
  if (!wanted) hush();
}

// What is said takes the place of what was being said: nobody waits for the piece before.
export function say(words) {
  const voice = speech() && own();
  if (!voice) return;
  hush();
  const said = new SpeechSynthesisUtterance(words);
  Object.assign(said, { lang: "en", voice, rate: 0.95 });
  speechSynthesis.speak(said);
}

export function hush() {
  if (speech()) speechSynthesis.cancel();
}
