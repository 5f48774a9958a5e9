// What makes the pages pleasanter and nothing depends on: forms are sent without leaving the page, new turns arrive by themselves, a
// citation is copied, and inside a frame the page says how tall it is.
const conversation = document.getElementById("conversation");

if (conversation) {
  document.addEventListener("submit", send);
  if (conversation.dataset.events && "EventSource" in window) listen(conversation.dataset.events);
  const last = conversation.lastElementChild;
  if (last && location.hash === `#${last.id}`) last.focus({ preventScroll: false });
}

async function send(event) {
  const form = event.target;
  const isOurs = form.matches('form[action="/said"], form[action="/embed/said"]');
  if (!isOurs) return;
  event.preventDefault();
  const data = new FormData(form, event.submitter);
  const say = document.getElementById("say");
  const status = say.querySelector("[role=status]");
  const buttons = [...document.querySelectorAll("form button")];
  for (const button of buttons) button.disabled = true;
  status.textContent = say.dataset.sending;
  try {
    const body = form.enctype === "multipart/form-data" ? data : new URLSearchParams(data);
    const answer = await fetch(form.action, { method: "POST", body, headers: { "x-wanted": "turn" } });
    const text = await answer.text();
    for (const button of buttons) button.disabled = false;
    if (!answer.ok) return notTaken(refusalIn(text) ?? say.dataset.lost);
    if (!answer.redirected) take(text, true);
    status.textContent = "";
    if (form === say) form.reset();
  } catch {
    for (const button of buttons) button.disabled = false;
    notTaken(say.dataset.lost);
  }

  /** What was written stays where it is, and who pressed stays where they were. */
  function notTaken(why) {
    status.textContent = why;
    event.submitter?.focus({ preventScroll: true });
    status.scrollIntoView({ block: "nearest" });
  }
}

/** What a page that refuses says of it. */
function refusalIn(markup) {
  const template = document.createElement("template");
  template.innerHTML = markup;
  const refusal = template.content.querySelector("[data-refusal]");
  return refusal?.dataset.refusal || refusal?.textContent;
}

/** Puts a new turn at the end; one that is there already is left alone. What could be pressed before no longer can, once it is answered. */
function take(markup, isAnswer) {
  const template = document.createElement("template");
  template.innerHTML = markup;
  const turn = template.content.querySelector(".turn");
  if (!turn) return;
  // The same turn may have come as an event before.
  if (!document.getElementById(turn.id)) append(turn);
  if (isAnswer) show(document.getElementById(turn.id));
}

function append(turn) {
  if (turn.querySelector(".said")) takeControlsAway();
  const token = document.querySelector('#say input[name="token"]')?.value;
  for (const field of turn.querySelectorAll('input[name="token"]')) field.value = token;
  const id = turn.id.slice("turn-".length);
  for (const field of document.querySelectorAll('input[name="turn"]')) field.value = id;
  conversation.append(turn);
}

function takeControlsAway() {
  for (const old of document.querySelectorAll("[data-once]")) {
    const words = old.querySelector(".ask");
    if (words) old.replaceChildren(words);
    else old.remove();
  }
}

function show(turn) {
  turn.focus({ preventScroll: true });
  turn.scrollIntoView({ block: "start" });
}

function listen(path) {
  const events = new EventSource(path);
  events.addEventListener("turn", (event) => take(event.data, false));
  events.addEventListener("last", ({ data }) => {
    // Where it fails, the next connection says so again.
    if (data && !document.getElementById(`turn-${data}`)) catchUp().catch(() => undefined);
  });
}

/** What came while this page was cut off, or asleep. */
async function catchUp() {
  const answer = await fetch(location.pathname);
  const template = document.createElement("template");
  template.innerHTML = await answer.text();
  for (const turn of template.content.querySelectorAll("#conversation > .turn")) {
    if (!document.getElementById(turn.id)) append(turn);
  }
}

for (const field of document.querySelectorAll("[data-copy]")) {
  const button = document.createElement("button");
  button.type = "button";
  button.textContent = field.dataset.copy;
  button.className = "noprint";
  button.addEventListener("click", async () => {
    getSelection().selectAllChildren(field);
    try {
      await navigator.clipboard.writeText(field.textContent);
    } catch {
      // Where pages may not write there, the selection is copied as by hand.
      document.execCommand("copy");
    }
    button.textContent = field.dataset.copied;
  });
  field.after(button);
}

if (window.parent !== window && document.querySelector(".embedded")) {
  // Of what is in it: the whole page is never lower than the frame, and would not let it shrink.
  const tell = () =>
    window.parent.postMessage({ witnessMarkHeight: document.body.getBoundingClientRect().height }, "*");
  new ResizeObserver(tell).observe(document.body);
  tell();
}
