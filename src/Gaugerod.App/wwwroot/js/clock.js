// What the device's clock and settings say, in words. The program itself knows no time zones.
const MONTHS = ["January", "February", "March", "April", "May", "June", "July", "August", "September", "October", "November", "December"];

/** Today: "25 November". */
export function today() {
  const now = new Date();
  return `${now.getDate()} ${MONTHS[now.getMonth()]}`;
}

/** Today: "2027-03-08". */
export function day() {
  return times(String(Date.now())).slice(0, 10);
}

/** Moments in milliseconds since 1970, parted by commas, as days and times of this device, parted likewise. */
export function times(moments) {
  const two = number => String(number).padStart(2, "0");
  return moments.split(",").filter(Boolean).map(moment => {
    const at = new Date(Number(moment));
    return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())} ${two(at.getHours())}:${two(at.getMinutes())}`;
  }).join(",");
}

/** Whether the last new job was measured in inches; before there was one, whether people here do. */
export function inches() {
  try {
    const kept = localStorage.getItem("gaugerod-units");
    if (kept) return kept === "in";
  } catch { /* The language then tells. */ }
  return /-(US|LR|MM)\b/.test(navigator.language ?? "");
}

export function keepInches(yes) {
  try { localStorage.setItem("gaugerod-units", yes ? "in" : "mm"); } catch { /* Asked anew next time. */ }
}
