// The outbox: readings are kept on this device until the service says that it has them. For pages and the worker.
(() => {
  "use strict";
  const DATABASE = "tankrounds";
  const ENTRIES = "entries";
  const LOCK = "tankrounds-outbox";
  const BUILD = "Tankrounds-Build";
  const ACCOUNT = "Tankrounds-Account";
  const ANSWER_WITHIN_MS = 8000;
  const SENT_STAYS_MS = 7 * 24 * 3600 * 1000;
  const FOR_A_PERSON = [400, 404, 413, 415, 422];

  /* ---- what is kept ---- */

  let opened = null;
  const open = () => {
    opened = opened || new Promise((resolve, reject) => {
      const request = indexedDB.open(DATABASE, 1);
      request.onupgradeneeded = () => request.result.createObjectStore(ENTRIES, { keyPath: "id" });
      request.onerror = () => reject(request.error);
      request.onsuccess = () => {
        request.result.onversionchange = () => request.result.close();
        request.result.onclose = () => { opened = null; };
        resolve(request.result);
      };
    });
    opened.catch(() => { opened = null; });
    return opened;
  };

  // Done only when the transaction is complete: a request that succeeded may still be undone. "Strict" asks the
  // browser to have it on the disk by then.
  const within = async (mode, work) => {
    const database = await open();
    return new Promise((resolve, reject) => {
      const transaction = database.transaction(ENTRIES, mode, { durability: "strict" });
      const request = work(transaction.objectStore(ENTRIES));
      transaction.oncomplete = () => resolve(request.result);
      transaction.onerror = transaction.onabort = () => reject(transaction.error);
    });
  };

  const channel = self.BroadcastChannel ? new BroadcastChannel(LOCK) : null;
  const listeners = [];
  const tell = () => listeners.forEach((listener) => listener());
  if (channel) {
    channel.onmessage = tell;
  }
  const changed = () => {
    tell();
    if (channel) {
      channel.postMessage("changed");
    }
  };

  const get = (id) => within("readonly", (store) => store.get(id));

  const all = async () => {
    const entries = await within("readonly", (store) => store.getAll());
    return entries.sort((a, b) => (a.keptAt < b.keptAt ? -1 : 1));
  };

  const remove = async (ids) => {
    await within("readwrite", (store) => {
      ids.forEach((id) => store.delete(id));
      return store.count();
    });
    changed();
  };

  // The same id again is the same reading, put right: it was still taken when it was first kept.
  const keep = async (entry) => {
    const before = await get(entry.id);
    const kept = { ...entry, keptAt: before ? before.keptAt : entry.keptAt, state: "kept", sentences: [],
      revision: before ? before.revision + 1 : 1 };
    await within("readwrite", (store) => store.put(kept));
    changed();
    return kept;
  };

  // What was put right while an older text of it was under way is not touched by that one's answer.
  const note = async (entry, news) => {
    await within("readwrite", (store) => {
      const request = store.get(entry.id);
      request.onsuccess = () => {
        if (request.result && request.result.revision === entry.revision) {
          store.put({ ...request.result, ...news });
        }
      };
      return request;
    });
    changed();
  };

  const forgetOld = async () => {
    const before = Date.now() - SENT_STAYS_MS;
    const old = (await all()).filter((entry) => entry.state === "sent" && Date.parse(entry.sentAt) < before);
    if (old.length > 0) {
      await remove(old.map((entry) => entry.id));
    }
  };

  /* ---- the clock ---- */

  const AHEAD = "tankrounds-clock-ahead";

  // By the second: how far this device's clock is ahead of the service's, as they last met. The worker has no such store.
  const noteClock = (date) => {
    try {
      self.localStorage.setItem(AHEAD, String(Date.now() - Date.parse(date)));
    } catch (error) {
      // Then nothing is said of it.
    }
  };

  const clockAhead = () => {
    try {
      return self.localStorage.getItem(AHEAD) || "";
    } catch (error) {
      return "";
    }
  };

  /* ---- how it is sent ---- */

  const ask = async (address, options) => {
    const stop = new AbortController();
    const timer = setTimeout(() => stop.abort(), ANSWER_WITHIN_MS);
    try {
      const answer = await fetch(address, { credentials: "same-origin", cache: "no-store", signal: stop.signal, ...options });
      // A portal that answers in our place does not know our header.
      if (answer.headers.has(BUILD) && answer.headers.has("Date")) {
        noteClock(answer.headers.get("Date"));
      }
      return { status: answer.status, ours: answer.headers.has(BUILD), retryAfter: answer.headers.get("Retry-After"),
        said: await answer.json().catch(() => ({})) };
    } catch (error) {
      return { status: 0, ours: false, retryAfter: null, said: {} };
    } finally {
      clearTimeout(timer);
    }
  };

  const ping = async () => {
    const answer = await ask("/api/ping", {});
    return answer.ours && answer.status === 200 && "account" in answer.said ? answer.said : null;
  };

  const fieldsToSend = (entry) => [...entry.fields, ["submission_id", entry.id], ["kept_at", entry.keptAt],
    ["sent_at", new Date().toISOString()], ["clock_ahead", entry.clockAhead || ""], ["device_zone", entry.zone], ["device_offset", entry.offset],
    ["build", entry.build], ["form_version", entry.formVersion]];

  const send = (entry, formToken) => ask(entry.action, { method: "POST", headers: { [ACCOUNT]: entry.account },
    body: new URLSearchParams([...fieldsToSend(entry), ["form_token", formToken]]) });

  const taken = (answer) => answer.ours && answer.status >= 200 && answer.status < 300 && Boolean(answer.said.receipt);

  const needsAPerson = (answer) => answer.ours && FOR_A_PERSON.includes(answer.status);

  // In the language of whoever is signed in; where the service said nothing, a page finds words for the status.
  const sentences = (answer) => {
    const said = answer.said.sentences || [];
    return said.length > 0 ? said : [answer.said.title].filter(Boolean);
  };

  const settle = async (entry, answer) => {
    if (taken(answer)) {
      await note(entry, { state: "sent", sentAt: new Date().toISOString(), receipt: answer.said.receipt,
        savedTo: answer.said.savedTo, again: false });
    } else if (needsAPerson(answer)) {
      await note(entry, { state: "fix", sentences: sentences(answer), status: answer.status, again: false });
    }
  };

  // Whatever is not about this one reading alone will meet the next one too.
  const stopsAll = (answer) => !answer.ours || [401, 403, 429, 503].includes(answer.status);

  const isDue = (entry) => entry.state === "kept" || (entry.state === "fix" && entry.again);

  const sendAll = async () => {
    await forgetOld();
    const due = (await all()).filter(isDue);
    if (due.length === 0) {
      return { reached: true, left: 0 };
    }
    const here = await ping();
    if (!here) {
      return { reached: false, left: due.length };
    }
    let answer = {};
    for (const entry of due.filter((one) => one.account === here.account)) {
      answer = await send(entry, here.formToken);
      await settle(entry, answer);
      if (stopsAll(answer)) {
        break;
      }
    }
    return { reached: true, account: here.account, formToken: here.formToken, retryAfter: Number(answer.retryAfter) || 0,
      left: (await all()).filter((entry) => isDue(entry) && entry.account === here.account).length };
  };

  // One window at a time. A browser without locks takes turns within a window only: two may send the same reading,
  // which the service stores once.
  let turn = Promise.resolve();
  const alone = (work) => {
    if (self.navigator.locks) {
      return navigator.locks.request(LOCK, work);
    }
    turn = turn.then(work, work);
    return turn;
  };

  const flush = () => alone(sendAll);

  const isUnsent = (entry) => entry.state !== "sent";

  self.tankroundsOutbox = { all, get, keep, note, remove, flush, ping, clockAhead, isUnsent, fieldsToSend,
    onChange: (listener) => listeners.push(listener) };
})();
