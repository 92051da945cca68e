// The page of the outbox: what waits on this device and what was sent lately.
(() => {
  "use strict";
  const box = self.tankroundsOutbox;
  const page = document.querySelector("[data-outbox-page]");
  if (!box || !box.account || !page) {
    return;
  }
  const say = self.tankroundsWords.of(document.currentScript);
  const FORMS = /^\/(tanks\/[a-z0-9]+\/log|release\/plans\/\d+\/tanks\/[a-z0-9]+|release\/sites\/\d+\/checks\/new)$/;
  const part = (name) => page.querySelector("[data-" + name + "]");

  // As the other pages write it, which a browser's own way of writing days does not.
  const called = (names, number) => page.dataset[names].split("|")[number];
  const day = (time) => {
    const at = new Date(time);
    return say("day", called("weekdays", at.getDay()), at.getDate(), called("months", at.getMonth()));
  };
  const state = (entry) => say(entry.state, box.clock(entry.sentAt || 0));
  const heading = (unsent) => (unsent.length === 0 ? say("nothingWaits") : say("waiting", unsent.length));

  // What only waits may be on its way already: it is corrected in the tank's log, not here.
  const link = (anchor, entry) => {
    if (entry.state === "kept") {
      anchor.remove();
      return;
    }
    anchor.href = entry.state === "sent" ? entry.savedTo : entry.action + "#fix=" + encodeURIComponent(entry.id);
    anchor.textContent = say(entry.state === "sent" ? "see" : "open");
    anchor.setAttribute("aria-label", say("openOf", anchor.textContent, entry.place, box.clock(entry.keptAt)));
  };

  const row = (entry) => {
    const shown = part("row").content.cloneNode(true);
    const set = (name, text) => { shown.querySelector("[data-" + name + "]").textContent = text; };
    set("place", entry.place);
    set("state", state(entry));
    set("words", entry.words || say("note"));
    set("time", say("written", day(entry.keptAt), box.clock(entry.keptAt)));
    set("sentences", entry.state === "fix" ? box.sentences(entry).join(" ") : "");
    link(shown.querySelector("[data-open]"), entry);
    const remove = shown.querySelector("[data-remove]");
    remove.hidden = entry.state !== "fix";
    remove.onclick = () => self.confirm(say("sureToRemove")) && box.remove([entry.id]);
    return shown;
  };

  const show = async () => {
    const everything = await box.all();
    const mine = everything.filter((entry) => entry.account === box.account);
    const unsent = mine.filter(box.isUnsent);
    const others = everything.filter((entry) => entry.account !== box.account && box.isUnsent(entry));
    part("heading").textContent = heading(unsent);
    part("acts").hidden = unsent.length === 0;
    part("send").hidden = !unsent.some((entry) => entry.state === "kept");
    part("unsent").replaceChildren(...unsent.map(row));
    part("sent-part").hidden = mine.length === unsent.length;
    part("sent").replaceChildren(...mine.filter((entry) => !box.isUnsent(entry)).reverse().map(row));
    part("others").textContent = others.length === 0 ? "" : say("others", others.length);
  };

  // Somebody who opens the app without Wi-Fi lands here: the way on is to a form.
  const forms = async () => {
    const kept = await Promise.all((await caches.keys()).map((name) => caches.open(name).then((cache) => cache.keys())));
    const paths = kept.flat().map((request) => new URL(request.url).pathname).filter((path) => FORMS.test(path));
    part("forms").replaceChildren(...await Promise.all(paths.map(formLink)));
    part("forms-part").hidden = paths.length === 0;
  };

  const formLink = async (path) => {
    const text = await (await caches.match(path)).text();
    const item = document.createElement("li");
    const anchor = item.appendChild(document.createElement("a"));
    anchor.className = "alone";
    anchor.href = path;
    anchor.textContent = new DOMParser().parseFromString(text, "text/html").querySelector("[data-outbox]").dataset.outbox;
    return item;
  };

  const storage = async () => {
    const promised = navigator.storage && navigator.storage.persist ? await navigator.storage.persist() : false;
    part("storage").textContent = say(promised ? "promised" : "mayForget");
  };

  const isEntry = (one) => one && typeof one.id === "string" && Array.isArray(one.fields)
    && FORMS.test(one.action) && !Number.isNaN(Date.parse(one.keptAt));

  // Only what is not here yet: a reading that was sent since the file was written must not be sent as another.
  const putBack = async (file) => {
    const entries = JSON.parse(await file.text()).entries.filter(isEntry);
    for (const entry of entries) {
      if (!(await box.get(entry.id))) {
        await box.keep(entry);
      }
    }
    part("file-said").textContent = say("inFile", entries.length);
    await box.send();
  };

  part("send").onclick = () => {
    part("outbox-line").textContent = box.say("saving");
    box.send().catch(() => {}).then(box.show);
  };
  part("save").onclick = async () => box.saveAsFile((await box.mine()).filter(box.isUnsent));
  part("file").onchange = (event) => putBack(event.target.files[0]).catch(() => {
    part("file-said").textContent = say("noFile");
  });
  box.onChange(() => show().catch(() => {}));
  show().catch(() => {});
  if (self.caches) {
    forms().catch(() => {});
  }
  storage().catch(() => {});
})();
