// The class's form, that of a release and that of a stream check: what is typed is kept on this device first, then sent. Without this script it
// is sent at once.
(() => {
  "use strict";
  const box = self.tankroundsOutbox;
  const form = document.querySelector("form[data-outbox]");
  const line = document.querySelector("[data-outbox-line]");
  const FIX = "#fix=";
  const CARDS = "shown_cards";
  // What the form showed when it opened; one from before forms told so says nothing of it.
  const OPENED = ["opened_kit", "opened_unit"];
  const SENT_WITHIN_MS = 9000;
  // What stands beside their labels is no unit.
  const WITHOUT_UNIT = ["ph", "ph_typed", "note", "measured_at"];
  // Those the form has: cards and a kit are the class's form's alone.
  const valueOf = (name) => (form.elements[name] ? form.elements[name].value : "");
  // Whoever looked in and found all well has counted none dead.
  const ALL_WELL = "all_well";
  const HABITS = ["by", "temperature_unit", "kit", "other_kit", "method"];
  if (!box || !box.account || !form) {
    return;
  }

  const newId = () => {
    if (crypto.randomUUID) {
      return crypto.randomUUID();
    }
    // Plain http has no randomUUID.
    const bytes = crypto.getRandomValues(new Uint8Array(16));
    return [...bytes].map((byte) => byte.toString(16).padStart(2, "0")).join("");
  };

  const boxes = () => [...form.elements].filter((field) => field.name && field.type !== "hidden" && field.type !== "submit");
  const isFilledIn = (field) => (field.type === "radio" ? field.checked && field.value !== "" : field.value.trim() !== "");
  const isAboutTheTank = (field) => !HABITS.includes(field.name) && !field.name.startsWith("sure_");
  const isEmpty = () => !boxes().some((field) => isAboutTheTank(field) && isFilledIn(field));

  /* ---- what is kept ---- */

  const label = (field) => {
    const group = field.type === "radio" ? field.closest("fieldset").querySelector("legend b") : null;
    const text = group || form.querySelector("label[for=" + CSS.escape(field.id) + "] b");
    return text ? text.textContent : field.name;
  };

  const unit = (field) => {
    if (field.name === "temperature") {
      const scale = form.querySelector("[name=temperature_unit]:checked");
      return scale ? " " + scale.parentElement.textContent.trim() : "";
    }
    const card = field.closest(".card, .box");
    const text = card && card.querySelector(".box__note");
    return text && !WITHOUT_UNIT.includes(field.name) ? " " + text.textContent.replace(/^, /, "") : "";
  };

  const inWords = () => boxes().filter((field) => isFilledIn(field) && isAboutTheTank(field) && field.tagName !== "SELECT")
    .map((field) => label(field) + " " + field.value.trim() + unit(field)).join(", ");

  const onlyHere = ["form_token", "submission_id", "kept_at", "sent_at", "clock_ahead", "device_zone", "device_offset", "build", "form_version"];
  const typed = () => [...new FormData(form)].filter(([name]) => !onlyHere.includes(name));

  const newEntry = (id) => ({
    id,
    account: box.account,
    tank: form.dataset.tank,
    place: form.dataset.outbox,
    action: new URL(form.action).pathname,
    fields: typed(),
    words: inWords(),
    kit: valueOf("kit"),
    zone: Intl.DateTimeFormat().resolvedOptions().timeZone || "",
    offset: String(-new Date().getTimezoneOffset()),
    keptAt: new Date().toISOString(),
    clockAhead: box.clockAhead(),
    build: document.body.dataset.build,
    formVersion: valueOf("form_version"),
  });

  // A form that is put right is the same reading; every other press of the button is a new one.
  const idToKeep = async () => {
    const shown = form.elements.submission_id.value;
    const before = await box.get(shown);
    return before && before.state === "fix" ? shown : newId();
  };

  /* ---- what happens on the button ---- */

  const say = (text) => { line.textContent = text; };

  const busy = (on) => {
    form.toggleAttribute("data-busy", on);
    line.toggleAttribute("data-saving", on);
  };

  // The page of the service says best what is wrong; it gets the same reading, so that an answer to it counts.
  const askService = async (entry) => {
    await box.note(entry, { again: true });
    for (const [name, value] of box.fieldsToSend(entry)) {
      if (onlyHere.includes(name) && form.elements[name]) {
        form.elements[name].value = value;
      }
    }
    form.submit();
  };

  const startAnew = () => {
    if (document.querySelector(".error-summary:not([hidden]), .asks")) {
      location.assign(form.getAttribute("action"));
      return;
    }
    for (const field of boxes().filter((one) => !HABITS.includes(one.name))) {
      if (field.type === "radio") {
        field.checked = field.value === "";
      } else {
        field.value = "";
      }
    }
    form.elements.submission_id.value = newId();
  };

  const askToKeepForLong = () => {
    if (navigator.storage && navigator.storage.persist) {
      navigator.storage.persist().catch(() => {});
    }
  };

  const goOn = async (entry) => {
    const now = await box.get(entry.id) || entry;
    if (now.state === "sent") {
      location.assign(now.savedTo);
    } else if (now.state === "fix") {
      await askService(now);
    } else {
      busy(false);
      startAnew();
      await box.show();
      askToKeepForLong();
    }
  };

  const keep = async () => {
    busy(true);
    say(box.say("saving"));
    let entry;
    try {
      entry = await box.keep(newEntry(await idToKeep()));
    } catch (error) {
      form.submit();  // A browser that keeps nothing: as without scripts.
      return;
    }
    say(box.say("kept", (await box.mine()).filter((one) => one.state === "kept").length));
    await Promise.race([box.send().catch(() => {}), box.later(SENT_WITHIN_MS)]);
    await goOn(entry);
  };

  form.addEventListener("submit", (event) => {
    const button = event.submitter || document.activeElement;
    if (button.name === ALL_WELL && form.elements.deaths.value.trim() === "") {
      form.elements.deaths.value = "0";
    }
    if (button.name === "act" || isEmpty() || !form.hasAttribute("data-outbox")) {
      return;
    }
    event.preventDefault();
    if (!form.hasAttribute("data-busy")) {
      keep().catch(() => busy(false));
    }
  });

  // Come back to by the browser's own button, a form that has been sent must not be sent as another reading.
  self.addEventListener("pageshow", (event) => event.persisted && location.reload());

  /* ---- opened to be put right ---- */

  const fillIn = ([name, value]) => {
    const fields = boxes().filter((field) => field.name === name);
    const step = fields.find((field) => field.type === "radio" && field.value === value);
    if (step) {
      step.checked = true;
    } else if (fields[0] && fields[0].type !== "radio") {
      fields[0].value = value;
    } else if (value && form.elements[name + "_typed"]) {
      form.elements[name + "_typed"].value = value;
    }
  };

  // Its numbers mean what stood beside them when it was written; one from before forms told so has the cards of now.
  const cardsOf = (entry) => (entry.fields.find(([name]) => name === CARDS) || [CARDS, valueOf(CARDS)])[1];

  const withCards = (cards) => location.pathname + "?" + CARDS + "=" + encodeURIComponent(cards) + location.hash;

  const openToFix = async () => {
    const entry = await box.get(decodeURIComponent(location.hash.slice(FIX.length)));
    if (!entry || entry.account !== box.account || entry.state !== "fix") {
      return;
    }
    if (cardsOf(entry) !== valueOf(CARDS)) {
      location.replace(location.search ? "/outbox" : withCards(cardsOf(entry)));
      return;
    }
    // A number goes into the box for typing where the card has no such step: nothing empty may come after it.
    [...entry.fields].sort(([, one], [, other]) => Number(one !== "") - Number(other !== "")).forEach(fillIn);
    form.elements.submission_id.value = entry.id;
    ["kit", ...OPENED].filter((name) => form.elements[name]).forEach((name) => {
      form.elements[name].value = (entry.fields.find(([one]) => one === name) || [name, ""])[1];
    });
    form.querySelectorAll("details").forEach((more) => {
      more.open = [...more.querySelectorAll("input:not([type=radio])")].some((field) => field.value !== "");
    });
    const summary = document.querySelector("[data-outbox-fix]");
    summary.querySelector("ul").replaceChildren(...box.sentences(entry).map((sentence) => {
      const item = document.createElement("li");
      item.textContent = sentence;
      return item;
    }));
    summary.setAttribute("role", "alert");
    summary.hidden = false;
    summary.focus();
  };

  if (location.hash.startsWith(FIX)) {
    openToFix().catch(() => {});
  }

  // While there is a connection: how far this device's clock is off, for what is kept when there is none.
  box.ping();
})();
