// The page prints with the browser's own command; this only saves looking for it.
(() => {
  "use strict";
  for (const button of document.querySelectorAll("[data-print]")) {
    button.hidden = false;
    button.addEventListener("click", () => window.print());
  }
})();
