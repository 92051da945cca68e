// Keeps the rounds fresh while somebody looks at them: asks for the page again and mostly hears "not modified".
(() => {
  "use strict";
  const PACE_MS = 1000;
  const SLOWEST_MS = 30000;
  const AIMING_MS = 1500;
  const say = self.tankroundsWords && self.tankroundsWords.of(document.currentScript);
  let wait = PACE_MS;
  let movedAt = 0;
  let board = document.getElementById("board");
  if (!board || !say || !window.fetch || !window.DOMParser) {
    return;
  }

  document.addEventListener("pointermove", (event) => {
    if (event.target.closest && event.target.closest(".rounds")) {
      movedAt = Date.now();
    }
  });

  const order = (page) => [...page.querySelectorAll(".rounds__school")].map((link) => link.id).join(" ");

  // Somebody who is about to press a row must not find another one under the pointer.
  const aiming = (fresh) => Date.now() - movedAt < AIMING_MS && order(fresh) !== order(board);

  const show = (fresh) => {
    const focused = document.activeElement && board.contains(document.activeElement) ? document.activeElement : null;
    const status = board.querySelector("#board-status");
    const changed = fresh.querySelector(".rounds")?.textContent !== board.querySelector(".rounds")?.textContent;
    for (const part of [".board__head", ".rounds"]) {
      const before = board.querySelector(part);
      const after = fresh.querySelector(part);
      if (before && after) {
        if (before.textContent !== after.textContent) {
          before.replaceWith(after);
        }
      } else if (after) {
        status.before(after);
      } else if (before) {
        before.remove();
      }
    }
    board.dataset.tag = fresh.dataset.tag;
    if (focused && !document.contains(focused)) {
      const again = focused.id ? document.getElementById(focused.id) : board.querySelector("a." + [...focused.classList].join("."));
      if (again) {
        again.focus({ preventScroll: true });
      }
    }
    if (changed) {
      status.textContent = say("updated", board.querySelector("h1").textContent);
    }
  };

  const ask = async () => {
    const answer = await fetch(location.href, {
      headers: { "If-None-Match": board.dataset.tag }, credentials: "same-origin", cache: "no-store" });
    if (answer.status === 304) {
      return true;
    }
    if (!answer.ok) {
      throw new Error("answer " + answer.status);
    }
    const page = new DOMParser().parseFromString(await answer.text(), "text/html");
    const fresh = page.getElementById("board");
    if (!fresh) {
      board.querySelector("#board-status").textContent = say("signedOut");
      return false;
    }
    if (!aiming(fresh)) {
      const clock = document.querySelector(".top__now");
      const newClock = page.querySelector(".top__now");
      if (clock && newClock) {
        clock.textContent = newClock.textContent;
      }
      show(fresh);
    }
    return true;
  };

  const turn = async () => {
    let on = true;
    if (document.visibilityState === "visible") {
      try {
        on = await ask();
        wait = PACE_MS;
      } catch (error) {
        wait = Math.min(wait * 2, SLOWEST_MS);
      }
    }
    if (on) {
      setTimeout(turn, wait);
    }
  };
  setTimeout(turn, wait);
  document.addEventListener("visibilitychange", () => { wait = PACE_MS; });
})();
