// For a forum's page: <div class="witness-mark"></div> and this script. Puts the ask box into each such place, as tall as it needs to be,
// in the units of the page's language (lang="en-US"), or those of data-units="imperial" or "metric".
(() => {
  const origin = new URL(document.currentScript.src).origin;
  const boxes = new Map();
  for (const place of document.querySelectorAll(".witness-mark")) {
    // The two lines may stand on a page several times.
    if (place.querySelector("iframe")) continue;
    const frame = document.createElement("iframe");
    const units = place.dataset.units || place.closest("[lang]")?.lang || "metric";
    frame.src = `${origin}/embed?units=${encodeURIComponent(units)}`;
    frame.title = place.dataset.title || "Ask about a part";
    Object.assign(frame.style, { width: "100%", height: "16rem", border: "0", colorScheme: "light dark" });
    place.append(frame);
    boxes.set(frame, place);
  }
  window.addEventListener("message", (event) => {
    if (event.origin !== origin) return;
    const height = Number(event.data?.witnessMarkHeight);
    if (!(height > 0 && height < 20000)) return;
    for (const frame of boxes.keys()) {
      if (frame.contentWindow === event.source) frame.style.height = `${Math.ceil(height)}px`;
    }
  });
})();
