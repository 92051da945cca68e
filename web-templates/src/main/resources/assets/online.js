// A form with data-online is only sent where there is a connection: without one, what is typed stays on the page.
// Without this script it is sent at once.
(() => {
  "use strict";
  const box = self.tankroundsOutbox;
  const words = self.tankroundsWords;
  if (!box || !words) {
    return;
  }
  const say = words.of(document.currentScript);

  // There before it says something, so that what it says is read out.
  const lineOf = (form) => {
    const there = form.querySelector("[role=status]");
    const line = there || document.createElement("p");
    if (!there) {
      line.className = "small";
      line.setAttribute("role", "status");
      [...form.querySelectorAll("button[type=submit]")].pop().after(line);
    }
    return line;
  };

  const guard = (form) => {
    const line = lineOf(form);
    const idle = line.textContent;

    const send = async () => {
      form.dataset.busy = "";
      line.textContent = say("sending");
      if (await box.ping()) {
        form.submit();
      } else {
        delete form.dataset.busy;
        line.textContent = say("offline");
      }
    };

    form.addEventListener("submit", (event) => {
      event.preventDefault();
      if (!("busy" in form.dataset)) {
        send();
      }
    });

    // Back from the page behind, it can be sent again.
    self.addEventListener("pageshow", (event) => {
      if (event.persisted) {
        delete form.dataset.busy;
        line.textContent = idle;
      }
    });
  };

  document.querySelectorAll("form[data-online]").forEach(guard);
})();
