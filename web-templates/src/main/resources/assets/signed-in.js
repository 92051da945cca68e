// On every page of somebody signed in: sends what waits, says how it stands, and guards it when they leave.
(() => {
  "use strict";
  const box = self.tankroundsOutbox;
  const account = document.body.dataset.account;
  const FIRST_WAIT_MS = 5000;
  const LONGEST_WAIT_MS = 300000;
  const LEAVE_WITHIN_MS = 10000;
  const openedAt = new Date().toISOString();
  const words = self.tankroundsWords;
  if (!box || !words || !account || !self.indexedDB || !self.fetch) {
    return;
  }
  const say = words.of(document.currentScript);

  const later = (milliseconds) => new Promise((resolve) => { setTimeout(resolve, milliseconds); });
  const clock = (time) => new Date(time).toLocaleTimeString(words.locale, { hour: "numeric", minute: "2-digit" }).replace(/^0(?=\d)/, "");
  const mine = async () => (await box.all()).filter((entry) => entry.account === account);
  const myUnsent = async () => (await mine()).filter(box.isUnsent);

  /* ---- when it is sent ---- */

  let wait = FIRST_WAIT_MS;
  let timer = 0;
  let end = { reached: true, left: 0 };

  const send = async () => {
    const before = (await myUnsent()).length;
    end = await box.flush();
    refreshTokens();
    show();
    clearTimeout(timer);
    const after = (await myUnsent()).length;
    wait = after < before ? FIRST_WAIT_MS : Math.min(wait * 2, LONGEST_WAIT_MS);
    if (end.left > 0) {
      timer = setTimeout(sendQuietly, Math.max((end.retryAfter || 0) * 1000, wait * (0.5 + Math.random() / 2)));
      askWorkerToo().catch(() => {});
    }
    return end;
  };

  // A page that cannot look into its own store has nothing to send either.
  const sendQuietly = () => send().catch(() => {});

  const soon = () => {
    wait = FIRST_WAIT_MS;
    sendQuietly();
  };

  // A page out of the worker's store carries the token of a session that may be over.
  const refreshTokens = () => {
    if (end.formToken && end.account === account) {
      document.querySelectorAll("input[name=form_token]").forEach((field) => { field.value = end.formToken; });
    }
  };

  const askWorkerToo = async () => {
    const worker = await (navigator.serviceWorker ? navigator.serviceWorker.getRegistration() : null);
    if (worker && worker.sync) {
      await worker.sync.register("outbox");
    }
  };

  /* ---- what is said of it ---- */

  const reason = () => {
    if (end.reached && end.account === "") {
      return [say("signedOut"), say("signIn"), "/sign-in?next=" + encodeURIComponent(location.pathname)];
    }
    if (end.reached && end.account && end.account !== account) {
      return [say("anothers")];
    }
    return [say("stay")];
  };

  // The four words that people see, and what to do about them.
  const standing = (entries) => {
    const kept = entries.filter((entry) => entry.state === "kept").length;
    const fix = entries.filter((entry) => entry.state === "fix").length;
    const sent = entries.filter((entry) => entry.state === "sent" && entry.sentAt >= openedAt).pop();
    if (kept > 0) {
      return [say("kept", kept), ...reason()];
    }
    if (fix > 0) {
      return location.pathname === "/outbox" ? [say("fix")] : [say("fix"), "·", say("see", fix), "/outbox"];
    }
    return sent ? [say("sent", clock(sent.sentAt))] : null;
  };

  // Replaced as a whole, so that it is read out as a whole, and only when it says something else.
  const put = (line, [state, rest, link, to]) => {
    const text = [state, rest, link].filter(Boolean).join(" ");
    if (line.textContent === text) {
      return;
    }
    const strong = document.createElement("strong");
    strong.textContent = state;
    const parts = [strong, rest ? " " + rest : ""];
    if (link) {
      const anchor = document.createElement("a");
      anchor.href = to;
      anchor.textContent = link;
      parts.push(" ", anchor);
    }
    line.replaceChildren(...parts);
  };

  const lines = [...document.querySelectorAll("[data-outbox-line]")].map((line) => ({ line, idle: line.textContent }));

  const showLines = (said) => lines.filter(({ line }) => !line.hasAttribute("data-saving")).forEach(({ line, idle }) => {
    if (said) {
      put(line, said);
    } else if (line.textContent !== idle) {
      line.textContent = idle;
    }
  });

  const showLink = (unsent, said) => document.querySelectorAll("[data-outbox-link]").forEach((link) => {
    link.hidden = unsent.length === 0;
    link.textContent = said && unsent.length > 0 ? said[0] : "";
  });

  const show = async () => {
    const entries = await mine();
    const said = standing(entries);
    showLines(said);
    showLink(entries.filter(box.isUnsent), said);
  };

  // What is wrong with a reading that was not taken.
  const sentences = (entry) => (entry.sentences.length > 0 ? entry.sentences
    : [say({ 404: "notThere", 413: "tooLong" }[entry.status] || "notTaken")]);

  /* ---- leaving ---- */

  const saveAsFile = (entries) => {
    const text = JSON.stringify({ kind: "tankrounds-outbox", version: 1, entries }, null, 1);
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([text], { type: "application/json" }));
    link.download = "not-sent-" + new Date().toISOString().slice(0, 10) + ".json";
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60000);
  };

  // Without a connection the browser would leave for a page of its own, and the next one at the device would be they.
  const goOut = async (form) => {
    if (await box.ping()) {
      form.submit();
      return;
    }
    document.querySelectorAll("[data-still-in]").forEach((line) => line.remove());
    const line = document.createElement("p");
    line.className = "caution";
    line.dataset.stillIn = "";
    line.setAttribute("role", "alert");
    line.textContent = say("stillIn");
    document.querySelector("main").prepend(line);
    self.scrollTo(0, 0);
  };

  const leave = async (form) => {
    if ((await myUnsent()).length > 0) {
      await Promise.race([sendQuietly(), later(LEAVE_WITHIN_MS)]);
    }
    const left = await myUnsent();
    const dialog = document.querySelector("[data-leave]");
    if (left.length === 0 || !dialog.showModal) {
      await goOut(form);
      return;
    }
    dialog.querySelector("[data-leave-title]").textContent = say("left", left.length);
    dialog.querySelector("[data-leave-what]").textContent = say("leaving", left.length);
    dialog.querySelector("[data-leave-sealed]").onclick = () => {
      dialog.close();
      goOut(form).catch(() => form.submit());
    };
    dialog.querySelector("[data-leave-file]").onclick = () => saveAsFile(left);
    dialog.querySelector("[data-leave-stay]").onclick = () => dialog.close();
    dialog.showModal();
  };

  document.addEventListener("submit", (event) => {
    if (event.target.matches("[data-sign-out]")) {
      event.preventDefault();
      leave(event.target).catch(() => event.target.submit());
    }
  });

  /* ---- the worker ---- */

  // The first page of a visit was there before the worker; the forms it leads to are what will be wanted.
  const startWorker = async () => {
    await navigator.serviceWorker.register("/sw.js", { updateViaCache: "none" });
    const worker = await navigator.serviceWorker.ready;
    const forms = [...document.querySelectorAll('main a[href^="/tanks/"][href$="/log"], '
      + 'main a[href^="/release/plans/"][href*="/tanks/"], main a[href^="/release/sites/"][href$="/checks/new"]')].slice(0, 8);
    worker.active.postMessage({ account, pages: [location.pathname, "/outbox", ...forms.map((link) => link.pathname)] });
  };

  if (navigator.serviceWorker) {
    startWorker().catch(() => {});
  }

  box.onChange(() => show().catch(() => {}));
  self.addEventListener("online", soon);
  document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && soon());
  Object.assign(box, { account, say, sentences, send, show, mine, clock, saveAsFile, later });
  show().catch(() => {});
  sendQuietly();
})();
