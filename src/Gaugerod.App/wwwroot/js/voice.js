// The browser's own speech. Whether it is wanted is kept on the device; nothing leaves it but what the device's own voice needs.
const KEY = "gaugerod.aloud";

export const isHere = () => "speechSynthesis" in globalThis && "SpeechSynthesisUtterance" in globalThis;

export const isOn = () => isHere() && localStorage.getItem(KEY) === "yes";

export function turn(on) {
  localStorage.setItem(KEY, on ? "yes" : "no");
  if (!on) hush();
}

// What is said takes the place of what was being said: nobody waits for the piece before.
export function say(words) {
  if (!isHere()) return;
  hush();
  const said = new SpeechSynthesisUtterance(words);
  said.lang = "en";
  // A voice of the device itself speaks where there is no network.
  const own = speechSynthesis.getVoices().filter(voice => voice.lang.startsWith("en"));
  said.voice = own.find(voice => voice.localService) ?? own[0] ?? null;
  said.rate = 0.95;
  speechSynthesis.speak(said);
}

export function hush() {
  if (isHere()) speechSynthesis.cancel();
}
